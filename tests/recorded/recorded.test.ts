import { expect, test } from 'vitest'
import { RECORDED_CASES } from './cases.ts'
import { differences } from './compare.ts'
import { readRecorded } from './file.ts'

/* Regression alone: answers as they were recorded, never evidence that they are right. */

const recorded = readRecorded()

test('there are 200 recorded answers, one for each question', () => {
  expect([...recorded.answers.keys()]).toEqual(RECORDED_CASES.map(({ name }) => name))
  expect(RECORDED_CASES.length).toBe(200)
})

test.each(RECORDED_CASES.filter((_, i) => i % 10 === 0))('$name is as recorded', (one) => {
  expect(differences(one, recorded)).toEqual([])
})
