import { expect, test } from 'vitest'
import { tryCase } from './property.ts'

/* A few of the cases of `npm run -s intake-check`, which runs thousands. */
const CASES = 40

test('tables written at random are read right, asked about or refused, never wrong in silence', () => {
  const cases = Array.from({ length: CASES }, (_, i) => tryCase(5001 + i))
  expect(cases.filter(({ verdict }) => verdict === 'wrong')).toEqual([])
  expect(cases.filter(({ verdict }) => verdict === 'right').length).toBeGreaterThan(CASES / 8)
})
