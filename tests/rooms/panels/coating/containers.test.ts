import { describe, expect, test } from 'vitest'
import fc from 'fast-check'
import { CANS_gal, CANS_L, containersFor, TUBS_kg } from '#model/panels/paint'

const held = (amount: number, sizes: readonly number[]): number =>
  containersFor(amount, sizes).reduce((sum, { size, count }) => sum + size * count, 0)

describe('containers to buy', () => {
  test.each([
    [
      7.2,
      TUBS_kg,
      [
        [5, 1],
        [2.5, 1],
      ],
    ],
    [25, TUBS_kg, [[25, 1]]],
    [
      63,
      TUBS_kg,
      [
        [25, 2],
        [10, 1],
        [5, 1],
      ],
    ],
    [0.34, CANS_L, [[0.5, 1]]],
    [0.06, CANS_gal, [[1 / 16, 1]]],
    [0, CANS_L, []],
  ])('%d: by hand', (amount, sizes, expected) => {
    expect(containersFor(amount, sizes).map(({ size, count }) => [size, count])).toEqual(expected)
  })
  test('always hold the amount, and never more than the next size up would leave over', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 400, noNaN: true }),
        fc.constantFrom(TUBS_kg, CANS_L, CANS_gal),
        (amount, sizes) => {
          const bought = held(amount, sizes)
          expect(bought).toBeGreaterThanOrEqual(amount - 1e-6)
          const largest = sizes.at(-1)!
          const rest = amount - Math.floor(amount / largest + 1e-9) * largest
          const single = sizes.find((size) => size >= rest - 1e-9)!
          if (rest > 1e-6) expect(bought - amount).toBeLessThanOrEqual(single - rest + 1e-6)
        },
      ),
      { numRuns: 500, seed: 3 },
    )
  })
  test('an amount that is none is refused', () => {
    expect(() => containersFor(NaN, CANS_L)).toThrow(RangeError)
    expect(() => containersFor(-1, CANS_L)).toThrow(RangeError)
    expect(() => containersFor(1, [])).toThrow(RangeError)
  })
})
