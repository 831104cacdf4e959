import psychrolib from 'psychrolib'
import { describe, expect, it } from 'vitest'
import { airChange } from '#inside/model/building/room/air-change.ts'
import { outsideConvection_Wm2K } from '#inside/model/building/room/films.ts'
import {
  annualDepth_m,
  annualSwing,
  groundTemp_C,
  outdoorSwing_WK,
  slabOnGroundU_Wm2K,
} from '#inside/model/building/room/ground.ts'
import { modesDaily } from '../../../evidence/models/modes-daily.ts'
import { solAir } from '#inside/model/building/room/sol-air.ts'
import { beamFactor, panesOf } from '#inside/model/building/room/windows.ts'
import { madeWeather, ROOM } from './made-weather.ts'

const SIGMA = 5.670374419e-8

describe('outside surface', () => {
  const calm = {
    air_C: 30,
    absorbedSun_Wm2: 0,
    longwave_Wm2: SIGMA * 303.15 ** 4,
    emittance_frac: 0.9,
    convection_Wm2K: 12,
  }

  it('is as warm as the air without sun under a sky as warm as the air', () => {
    expect(solAir(calm).temp_C).toBeCloseTo(30, 9)
  })

  it('is the linear sol-air temperature of the ASHRAE Handbook for little sun: 0.45 × 80 W/m² over h = 17, 1 %', () => {
    const radiation = 0.9 * 4 * SIGMA * 303.15 ** 3
    const surface = solAir({ ...calm, absorbedSun_Wm2: 36, convection_Wm2K: 17 - radiation })
    expect(Math.abs((surface.temp_C - 30) / (36 / 17) - 1)).toBeLessThan(0.01)
  })

  it('closes its balance with T⁴ to 1e-6 W/m² under full sun and a cold sky', () => {
    const sunny = { ...calm, absorbedSun_Wm2: 720, longwave_Wm2: 350 }
    const { temp_C } = solAir(sunny)
    const balance = 720 + 0.9 * (350 - SIGMA * (temp_C + 273.15) ** 4) + 12 * (30 - temp_C)
    expect(Math.abs(balance)).toBeLessThan(1e-6)
  })

  it('its film is the secant of its radiation between air and surface: heat at the air’s temperature comes out exact (1e-9)', () => {
    // At T_air the exact heat in is α I + ε (L − σ T_air⁴); film × (T_eq − T_air) must be the same.
    const sunny = { ...calm, absorbedSun_Wm2: 400, longwave_Wm2: 350 }
    const { temp_C, film_Wm2K } = solAir(sunny)
    const exact = 400 + 0.9 * (350 - SIGMA * 303.15 ** 4)
    expect(Math.abs((film_Wm2K * (temp_C - 30)) / exact - 1)).toBeLessThan(1e-9)
  })

  it('at 10 °C and 4 m/s has 0.0407 m²K/W (ISO 6946 annex C, ε 0.9, its h_r0 5.1, printed digits)', () => {
    expect(1 / (outsideConvection_Wm2K(4) + 0.9 * 5.1)).toBeCloseTo(0.0407, 4)
  })
})

