import { describe, expect, test } from 'vitest'
import { blackbody_Wm2, OFF_WINDOW_EMISSION, STEFAN_BOLTZMANN, WINDOW_EMISSION } from '#model/outdoors/air'
import { TOTAL_EMISSION, windowFraction } from '#inside/model/outdoors/air/blackbody.ts'
import { slopeAt, valueAt } from '#model/basis/numbers'

/** Planck's law summed over 8–13 µm by Simpson's rule: an independent calculation. CODATA 2018 constants. */
function planckWindow_Wm2(temp_K: number): number {
  const c1 = 3.741771852e8
  const c2 = 14387.76877
  const at = (um: number) => c1 / (um ** 5 * (Math.exp(c2 / (um * temp_K)) - 1))
  const steps = 400
  const width = 5 / steps
  let sum = at(8) + at(13)
  for (let i = 1; i < steps; i++) sum += (i % 2 === 1 ? 4 : 2) * at(8 + i * width)
  return (sum * width) / 3
}

describe('blackbody bands', () => {
  test('share in 8–13 µm: 0.303 (280 K), 0.317 (294.2 K), 0.322 (300 K) (references §1, calc)', () => {
    expect(windowFraction(280)).toBeCloseTo(0.303, 3)
    expect(windowFraction(294.2)).toBeCloseTo(0.317, 3)
    expect(windowFraction(300)).toBeCloseTo(0.322, 3)
  })

  test('agrees with Planck’s law summed by Simpson’s rule, 220–350 K, to 1e-7', () => {
    for (let t = 220; t <= 350; t += 10) {
      const share = planckWindow_Wm2(t) / (STEFAN_BOLTZMANN * t ** 4)
      expect(Math.abs(windowFraction(t) / share - 1)).toBeLessThan(1e-7)
    }
  })

  test('the polynomial is within 0.02 W/m² of it from −60 to 90 °C', () => {
    for (let t = -60; t <= 90; t += 0.5) {
      expect(Math.abs(valueAt(WINDOW_EMISSION, t) - planckWindow_Wm2(t + 273.15))).toBeLessThan(0.02)
    }
  })

  test('window and rest add up to σT⁴ exactly, and so do the slopes', () => {
    for (let t = -60; t <= 90; t += 5) {
      const sum = valueAt(WINDOW_EMISSION, t) + valueAt(OFF_WINDOW_EMISSION, t)
      expect(Math.abs(sum - blackbody_Wm2(t))).toBeLessThan(1e-9)
      expect(Math.abs(slopeAt(TOTAL_EMISSION, t) - 4 * STEFAN_BOLTZMANN * (t + 273.15) ** 3)).toBeLessThan(
        1e-10,
      )
    }
  })
})
