import { describe, expect, test } from 'vitest'
import { airMass, haurwitzGlobal_Wm2 } from '#inside/model/outdoors/sun/clear-sky.ts'
import {
  clearSkyIndex_frac,
  ineichenPerez,
  planeIrradiance,
  skyRings,
  splitGlobal,
} from '#model/outdoors/sun'
import { incidenceCosine } from '#inside/model/outdoors/sun/plane.ts'
import { skyView_frac } from '#inside/model/outdoors/sun/sky-view.ts'
import { erbsDiffuse_frac } from '#inside/model/outdoors/sun/split.ts'

const RADIANS = Math.PI / 180
const one = (value: number) => Float64Array.of(value)

/** One hour of sun and irradiance. */
function hour(
  altitude: number,
  azimuth: number,
  direct: number,
  diffuse: number,
  extraterrestrial = 1316.69,
) {
  return {
    sun: {
      hours: 1,
      altitude_deg: one(altitude),
      azimuth_deg: one(azimuth),
      extraterrestrial_Wm2: one(extraterrestrial),
    },
    light: {
      directNormal_Wm2: one(direct),
      diffuseHorizontal_Wm2: one(diffuse),
      globalHorizontal_Wm2: one(direct * Math.max(0, Math.sin(altitude * RADIANS)) + diffuse),
    },
  }
}

describe('irradiance on a tilted plane', () => {
  // Duffie & Beckman, Solar Engineering of Thermal Processes, ex. 1.6.1: 43° N, 13 February (declination −14°), 10:30
  // solar, tilt 45°, azimuth 15° west of south: incidence 35°, printed to a degree.
  test('Duffie & Beckman ex. 1.6.1: incidence 35°', () => {
    const [latitude, declination, hourAngle] = [43 * RADIANS, -14 * RADIANS, -22.5 * RADIANS]
    const sine =
      Math.sin(latitude) * Math.sin(declination) +
      Math.cos(latitude) * Math.cos(declination) * Math.cos(hourAngle)
    const altitude = Math.asin(sine)
    const fromSouth = Math.acos(
      (sine * Math.sin(latitude) - Math.sin(declination)) / (Math.cos(altitude) * Math.cos(latitude)),
    )
    const cosine = incidenceCosine(altitude / RADIANS, 180 - fromSouth / RADIANS, 45, 195)
    expect(Math.abs(Math.acos(cosine) / RADIANS - 35)).toBeLessThan(0.5)
  })

  // references-building.md §4, cases A–C (calc, Hay & Davies): beam, sky diffuse, ground; n = 172, albedo 0.2.
  test.each([
    {
      name: 'A',
      altitude: 50,
      azimuth: 180,
      direct: 800,
      diffuse: 100,
      tilt: 30,
      beam: 787.846,
      sky: 114.722,
    },
    {
      name: 'B',
      altitude: 30,
      azimuth: 250,
      direct: 800,
      diffuse: 100,
      tilt: 90,
      beam: 236.959,
      sky: 55.614,
    },
    { name: 'C', altitude: 50, azimuth: 180, direct: 50, diffuse: 300, tilt: 30, beam: 49.2404, sky: 283.92 },
  ])('case $name', ({ altitude, azimuth, direct, diffuse, tilt, beam, sky }) => {
    const { sun, light } = hour(altitude, azimuth, direct, diffuse)
    const bare = planeIrradiance(sun, light, tilt, 180, 0)
    expect(Math.abs(bare.total_Wm2[0]! - beam - sky)).toBeLessThan(0.02)
    const withGround = planeIrradiance(sun, light, tilt, 180, 0.2)
    const ground = light.globalHorizontal_Wm2[0]! * 0.2 * 0.5 * (1 - Math.cos(tilt * RADIANS))
    expect(withGround.total_Wm2[0]! - bare.total_Wm2[0]!).toBeCloseTo(ground, 9)
  })

  test('a level plane gets the global irradiance', () => {
    const { sun, light } = hour(40, 100, 700, 120)
    const level = planeIrradiance(sun, light, 0, 0, 0.5)
    expect(level.total_Wm2[0]).toBeCloseTo(light.globalHorizontal_Wm2[0]!, 9)
  })

  test('a sun on the horizon, behind the plane or behind the hills gives no beam and no infinity', () => {
    for (const altitude of [-5, -0.1, 0, 0.01, 1, 4]) {
      const { sun, light } = hour(altitude, 180, 300, 40)
      for (const tilt of [0, 45, 90]) {
        const total = planeIrradiance(sun, light, tilt, 180, 0.2, 0).total_Wm2[0]!
        expect(total).toBeGreaterThanOrEqual(0)
        expect(total).toBeLessThan(600)
        const hidden = planeIrradiance(sun, light, tilt, 180, 0.2, 5)
        expect(hidden.beam_Wm2[0]).toBe(0)
      }
    }
    const behind = hour(20, 0, 900, 0)
    expect(planeIrradiance(behind.sun, behind.light, 90, 180, 0).total_Wm2[0]).toBe(0)
  })

  test('columns of another length are refused', () => {
    const { sun, light } = hour(40, 100, 700, 120)
    expect(() => planeIrradiance({ ...sun, hours: 2 }, light, 0, 0, 0.2)).toThrow(RangeError)
  })
})

