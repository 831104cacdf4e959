import fc from 'fast-check'
import { expect, test } from 'vitest'
import { median, quantile, ranked } from '#model/basis/numbers'

/* Label: exact. Definition 7: the values lie at 0, 1/(n − 1), 2/(n − 1) … 1, straight between. */

test.each([
  [[1, 2, 3, 4], 0.1, 1.3],
  [[1, 2, 3, 4], 0.5, 2.5],
  [[10, 20], 0.9, 19],
  [[7], 0.3, 7],
] as const)('quantile of %j at %d is %d', (sorted, share, want) => {
  expect(quantile(sorted, share)).toBeCloseTo(want, 12)
})

test('without values there is none', () => {
  expect(quantile([], 0.5)).toBeNaN()
  expect(median([])).toBeNaN()
})

test('the median leaves as many values below as above, in any order, and does not change them', () => {
  fc.assert(
    fc.property(fc.array(fc.integer(), { minLength: 1 }), (values) => {
      const before = [...values]
      const middle = median(values)
      expect(values).toEqual(before)
      expect(values.filter((one) => one < middle).length).toBeLessThanOrEqual(values.length / 2)
      expect(values.filter((one) => one > middle).length).toBeLessThanOrEqual(values.length / 2)
    }),
  )
})

test('the value of a rank is what sorting puts there', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ noNaN: true, min: -9, max: 9 }), { minLength: 1 }),
      fc.nat(),
      (values, any) => {
        const rank = any % values.length
        expect(ranked(Float64Array.from(values), rank)).toBe(Float64Array.from(values).sort()[rank])
      },
    ),
  )
})
