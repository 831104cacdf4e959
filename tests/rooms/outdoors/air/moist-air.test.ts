import psychrolib from 'psychrolib'
import { describe, expect, test } from 'vitest'
import {
  dewPointFromHumidity_C,
  dewPoint_C,
  humidityRatio_frac,
  relativeHumidity_frac,
  saturationPressure_Pa,
  standardPressure_Pa,
  vapourPressure_Pa,
} from '#model/outdoors/air'
import { saturationPressureOverWater_Pa, saturationSlope_PaK } from '#inside/model/outdoors/air/moist-air.ts'
import { faceSaturation_Pa, faceSaturationSlope_PaK } from '../../panels/plate/face-saturation.ts'

psychrolib.SetUnitSystem(psychrolib.SI)

describe('saturation pressure', () => {
  test('agrees with psychrolib 1.1.1 from −90 to 90 °C, ice included, to 1e-9 (same equations)', () => {
    for (let t = -90; t <= 90; t += 0.37) {
      const theirs = psychrolib.GetSatVapPres(t)
      expect(Math.abs(saturationPressure_Pa(t) / theirs - 1)).toBeLessThan(1e-9)
    }
  })

  test('its slope is its derivative', () => {
    for (let t = -60; t <= 80; t += 1.3) {
      const difference = (saturationPressure_Pa(t + 1e-3) - saturationPressure_Pa(t - 1e-3)) / 2e-3
      expect(Math.abs(saturationSlope_PaK(t) / difference - 1)).toBeLessThan(1e-6)
    }
  })

  test('the table of the hour loop is within 0.01 K of the formula from −60 to 90 °C, and exact beyond 0 K of slope', () => {
    let worst_K = 0
    for (let t = -60; t <= 90; t += 0.0137) {
      const error_K = Math.abs(faceSaturation_Pa(t) - saturationPressure_Pa(t)) / saturationSlope_PaK(t)
      worst_K = Math.max(worst_K, error_K)
    }
    expect(worst_K).toBeLessThan(0.01)
    expect(faceSaturationSlope_PaK(20) / saturationSlope_PaK(20)).toBeCloseTo(1, 2)
    expect(faceSaturation_Pa(200)).toBeGreaterThan(faceSaturation_Pa(120))
  })
})

describe('dew point', () => {
  test('is the inverse of the saturation pressure over water, −60…60 °C, to 1e-6 K', () => {
    for (let t = -60; t <= 60; t += 0.7) {
      expect(Math.abs(dewPoint_C(saturationPressureOverWater_Pa(t)) - t)).toBeLessThan(1e-6)
    }
    expect(Number.isFinite(dewPoint_C(0))).toBe(true)
  })

  test('from humidity agrees with psychrolib above 0 °C within its own 0.001 K', () => {
    for (let t = 10; t <= 45; t += 5) {
      for (const humidity of [0.35, 0.6, 0.9, 1]) {
        const theirs = psychrolib.GetTDewPointFromRelHum(t, humidity)
        if (theirs > 0.1) expect(Math.abs(dewPointFromHumidity_C(t, humidity) - theirs)).toBeLessThan(0.002)
      }
    }
  })

  test('humidity there and back', () => {
    expect(relativeHumidity_frac(25, dewPointFromHumidity_C(25, 0.43))).toBeCloseTo(0.43, 9)
    // ASHRAE Fundamentals ch. 1, eq. 20 (calc): 1000 Pa in 101325 Pa.
    expect(humidityRatio_frac(1000, 101325)).toBeCloseTo(0.621945 / 100.325, 9)
    expect(vapourPressure_Pa(10)).toBe(saturationPressureOverWater_Pa(10))
  })
})

test('standard atmosphere: ASHRAE Fundamentals ch. 1, table 1, printed to 1 Pa in kPa', () => {
  // height m → kPa as printed (from memory)
  for (const [height, kPa] of [
    [0, 101.325],
    [500, 95.461],
    [1000, 89.875],
    [2000, 79.495],
    [3000, 70.108],
  ] as const) {
    expect(Math.abs(standardPressure_Pa(height) / 1000 - kPa)).toBeLessThan(0.001)
  }
})
