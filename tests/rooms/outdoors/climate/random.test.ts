import { describe, expect, test } from 'vitest'
import { gaussian, persistentSeries, seededRandom } from '#model/basis/numbers'
import { exceedance } from '#inside/model/outdoors/climate/wind-year.ts'

const DRAWS = 100_000
const mean = (values: ArrayLike<number>) =>
  Array.from(values).reduce((sum, value) => sum + value, 0) / values.length

describe('the seeded source', () => {
  test('same seed, same numbers; another seed, others; all in [0, 1)', () => {
    const [a, b, c] = [seededRandom(7), seededRandom(7), seededRandom(8)]
    const first = Array.from({ length: 1000 }, a)
    expect(Array.from({ length: 1000 }, b)).toEqual(first)
    expect(Array.from({ length: 1000 }, c)).not.toEqual(first)
    expect(first.every((value) => value >= 0 && value < 1)).toBe(true)
  })

  // exact: mean 1/2, variance 1/12 of a uniform share; tolerance 4 standard errors of 100 000 draws
  test('uniform: mean 0.5 ± 0.004, variance 1/12 ± 0.001', () => {
    const random = seededRandom(1)
    const draws = Float64Array.from({ length: DRAWS }, random)
    expect(Math.abs(mean(draws) - 0.5)).toBeLessThan(0.004)
    expect(Math.abs(mean(draws.map((value) => (value - 0.5) ** 2)) - 1 / 12)).toBeLessThan(0.001)
  })

  // exact: standard normal; 4 standard errors are 0.013 (mean), 0.018 (variance)
  test('gaussian: mean 0, variance 1, 15.87 % above one standard deviation', () => {
    const random = seededRandom(2)
    const draws = Float64Array.from({ length: DRAWS }, () => gaussian(random))
    expect(Math.abs(mean(draws))).toBeLessThan(0.013)
    expect(Math.abs(mean(draws.map((value) => value * value)) - 1)).toBeLessThan(0.018)
    expect(Math.abs(draws.filter((value) => value > 1).length / DRAWS - 0.1587)).toBeLessThan(0.005)
  })
})

describe('persistent series', () => {
  // exact: an AR(1) series has variance 1 and lag-k correlation ρ^k; tolerance 4 standard errors at ρ = 0.7
  test('variance 1 ± 0.04, lag-1 0.7 ± 0.01, lag-3 0.343 ± 0.02', () => {
    const series = persistentSeries(seededRandom(3), DRAWS, 0.7)
    const lag = (k: number) => mean(series.subarray(k).map((value, at) => value * series[at]!))
    expect(Math.abs(lag(0) - 1)).toBeLessThan(0.04)
    expect(Math.abs(lag(1) / lag(0) - 0.7)).toBeLessThan(0.01)
    expect(Math.abs(lag(3) / lag(0) - 0.343)).toBeLessThan(0.02)
  })

  test('a correlation outside [0, 1) is a programmer’s error', () => {
    expect(() => persistentSeries(seededRandom(1), 5, 1)).toThrow(RangeError)
    expect(() => persistentSeries(seededRandom(1), 5, NaN)).toThrow(RangeError)
  })
})

// published: tables of the normal distribution (5 digits). The approximation claims 2e-4.
test.each([
  [-2, 0.97725],
  [-1, 0.84134],
  [0, 0.5],
  [0.5, 0.30854],
  [1, 0.15866],
  [1.96, 0.025],
  [3, 0.00135],
])('share of a standard normal above %s is %s within 2e-4', (x, want) => {
  expect(Math.abs(exceedance(x) - want)).toBeLessThan(2e-4)
})
