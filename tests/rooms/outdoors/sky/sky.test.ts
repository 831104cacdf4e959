import { describe, expect, test } from 'vitest'
import { blackbody_Wm2, STEFAN_BOLTZMANN, vapourPressure_Pa } from '#model/outdoors/air'
import { offWindowEmissivity, windowEmissivity } from '#inside/model/outdoors/sky/bands.ts'
import {
  windowPart_Wm2,
  cloudBase_m,
  cloudyMartinBerdahl,
  skyOnPlane,
  windowFactor_frac,
  type SkyOptions,
  skyHours,
} from '#model/outdoors/sky'
import {
  altitudeTerm,
  berdahlMartin1984,
  brutsaert1975,
  matsunobuCoimbra2024,
  prata1996,
} from '#inside/model/outdoors/sky/clear.ts'
import { cloudyCrawfordDuchon } from '#inside/model/outdoors/sky/cloud.ts'
import { SKY_MODELS } from '#inside/model/outdoors/sky/hours.ts'
import { inventedWeather } from '../../invented-weather.ts'

const OPTIONS: SkyOptions = {
  model: 'matsunobuCoimbra2024',
  altitudeTerm: false,
  useMeasured: true,
  deficitFactor_frac: 1,
}

describe('clear-sky emissivity', () => {
  // Formula of Duffie & Beckman, section 3.9, by hand: air 20 °C, dew point 10 °C, midnight → 276.1 K, to 0.1 K.
  // The book's form has no pressure term: 1000 hPa leaves it out.
  test('Berdahl & Martin: sky temperature 276.1 K', () => {
    const sky_K = 293.15 * berdahlMartin1984(10, 0, 100000) ** 0.25
    expect(Math.abs(sky_K - 276.1)).toBeLessThan(0.05)
  })
  // By hand from the printed formulas (references §1) at 10 hPa, 20 °C.
  test.each([
    ['Matsunobu & Coimbra 2024', matsunobuCoimbra2024(1000), 0.6 + 1.652 * Math.sqrt(0.00986923)],
    ['Brutsaert 1975', brutsaert1975(1000, 20), 0.76532],
    ['Prata 1996', prata1996(1000, 20), 0.77481],
  ])('%s', (_author, got, want) => {
    expect(Math.abs(got - want)).toBeLessThan(1e-4)
  })
  test('the four agree within 0.05 between 8 and 20 hPa: another author is not another planet', () => {
    for (const dew of [4, 10, 17]) {
      const e = vapourPressure_Pa(dew)
      const all = [
        matsunobuCoimbra2024(e),
        berdahlMartin1984(dew, 0, 101325),
        brutsaert1975(e, dew + 8),
        prata1996(e, dew + 8),
      ]
      expect(Math.max(...all) - Math.min(...all)).toBeLessThan(0.05)
    }
  })
  test('altitude term: none at the sea, −0.031 at 2000 m', () => {
    expect(altitudeTerm(0)).toBeCloseTo(0, 12)
    expect(altitudeTerm(2000)).toBeCloseTo(0.15 * (Math.exp(-2 / 8.5) - 1), 12)
  })
})

describe('bands', () => {
  // Li & Coimbra 2019 over the blackbody share of each band (references §1, calc), printed to 0.01 and 0.001.
  test.each([
    [2, 0.31, 0.927],
    [6, 0.39, 0.977],
    [10, 0.46, 0.986],
    [15, 0.54, 0.989],
    [20, 0.63, 0.99],
    [25, 0.71, 0.992],
  ])('%d hPa: window %d, rest %d', (e_hPa, window, rest) => {
    expect(Math.abs(windowEmissivity(e_hPa * 100) - window)).toBeLessThan(0.006)
    expect(Math.abs(offWindowEmissivity(e_hPa * 100) - rest)).toBeLessThan(0.0015)
  })
  test('the same atmosphere’s total, 0.6173 + 1.6940 p_w^0.5035, is the sum of its bands within 0.01', () => {
    for (const e of [200, 600, 1000, 1500, 2000, 2500]) {
      const share = 0.3876
      const sum = share * windowEmissivity(e) + (1 - share) * offWindowEmissivity(e)
      expect(Math.abs(sum - (0.6173 + 1.694 * (e / 101325) ** 0.5035))).toBeLessThan(0.01)
    }
  })
  test('an overcast black sky is black in the window; a sky warmer than the air is brighter than black', () => {
    expect(windowPart_Wm2(400, 400, 125, 1000)).toBe(125)
    expect(windowPart_Wm2(410, 400, 125, 1000)).toBeGreaterThan(125)
    expect(windowPart_Wm2(300, 400, 125, 1000)).toBeLessThan(50)
  })
})

