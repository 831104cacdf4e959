import { describe, expect, test } from 'vitest'
import {
  airConductivity_WmK,
  airViscosity_Pas,
  exposedConvection_Wm2K,
  freeFactors,
  gapTilt,
  hollandsNusselt,
  joinedLaws,
  windFactor_frac,
} from '#model/outdoors/air'
import { airPrandtl } from '#inside/model/outdoors/air/air-properties.ts'
import { blendedConvection_Wm2K, freeConvection_Wm2K } from '#inside/model/outdoors/air/convection.ts'

const flat = freeFactors(0)

test('air at 300 K: Incropera & DeWitt, table A.4 (k 26.3e-3, µ 184.6e-7, Pr 0.707; from memory), within 1 %', () => {
  expect(airConductivity_WmK(26.85) / 26.3e-3).toBeCloseTo(1, 2)
  expect(airViscosity_Pas(26.85) / 184.6e-7).toBeCloseTo(1, 2)
  expect(airPrandtl(26.85) / 0.707).toBeCloseTo(1, 1)
})

describe('free convection', () => {
  test('cold plate of module size facing up, 2–15 K below air: 1.0–2.2 W/m²K (references §4, calc)', () => {
    for (const length of [0.25, 0.333, 0.4]) {
      for (const colder of [2, 5, 10, 15]) {
        const h = freeConvection_Wm2K(flat, 20 - colder, 20, 101325, length)
        expect(h).toBeGreaterThan(1)
        expect(h).toBeLessThan(2.2)
      }
    }
  })

  test('hot plate facing up, Ra 1e8: Nu = 0.15 Ra^⅓ = 69.6 (Incropera & DeWitt eq. 9.31), within 0.5 % of joining', () => {
    const { hotQuarter, hotThird } = flat
    expect(joinedLaws(hotQuarter * 100, hotThird * Math.cbrt(1e8)) / (0.15 * Math.cbrt(1e8))).toBeCloseTo(
      1,
      1,
    )
    expect(hotQuarter).toBeCloseTo(0.54, 12)
    expect(hotThird).toBeCloseTo(0.15, 12)
  })

  test('joined laws: 2^(1/10) at the crossing, the larger far from it', () => {
    expect(joinedLaws(3, 3)).toBeCloseTo(3 * 2 ** 0.1, 5)
    expect(joinedLaws(1, 2)).toBeCloseTo((1 + 2 ** 10) ** 0.1, 5)
    expect(joinedLaws(0, 0)).toBe(0)
  })

  test('an upright plate has 0.59 Ra^¼ (Incropera & DeWitt eq. 9.24) on both sides', () => {
    const upright = freeFactors(90)
    expect(upright.coldQuarter).toBeCloseTo(0.59, 9)
    expect(upright.hotQuarter).toBeCloseTo(0.59, 9)
  })

  test('near the air’s temperature the coefficient has no jump and does not vanish', () => {
    const air = { air_C: 20, pressure_Pa: 101325, forced_Wm2K: 0 }
    let before = exposedConvection_Wm2K(flat, 17, air, 0.333)
    for (let t = 17.01; t <= 23; t += 0.01) {
      const now = exposedConvection_Wm2K(flat, t, air, 0.333)
      expect(Math.abs(now - before)).toBeLessThan(0.02)
      expect(now).toBeGreaterThan(0.8)
      before = now
    }
  })

  test('cube blend: either alone, and 2^⅓ where equal (Churchill 1977)', () => {
    expect(blendedConvection_Wm2K(0, 5)).toBeCloseTo(5, 12)
    expect(blendedConvection_Wm2K(4, 4)).toBeCloseTo(4 * Math.cbrt(2), 12)
  })
})

describe('gap of Hollands 1976', () => {
  const level = gapTilt(0)
  test('still below Ra 1708; the references §3 form above', () => {
    expect(hollandsNusselt(1700, level)).toBe(1)
    const ra = 20000
    const want = 1 + 1.44 * (1 - 1708 / ra) + Math.cbrt(ra / 5830) - 1
    expect(hollandsNusselt(ra, level)).toBeCloseTo(want, 9)
  })
  // Duffie & Beckman, Solar Engineering of Thermal Processes, ex. 3.11.1: 25 mm, 45°, 70 and 50 °C, ν 1.88e-5, Pr 0.7:
  // Nu 2.4 printed to two digits (from memory).
  test('tilted 45°, 25 mm, 20 K: Nu 2.4 within the book’s rounding', () => {
    const rayleigh = (9.81 * 20 * 0.025 ** 3 * 0.7) / (333 * 1.88e-5 ** 2)
    expect(Math.abs(hollandsNusselt(rayleigh, gapTilt(45)) - 2.4)).toBeLessThan(0.05)
  })
})

test('wind: 3 m up in a suburb 0.55 of the airport’s (references §4, calc); 10 m in the open 1', () => {
  expect(windFactor_frac('suburb', 3)).toBeCloseTo(0.55, 2)
  expect(windFactor_frac('open', 10)).toBeCloseTo(1, 12)
})
