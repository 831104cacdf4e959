import { describe, expect, test } from 'vitest'
import { latinHypercube, rankCorrelation, seededUniform } from '#model/basis/numbers'
import { spreadOf } from '#model/design/sizing'

describe('latin hypercube (McKay, Beckman & Conover 1979, Technometrics 21, 239–245: one point in each slice)', () => {
  const draws = 64
  const dimensions = 11
  const points = latinHypercube(draws, dimensions, seededUniform(7))

  test('every slice of every dimension holds exactly one point', () => {
    for (let d = 0; d < dimensions; d++) {
      const slices = Array.from({ length: draws }, (_, i) => Math.floor(points[i * dimensions + d]! * draws))
      expect(slices.toSorted((a, b) => a - b)).toEqual(Array.from({ length: draws }, (_, i) => i))
    }
  })

  test('the mean of each dimension is ½ within half a slice (each point is off its slice’s middle by less)', () => {
    for (let d = 0; d < dimensions; d++) {
      let sum = 0
      for (let i = 0; i < draws; i++) sum += points[i * dimensions + d]!
      expect(Math.abs(sum / draws - 0.5)).toBeLessThan(0.5 / draws)
    }
  })

  test('no two dimensions march together: rank correlations stay under 3.5/√n', () => {
    const column = (d: number): number[] =>
      Array.from({ length: draws }, (_, i) => points[i * dimensions + d]!)
    for (let a = 0; a < dimensions; a++)
      for (let b = 0; b < a; b++)
        expect(Math.abs(rankCorrelation(column(a), column(b)))).toBeLessThan(3.5 / Math.sqrt(draws))
  })

  test('the same seed gives the same points, another seed others', () => {
    expect(latinHypercube(draws, dimensions, seededUniform(7))).toEqual(points)
    expect(latinHypercube(draws, dimensions, seededUniform(8))).not.toEqual(points)
  })
})

test('the uniform numbers fill 0…1 evenly: each tenth holds a tenth of 100 000 within 5 standard errors; seed 0 works too', () => {
  for (const seed of [0, 1, 20_261]) {
    const next = seededUniform(seed)
    const tenths = new Array<number>(10).fill(0)
    for (let i = 0; i < 100_000; i++) tenths[Math.floor(next() * 10)]!++
    for (const count of tenths) expect(Math.abs(count - 10_000)).toBeLessThan(5 * Math.sqrt(9000))
  }
})

describe('rank correlation (Spearman 1904; hand-worked rows)', () => {
  test.each([
    [[1, 2, 3, 4, 5], [2, 4, 9, 16, 100], 1],
    [[1, 2, 3, 4, 5], [5, 4, 3, 2, 1], -1],
    // d² = 1 + 1 + 1 + 1 + 0 = 4: 1 − 6·4/(5·24) = 0.8
    [[1, 2, 3, 4, 5], [2, 1, 4, 3, 5], 0.8],
    [[1, 2, 3], [7, 7, 7], 0],
    // ties take their mean rank: ranks 0.5, 0.5, 2 against 0, 1, 2 give 1.5/√(1.5·2)
    [[4, 4, 6], [1, 2, 3], 1.5 / Math.sqrt(3)],
  ])('%j against %j: %f', (a, b, want) => {
    expect(rankCorrelation(a, b)).toBeCloseTo(want, 12)
  })
})

describe('spread of a set of draws', () => {
  const inputs = [
    { field: 'a', label: 'A', low: 0, high: 1 },
    { field: 'b', label: 'B', low: 0, high: 1 },
  ]
  const values = Array.from({ length: 10 }, (_, i) => [i % 2, i])

  test('10, 50 and 90 % of ten draws, and the input that moves them first', () => {
    const spread = spreadOf([1, 2, 3, 4, 5, 6, 7, 8, 9, 10], inputs, values)
    expect([spread.low_m2, spread.middle_m2, spread.high_m2]).toEqual([2, 6, 10])
    expect(spread.unreachable_frac).toBe(0)
    expect(spread.drivers.map((driver) => driver.field)).toEqual(['b', 'a'])
    expect(spread.drivers[0]!.correlation).toBeCloseTo(1, 12)
  })

  test('draws out of reach count as larger than all others', () => {
    const spread = spreadOf([1, 2, 3, 4, 5, 6, null, null, null, null], inputs, values)
    expect([spread.low_m2, spread.middle_m2, spread.high_m2]).toEqual([2, 6, null])
    expect(spread.unreachable_frac).toBe(0.4)
  })

  test('no draw in reach: no area is claimed', () => {
    const spread = spreadOf(new Array<null>(10).fill(null), inputs, values)
    expect([spread.low_m2, spread.middle_m2, spread.high_m2]).toEqual([null, null, null])
    expect(spread.unreachable_frac).toBe(1)
  })
})
