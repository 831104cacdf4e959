import fc from 'fast-check'
import { expect, test } from 'vitest'
import { largerAreas } from '#inside/model/design/sizing/larger-areas.ts'

/* Label: exact. Planted measures: 0 at 6 m², falling with the logarithm of the area, and over it again in a span. */
const FOUND = 6
const over =
  (from_m2: number, until_m2: number) =>
  (area_m2: number): number =>
    area_m2 >= from_m2 && area_m2 <= until_m2 ? 0.5 : Math.log(6 / area_m2)

test('a measure that only falls is met at all the areas looked at, which are named and no more than 42 % apart', () => {
  const found = largerAreas(FOUND, [], 100, over(200, 200))
  expect(found.missedAgainFrom_m2).toBeNull()
  expect(found.looked_m2).toHaveLength(6)
  expect(found.looked_m2).toEqual(found.looked_m2.toSorted((a, b) => a - b))
  expect(found.looked_m2.at(-1)).toBe(24)
  expect(found.widestStep_frac).toBeLessThan(0.42)
})
test.each([
  [6.5, 7],
  [9, 10],
  [16, 18],
])('a miss from %f to %f m², between the multiples 1.25, 2 and 4, is found', (from_m2, until_m2) => {
  const { missedAgainFrom_m2 } = largerAreas(FOUND, [], 100, over(from_m2, until_m2))
  expect(missedAgainFrom_m2).toBeGreaterThanOrEqual(from_m2)
  expect(missedAgainFrom_m2).toBeLessThanOrEqual(until_m2)
})
test('a miss that the search saw itself needs no look', () => {
  const known = [{ area_m2: 13, measure: 0.2 }]
  expect(largerAreas(FOUND, known, 100, over(200, 200)).missedAgainFrom_m2).toBe(13)
})
test('nothing is looked at beyond the largest area, and none twice', () => {
  fc.assert(
    fc.property(fc.double({ min: 6, max: 40, noNaN: true }), (most_m2) => {
      const looked: number[] = []
      const { looked_m2 } = largerAreas(FOUND, [], most_m2, (area_m2) => {
        looked.push(area_m2)
        return over(200, 200)(area_m2)
      })
      expect(looked.every((area_m2) => area_m2 <= most_m2)).toBe(true)
      expect(new Set(looked).size).toBe(looked.length)
      expect(looked_m2).toEqual(looked.toSorted((a, b) => a - b))
    }),
    { numRuns: 100, seed: 5 },
  )
})
