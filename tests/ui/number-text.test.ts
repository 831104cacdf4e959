import { describe, expect, test } from 'vitest'
import { typedNumber, whyNot } from '#ui/words/number-text.ts'

describe('a number as people type it', () => {
  test.each([
    ['5.5', 5.5],
    ['5,5', 5.5],
    [' 12 ', 12],
    ['−3', -3],
    ['-0,25', -0.25],
    ['.5', 0.5],
    ['1e3', 1000],
    ['1234,5', 1234.5],
    ['0,1255', 0.1255],
  ])('%s', (text, value) => {
    expect(typedNumber(text)).toBe(value)
  })

  test.each(['', ' ', 'abc', '5..5', '5,5,5', '1,000', '12 m', '-', '0x10', 'Infinity'])(
    '%s is none',
    (text) => {
      expect(typedNumber(text)).toBeNaN()
    },
  )

  test('what is wrong is said, with the range', () => {
    expect(whyNot('99', 0.05, 8, 'W/m²K')).toBe('99 is out of range: 0.05 to 8 W/m²K.')
    expect(whyNot('', 0, 1, '')).toBe('A number is needed here: 0 to 1.')
    expect(whyNot('1,000', 0, 9000, 'm')).toContain('1.000 or 1000')
    expect(whyNot('abc', 0, 1, '')).toContain('is no number')
  })
})
