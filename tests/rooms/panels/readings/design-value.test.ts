import { expect, test } from 'vitest'
import { designValue } from '#model/panels/readings'

test('an estimate at 1 is never designed with: the lower end of its interval is', () => {
  expect(designValue({ value: 1, low: 0.93, high: 1, decided_frac: 0.8 })).toBe(0.93)
  expect(designValue({ value: 0.9996, low: 0.91, high: 1, decided_frac: 0.8 })).toBe(0.91)
  expect(designValue({ value: 0.94, low: 0.9, high: 0.97, decided_frac: 0.8 })).toBe(0.94)
})
