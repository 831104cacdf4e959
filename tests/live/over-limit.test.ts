import { expect, it } from 'vitest'
import { stepOf, STEPS, stepsInWords } from '#ui/year/over-limit.ts'
import { shownQuantity } from '#ui/words/quantity.ts'

it('the steps of the picture are given in kelvin, and in degrees Fahrenheit by the factor 1.8', () => {
  const words = (system: 'si' | 'us') => stepsInWords(shownQuantity('K', system)).map((step) => step.words)
  expect(words('si')).toEqual([
    'over 9 below',
    '6 to 9 below',
    '3 to 6 below',
    'up to 3 below',
    'up to 2 above',
    '2 to 4 above',
    'over 4 above',
  ])
  expect(words('us').slice(3)).toEqual([
    'up to 5.4 below',
    'up to 3.6 above',
    '3.6 to 7.2 above',
    'over 7.2 above',
  ])
})

it('a temperature falls into the step whose words hold it', () => {
  expect([-20, -7, -0.1, 0, 0.1, 3, 40].map(stepOf)).toEqual([0, 1, 3, 3, 4, 5, STEPS.length - 1])
})