describe('view of the sky', () => {
  test('(1 + cos β)/2 without a horizon; cos² h for a level plane (exact)', () => {
    expect(skyView_frac(60, 0)).toBeCloseTo(0.75, 12)
    expect(skyView_frac(0, 30)).toBeCloseTo(0.75, 12)
  })
  test('the rings add up to both, within 3e-4', () => {
    for (const [tilt, horizon, want] of [
      [0, 0, 1],
      [0, 20, Math.cos(20 * RADIANS) ** 2],
      [30, 0, 0.5 * (1 + Math.cos(30 * RADIANS))],
      [90, 0, 0.5],
    ] as const) {
      const sum = skyRings(tilt, horizon).planeWeight.reduce((a, b) => a + b, 0)
      expect(Math.abs(sum - want)).toBeLessThan(3e-4)
    }
  })
  test('falls with the horizon at every tilt', () => {
    for (const tilt of [0, 10, 45, 90]) {
      let before = 1.01
      for (const horizon of [0, 5, 15, 30, 60]) {
        const view = skyView_frac(tilt, horizon)
        expect(view).toBeLessThan(before)
        before = view
      }
    }
  })
})

describe('diffuse split', () => {
  // Erbs, Klein & Duffie 1982: values of references-building.md §4 (calc), printed to 1e-5.
  test.each([
    [0.1, 0.991],
    [0.22, 0.9802],
    [0.3, 0.9486],
    [0.5, 0.65915],
    [0.6, 0.43948],
    [0.7, 0.24398],
    [0.8, 0.16527],
    [0.9, 0.165],
  ])('kT %d: %d', (clearness, want) => {
    expect(Math.abs(erbsDiffuse_frac(clearness) - want)).toBeLessThan(6e-6)
  })
  // Duffie & Beckman ex. 2.15.1: kT 0.445 → 0.766, printed to 1e-3.
  test('Duffie & Beckman ex. 2.15.1', () => {
    expect(Math.abs(erbsDiffuse_frac(0.445) - 0.766)).toBeLessThan(1e-3)
  })
  test('parts close, and a low sun has no beam', () => {
    const { directNormal_Wm2, diffuseHorizontal_Wm2 } = splitGlobal(500, 40, 1360)
    expect(directNormal_Wm2 * Math.sin(40 * RADIANS) + diffuseHorizontal_Wm2).toBeCloseTo(500, 9)
    expect(splitGlobal(30, 1, 1360)).toEqual({ directNormal_Wm2: 0, diffuseHorizontal_Wm2: 30 })
    expect(splitGlobal(-3, 40, 1360)).toEqual({ directNormal_Wm2: 0, diffuseHorizontal_Wm2: 0 })
  })
})

describe('clear sky', () => {
  // Haurwitz 1945; values of references-building.md §4 (calc) by zenith angle.
  test.each([
    [0, 1035.092],
    [30, 888.271],
    [60, 487.894],
    [85, 48.63],
  ])('Haurwitz at zenith %d°: %d W/m²', (zenith, want) => {
    expect(Math.abs(haurwitzGlobal_Wm2(90 - zenith) - want)).toBeLessThan(6e-4)
  })
  // Kasten & Young 1989; values of references-building.md §4 (calc).
  test.each([
    [0, 0.9997],
    [60, 1.9943],
    [85, 10.3058],
    [90, 37.9196],
  ])('air mass at zenith %d°: %d', (zenith, want) => {
    expect(Math.abs(airMass(90 - zenith) - want)).toBeLessThan(6e-5)
  })
  // Ineichen & Perez 2002; values of references-building.md §4 (calc): sea level, n = 172.
  test.each([
    [30, 3, 876.94, 884.66],
    [30, 5, 802.01, 718.73],
    [60, 3, 469.31, 760.48],
  ])('Ineichen & Perez at zenith %d°, turbidity %d', (zenith, turbidity, global, direct) => {
    const clear = ineichenPerez(90 - zenith, 1316.69, 0, turbidity)
    expect(Math.abs(clear.global_Wm2 - global)).toBeLessThan(0.01)
    expect(Math.abs(clear.direct_Wm2 - direct)).toBeLessThan(0.01)
  })
  test('the clear-sky index says nothing under a low sun', () => {
    expect(clearSkyIndex_frac(5, 1, 1360, 0)).toBeNaN()
    expect(clearSkyIndex_frac(0, 50, 1360, 0)).toBe(0)
    expect(clearSkyIndex_frac(5000, 50, 1360, 0)).toBe(1.2)
  })
})
