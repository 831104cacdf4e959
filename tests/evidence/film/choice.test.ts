/* Outside measurement: plates under film in the field. Reach: 7 in 10 within 2 K and the bias within 1.5 K, with the
 * flutter that is shipped, an engineering choice made before. One chosen at the other cases is printed beside it. */
import { describe, expect, test } from 'vitest'
import { FIELDS } from '#model/design/scenario'
import { FILM_CASES } from './cases.ts'
import {
  discView_frac,
  filmError_K,
  filmSummary,
  leaveOneCaseOut,
  SHIPPED_FLUTTER,
  splitHalf,
} from './choice.ts'

describe('plates under film in the field', () => {
  test('the flutter judged is the one that a new design has', () => {
    expect(FIELDS.cover.flutter_frac.default).toBe(SHIPPED_FLUTTER)
  })
  test('as shipped: 7 in 10 within 2 K, bias within 1.5 K', () => {
    const { bias_K, within } = filmSummary(FILM_CASES.map((one) => filmError_K(one)))
    expect(within / FILM_CASES.length).toBeGreaterThanOrEqual(0.7)
    expect(Math.abs(bias_K)).toBeLessThanOrEqual(1.5)
  })
  const left = filmSummary(leaveOneCaseOut().map(({ error_K }) => error_K))
  test('chosen at the other cases: bias within 1.5 K', () => {
    expect(Math.abs(left.bias_K)).toBeLessThanOrEqual(1.5)
  })
  test('chosen at the other cases: 7 in 10 within 2 K', () => {
    expect(left.within / FILM_CASES.length).toBeGreaterThanOrEqual(0.7)
  })
  test('chosen at one half, judged at the other: bias within 1.5 K', () => {
    const { bias_K, within_frac, halves } = splitHalf()
    console.log(`film, ${halves} halves: ${(100 * within_frac).toFixed(0)} % within 2 K`)
    expect(Math.abs(bias_K)).toBeLessThanOrEqual(1.5)
  })
  // A disc of 0.1 m radius sunk by 25 and 50 mm, worked out apart: 0.779 and 0.610, printed to 0.001.
  test('view out of a recess', () => {
    expect(discView_frac(0.2, 0.025)).toBeCloseTo(0.779, 3)
    expect(discView_frac(0.2, 0.05)).toBeCloseTo(0.61, 3)
  })
  test('a still gap alone is too cold: what the flutter is there for', () => {
    expect(filmSummary(FILM_CASES.map((one) => filmError_K(one, 0))).bias_K).toBeGreaterThan(1)
  })
})