describe('slab on ground, ISO 13370 by independent hand calculation', () => {
  const floor = { area_m2: 200, perimeter_m: 60, wall_m: 0.3, ground_WmK: 2, floor_m2KW: 0 }
  const shed = { area_m2: 20, perimeter_m: 18, wall_m: 0.15, ground_WmK: 2, floor_m2KW: 0 }

  it.each([
    [1.5, 0.495],
    [2, 0.6285],
    [1.4, 0.4668],
  ])('20 × 10 m, λ %f: U %f', (ground_WmK, U) => {
    expect(slabOnGroundU_Wm2K({ ...floor, ground_WmK })).toBeCloseTo(U, 4)
  })
  it('5 × 4 m shed: bare 1.3687, with R 2.5 0.3037', () => {
    expect(slabOnGroundU_Wm2K(shed)).toBeCloseTo(1.3687, 4)
    expect(slabOnGroundU_Wm2K({ ...shed, floor_m2KW: 2.5 })).toBeCloseTo(0.3037, 4)
  })
  it('20 × 10 m at λ 1.4 within 5 % of a published sheet’s 0.482 by the older UK closed form (Macey 1949)', () => {
    expect(Math.abs(slabOnGroundU_Wm2K({ ...floor, ground_WmK: 1.4 }) / 0.482 - 1)).toBeLessThan(0.05)
  })
  it('periodic: depths 2.239, 3.167, 4.189 m for clay, sand, rock; shed H_pe 25.05 W/K', () => {
    expect(annualDepth_m(1.5)).toBeCloseTo(2.239, 3)
    expect(annualDepth_m(2)).toBeCloseTo(3.167, 3)
    expect(annualDepth_m(3.5)).toBeCloseTo(4.189, 3)
    expect(outdoorSwing_WK(shed)).toBeCloseTo(25.05, 2)
  })

  const omega = (2 * Math.PI) / 8760
  const year = (peak_h: number) =>
    madeWeather(8760, { air_C: (h) => 12 + 9 * Math.cos(omega * (h + 0.5 - peak_h)) })

  it('finds mean, amplitude and phase of a year that is a pure swing, north and south', () => {
    for (const peak_h of [4500, 300]) {
      const swing = annualSwing(year(peak_h))
      expect(swing.mean_C).toBeCloseTo(12, 9)
      expect(Math.hypot(swing.cosine_K, swing.sine_K)).toBeCloseTo(9, 9)
    }
  })
  it('is warmest a month after the air in either hemisphere, with H_pe/H_g of its swing', () => {
    for (const peak_h of [4500, 300]) {
      const ground = groundTemp_C(shed, year(peak_h))
      const hottest = ground.indexOf(Math.max(...ground))
      expect(Math.abs(hottest - (peak_h + 730))).toBeLessThan(2)
      expect(ground[hottest]! - 12).toBeCloseTo((9 * 25.05) / (20 * 1.3687), 2)
    }
  })
  it('a logger file has only its own mean', () => {
    const ground = groundTemp_C(shed, madeWeather(100, { air_C: (h) => 25 + (h % 2) }))
    expect(ground.every((temp) => Math.abs(temp - 25.5) < 1e-9)).toBe(true)
  })
})

describe('constructions, ISO 13786 (concrete rows confirmed by a 200-cell finite-volume model)', () => {
  const concrete = (thickness_m: number) => ({
    thickness_m,
    conductivity_WmK: 1.8,
    density_kgm3: 2400,
    specificHeat_JkgK: 1000,
  })
  const eps = { thickness_m: 0.1, conductivity_WmK: 0.035, density_kgm3: 25, specificHeat_JkgK: 1450 }
  const wool = { thickness_m: 0.1, conductivity_WmK: 0.035, density_kgm3: 25, specificHeat_JkgK: 1030 }
  const wood = { thickness_m: 0.02, conductivity_WmK: 0.13, density_kgm3: 500, specificHeat_JkgK: 1600 }
  const steel = { thickness_m: 0.0007, conductivity_WmK: 50, density_kgm3: 7800, specificHeat_JkgK: 450 }

  it.each([
    ['concrete 200', [concrete(0.2)], 0.13, 3.5573, 1.8271, 0.5136, -5.676, 5.7043, 86.168],
    ['concrete inside EPS', [concrete(0.1), eps], 0.13, 0.3244, 0.1207, 0.372, -5.612, 6.226, 86.074],
    ['concrete outside EPS', [eps, concrete(0.1)], 0.13, 0.3244, 0.225, 0.6937, -4.101, 0.346, 5.002],
    ['wood and wool', [wood, wool, wood], 0.13, 0.2999, 0.2903, 0.9683, -1.793, 1.1565, 16.412],
    ['steel sheet', [steel], 0.1, 7.1421, 7.142, 1, -0.02, 7.1422, 0.702],
  ] as const)(
    '%s: what the room runs on has these, within 0.3 % and a minute (cells of 5 mm)',
    (_name, layers, inside, U, y12, f, shift, y11, k1) => {
      const got = modesDaily(layers, inside)
      const near = (have: number, want: number) => expect(Math.abs(have / want - 1)).toBeLessThan(3e-3)
      expect(got.U_Wm2K).toBeCloseTo(U, 4)
      near(got.transmittance_Wm2K, y12)
      near(got.transmittance_Wm2K / got.U_Wm2K, f)
      expect(Math.abs(got.timeShift_h - shift)).toBeLessThan(0.02)
      near(got.admittance_Wm2K, y11)
      near(got.insideCapacity_Jm2K / 1000, k1)
    },
  )

  it('refuses a layer that is none', () => {
    expect(() => modesDaily([])).toThrow(RangeError)
    expect(() => modesDaily([{ ...wood, thickness_m: 0 }])).toThrow(/thickness_m/)
  })
})

