import { expect, it } from 'vitest'
import { figure, short, words } from '#model/sheet/words.ts'
import { figureText, wordingText } from '#ui/sheet/figure-text.ts'

const plain = (text: string): string => text.replaceAll('\u00a0', ' ')

it.each([
  [figure(8e-5, 'liquidFlow', 2), '4.8 L/min', '1.3 gal/min'],
  [figure(0.02, 'airFlow', 2), '72 m³/h', '42 ft³/min'],
  [figure(9806.65, 'head'), '9810 Pa (1 m)', '3.3 ft water'],
  [figure(50, 'head'), '50 Pa', '0.017 ft water'],
  [figure(249.082, 'fanPressure'), '249 Pa', '1 in water'],
  [figure(0.0323, 'content', 2), '32 L', '8.5 gal'],
  [figure(981, 'load'), '981 Pa', '20.5 lb/ft²'],
  [short(0.0202), '20.2 mm', '0.795 in'],
  [figure(3, 'K'), '3.0 K', '5.4 °F'],
])('%o is told as %s and %s (NIST SP 811 factors)', (given, si, us) => {
  expect(plain(figureText(given, 'si'))).toBe(si)
  expect(plain(figureText(given, 'us'))).toBe(us)
})

it('wordings keep their numbers and put wordings inside each other', () => {
  const inner = words`of ${figure(2, 'm')}`
  const whole = words`pipes ${inner}, ${'two'} of them`
  expect(whole.filter((part) => typeof part !== 'string')).toHaveLength(1)
  expect(plain(wordingText(whole, 'si'))).toBe('pipes of 2 m, two of them')
})