describe('cloud', () => {
  test('overcast: black by Crawford & Duchon, short of black by Martin & Berdahl for a high base', () => {
    expect(cloudyCrawfordDuchon(0.75, 1)).toBe(1)
    expect(cloudyMartinBerdahl(0.75, 1, 0)).toBe(1)
    expect(cloudyMartinBerdahl(0.75, 1, 8200)).toBeCloseTo(0.75 + 0.25 / Math.E, 12)
    expect(cloudyMartinBerdahl(0.75, 0, 500)).toBe(0.75)
  })
  test('cloud base: 125 m per kelvin of spread, held to 200…4000 m', () => {
    expect(cloudBase_m(20, 10)).toBe(1250)
    expect(cloudBase_m(10, 10)).toBe(200)
    expect(cloudBase_m(45, -10)).toBe(4000)
  })
})

describe('sky hours', () => {
  const { weather } = inventedWeather(24 * 60)
  test('window + rest is the total, to rounding, every hour and every author', () => {
    for (const model of SKY_MODELS) {
      const sky = skyHours(weather, { ...OPTIONS, model })
      for (let i = 0; i < sky.hours; i++) {
        expect(Math.abs(sky.window_Wm2[i]! + sky.offWindow_Wm2[i]! - sky.total_Wm2[i]!)).toBeLessThan(1e-10)
        expect(sky.window_Wm2[i]).toBeGreaterThanOrEqual(0)
        expect(sky.total_Wm2[i]).toBeGreaterThan(80)
        expect(sky.total_Wm2[i]).toBeLessThanOrEqual(blackbody_Wm2(weather.airTemp_C[i]!) * (1 + 1e-12))
      }
    }
  })
  test('a measured column wins; its missing hours are the model’s', () => {
    const skyLongwave_Wm2 = new Float64Array(weather.hours).fill(333)
    skyLongwave_Wm2[7] = NaN
    const measured = skyHours({ ...weather, skyLongwave_Wm2 }, OPTIONS)
    const model = skyHours(weather, OPTIONS)
    expect(measured.total_Wm2[6]).toBe(333)
    expect(measured.total_Wm2[7]).toBe(model.total_Wm2[7])
    expect([measured.measured[6], measured.measured[7]]).toEqual([1, 0])
    const ignored = skyHours({ ...weather, skyLongwave_Wm2 }, { ...OPTIONS, useMeasured: false })
    expect(ignored.total_Wm2).toEqual(model.total_Wm2)
  })
  test('no deficit, no cold sky; observed cloud is colder than cloud worked out', () => {
    const black = skyHours(weather, { ...OPTIONS, deficitFactor_frac: 0 })
    expect(black.total_Wm2[3]).toBeCloseTo(blackbody_Wm2(weather.airTemp_C[3]!), 9)
    const read = { ...weather, origins: { cloud_frac: { kind: 'read', note: '', filledHours: 0 } as const } }
    const sum = (values: Float64Array) => values.reduce((a, b) => a + b, 0)
    expect(sum(skyHours(read, OPTIONS).total_Wm2)).toBeLessThan(sum(skyHours(weather, OPTIONS).total_Wm2))
    expect(() => skyHours(weather, { ...OPTIONS, deficitFactor_frac: -1 })).toThrow(RangeError)
  })
})

describe('sky on a tilted plane', () => {
  test('an open level plane sees exactly the horizontal values', () => {
    const level = skyOnPlane(0, 0)
    expect(level.uniform_frac).toBeCloseTo(1, 12)
    for (const emissivity of [0, 0.3, 0.77, 1])
      expect(windowFactor_frac(level, emissivity)).toBeCloseTo(1, 12)
  })
  // Granqvist & Hjortsberg 1981 integrated numerically here, independently: ε(θ) = 1 − (1 − ε_z)^(1/cos θ), tilt 90°.
  test('an upright plane sees the bright low sky: the direct double integral', () => {
    const zenith = 0.3
    const steps = 400
    let flat = 0
    let upright = 0
    for (let i = 0; i < steps; i++) {
      const theta = ((i + 0.5) / steps) * (Math.PI / 2)
      const emissivity = 1 - (1 - zenith) ** (1 / Math.cos(theta))
      const ring = (emissivity * Math.sin(theta) * (Math.PI / 2)) / steps
      flat += 2 * ring * Math.cos(theta)
      upright += (2 / Math.PI) * ring * Math.sin(theta)
    }
    expect(Math.abs(windowFactor_frac(skyOnPlane(90, 0), flat) - upright / flat)).toBeLessThan(0.003)
  })
  test('a black sky is a uniform one', () => {
    const plane = skyOnPlane(40, 15)
    expect(windowFactor_frac(plane, 1)).toBeCloseTo(plane.uniform_frac, 2)
  })
  test('σ is the CODATA 2018 value', () => {
    expect(STEFAN_BOLTZMANN).toBe(5.670374419e-8)
  })
})