describe('indoor dew point', () => {
  it('is the outdoor one when nothing is given off', () => {
    const weather = madeWeather(3, { dew_C: (h) => 10 + h })
    expect(Array.from(airChange(ROOM, 50, weather).dewPoint_C)).toEqual([10, 11, 12])
  })
  it('adds G/(ρ V n) to the humidity ratio: psychrolib’s dew point of that ratio, 0.02 K', () => {
    psychrolib.SetUnitSystem(psychrolib.SI)
    const weather = madeWeather(1, { air_C: () => 25, dew_C: () => 13.864 })
    const got = airChange({ ...ROOM, moisture_kgh: 0.1 }, 50, weather).dewPoint_C[0]!
    const density = 101325 / (287.055 * 298.15)
    const outdoor_Pa = psychrolib.GetVapPresFromTDewPoint(13.864)
    const ratio = (0.621945 * outdoor_Pa) / (101325 - outdoor_Pa) + 0.1 / (50 * density)
    const vapour_Pa = (101325 * ratio) / (0.621945 + ratio)
    const want = psychrolib.GetTDewPointFromRelHum(35, vapour_Pa / psychrolib.GetSatVapPres(35))
    expect(Math.abs(got - want)).toBeLessThan(0.02)
    expect(got).toBeGreaterThan(15)
  })
  it('stays a number in a sealed room full of steam', () => {
    const weather = madeWeather(1)
    expect(airChange({ ...ROOM, airChange_1h: 0.01, moisture_kgh: 20 }, 50, weather).dewPoint_C[0]).toBe(50)
  })
})

describe('glass by incidence', () => {
  /* Second implementation: Fresnel per polarisation, index 1.526, 4 mm, 18 /m, made independently (Duffie & Beckman ch. 5);
   * printed to three digits. */
  it.each([
    [1, [1, 1, 0.998, 0.994, 0.985, 0.962, 0.908, 0.778, 0.486, 0]],
    [2, [1, 0.999, 0.997, 0.992, 0.98, 0.951, 0.879, 0.699, 0.353, 0]],
  ] as const)('%d pane(s): the printed factors at every 10°', (panes, want) => {
    want.forEach((factor, tens) =>
      expect(beamFactor(Math.cos((tens * Math.PI) / 18), panes)).toBeCloseTo(factor, 6),
    )
  })
  it('never rises with the angle', () => {
    for (const panes of [1, 2] as const)
      for (let deg = 0; deg < 90; deg++)
        expect(beamFactor(Math.cos(((deg + 1) * Math.PI) / 180), panes)).toBeLessThanOrEqual(
          beamFactor(Math.cos((deg * Math.PI) / 180), panes) + 1e-12,
        )
  })
  it('single glass has one pane, double and better two', () => {
    expect([5.7, 4.5, 2.8, 1.2].map(panesOf)).toEqual([1, 1, 2, 2])
  })
})
