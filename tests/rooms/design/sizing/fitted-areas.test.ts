import { describe, expect, test } from 'vitest'
import { linearFit, seededUniform, slicedHypercube } from '#model/basis/numbers'
import { areasFromFirst, drawsToSimulate, spreadOf } from '#model/design/sizing'

const DIMENSIONS = 13
const DRAWS = 256
const inputs = Array.from({ length: DIMENSIONS }, (_, i) => ({
  field: `f${i}`,
  label: `f${i}`,
  low: i,
  high: i + 2,
}))
const points = slicedHypercube(8, 32, DIMENSIONS, seededUniform(20_261))
const values = Array.from({ length: DRAWS }, (_, i) =>
  inputs.map(({ low, high }, k) => low + (high - low) * points[i * DIMENSIONS + k]!),
)

/** Made areas: their logarithm straight in the inputs, with a bend. */
function madeAreas(bend: number): number[] {
  return values.map((draw) => {
    const u = draw.map((value, k) => value - inputs[k]!.low - 1)
    return Math.exp(1 + 0.3 * u[0]! - 0.2 * u[1]! + 0.1 * u[5]! + bend * u[0]! * u[1]!)
  })
}

describe('a sliced hypercube (Qian 2012)', () => {
  test.each([32, DRAWS])(
    'its first %d points have one in each of so many slices of each dimension',
    (count) => {
      for (let d = 0; d < DIMENSIONS; d++) {
        const slices = Array.from({ length: count }, (_, i) =>
          Math.floor(points[i * DIMENSIONS + d]! * count),
        )
        expect(slices.toSorted((a, b) => a - b)).toEqual([...Array(count).keys()])
      }
    },
  )
})

test('what a straight fit misses a left-out point by is what it misses when fitted without it', () => {
  const uniform = seededUniform(3)
  const at = Array.from({ length: 12 }, () => [uniform(), uniform(), uniform()])
  const found = at.map(([a, b]) => 2 + a! - 3 * b! + 0.1 * uniform())
  const fit = linearFit(at, found)!
  for (let n = 0; n < at.length; n++) {
    const without = linearFit(at.toSpliced(n, 1), found.toSpliced(n, 1))!
    expect(fit.missed[n]).toBeCloseTo(found[n]! - without.at(at[n]!), 9)
  }
  expect(linearFit(at.slice(0, 4), found.slice(0, 4))).toBeNull()
})

describe('the areas of all draws from the first', () => {
  const most_m2 = 100
  test('are read where the fit is good, within 3 % at the 10, 50 and 90 % areas, with the same drivers in front', () => {
    const true_m2 = madeAreas(0.03)
    const found = areasFromFirst(true_m2.slice(0, 32), inputs, values, most_m2)!
    expect(found.simulated).toBe(32)
    expect(found.miss_frac).toBeGreaterThan(0)
    expect(found.miss_frac).toBeLessThanOrEqual(0.03)
    const read = spreadOf(found.areas_m2, inputs, values, found)
    const truth = spreadOf(true_m2, inputs, values)
    for (const key of ['low_m2', 'middle_m2', 'high_m2'] as const)
      expect(Math.abs(read[key]! / truth[key]! - 1)).toBeLessThan(0.03)
    expect(read.drivers.slice(0, 3).map(({ field }) => field)).toEqual(['f0', 'f1', 'f5'])
    expect(found.areas_m2.slice(0, 32)).toEqual(true_m2.slice(0, 32))
  })
  test('are not read where the fit misses by more, nor past the largest area, nor where a draw needs none or has none', () => {
    const first = (bend: number): number[] => madeAreas(bend).slice(0, 32)
    expect(areasFromFirst(first(0.3), inputs, values, most_m2)).toBeNull()
    expect(areasFromFirst(first(0.03), inputs, values, 0.8 * Math.max(...first(0.03)))).toBeNull()
    expect(areasFromFirst([...first(0.03).slice(1), 0], inputs, values, most_m2)).toBeNull()
    expect(areasFromFirst([...first(0.03).slice(1), null], inputs, values, most_m2)).toBeNull()
  })
  test('all of them simulated are taken as they are', () => {
    const all = madeAreas(0.3)
    expect(areasFromFirst(all, inputs, values, most_m2)).toEqual({
      areas_m2: all,
      simulated: DRAWS,
      miss_frac: null,
    })
  })
  test('64 alike speak for the rest where none is enough or none is needed', () => {
    for (const area of [null, 0]) {
      expect(areasFromFirst(new Array(32).fill(area), inputs, values, most_m2)).toBeNull()
      const found = areasFromFirst(new Array(64).fill(area), inputs, values, most_m2)!
      expect(found.areas_m2).toEqual(new Array(DRAWS).fill(area))
    }
  })
  test('more are simulated by doubling, up to all', () => {
    const steps = [0, 32, 64, 128].map((done) => drawsToSimulate(done, DRAWS))
    expect(steps).toEqual([32, 64, 128, 256])
    expect(drawsToSimulate(0, 8)).toBe(8)
    expect(drawsToSimulate(64, 100)).toBe(100)
  })
})
