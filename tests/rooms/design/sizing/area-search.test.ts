import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { smallestArea } from '#inside/model/design/sizing/area-search.ts'

/* Label: exact. Measures whose zero is known by construction; the search promises 0.3 % and the met side. */
const TOLERANCE = 0.003

const SHAPES: Readonly<Record<string, (area: number, root: number) => number>> = {
  'straight line': (area, root) => root - area,
  hyperbola: (area, root) => root / area - 1,
  'knee with a long flat tail': (area, root) => Math.exp(-area / 10) - Math.exp(-root / 10),
  'cube root': (area, root) => Math.cbrt(root - area),
  step: (area, root) => (area < root ? 1 : -1),
}

describe.each(Object.entries(SHAPES))('%s', (_, shape) => {
  test('any root between 0.1 and 50 m² from any guess: found on the met side, within 0.3 %, in ≤ 24 years', () => {
    const areas = fc.double({ min: 0.1, max: 50, noNaN: true })
    fc.assert(
      fc.property(areas, areas, (root, guess) => {
        const found = smallestArea((area) => shape(area, root), { guess_m2: guess, max_m2: 60 })
        expect(found.trials.length).toBeLessThanOrEqual(24)
        expect(shape(found.area_m2!, root)).toBeLessThanOrEqual(0)
        expect(1 - root / found.area_m2!).toBeLessThanOrEqual(TOLERANCE + 1e-9)
      }),
      { numRuns: 200, seed: 8 },
    )
  })
})

test('out of reach at the largest area: null, and the largest area was tried', () => {
  const found = smallestArea(() => 1, { guess_m2: 5, max_m2: 60 })
  expect(found.area_m2).toBeNull()
  expect(found.trials.at(-1)!.area_m2).toBe(60)
})

test('met only at the very largest area: that area, within the tolerance', () => {
  const found = smallestArea((area) => (area >= 60 ? 0 : 1), { guess_m2: 5, max_m2: 60 })
  expect(found.area_m2).toBe(60)
})

test('met by next to nothing: an area under 0.1 m², never 0', () => {
  const found = smallestArea(() => -1, { guess_m2: 5, max_m2: 60 })
  expect(found.area_m2!).toBeGreaterThan(0)
  expect(found.area_m2!).toBeLessThan(0.1)
})

test('a guess beyond the largest area is brought inside it', () => {
  const found = smallestArea((area) => 10 - area, { guess_m2: 500, max_m2: 20 })
  expect(Math.max(...found.trials.map((trial) => trial.area_m2))).toBe(20)
  expect(found.area_m2!).toBeGreaterThanOrEqual(10)
})

test('an exact hit ends the search', () => {
  const found = smallestArea((area) => (area >= 8 ? 0 : 1), { guess_m2: 8, max_m2: 60 })
  expect(found.area_m2! / 8 - 1).toBeLessThanOrEqual(TOLERANCE)
})
