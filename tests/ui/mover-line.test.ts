import { describe, expect, test } from 'vitest'
import { figure, words, wordingText } from '#model/basis/words'
import { moverLine } from '#ui/steps/mover-line.ts'

describe('one plain line of what to buy', () => {
  const flow = figure(1e-4, 'liquidFlow', 2)
  const head = figure(25400, 'head', 3)
  test('has the first flow, head and power of the full words', () => {
    const full = words`pump (P1): at least ${flow} against ${head} (about ${figure(5, 'W', 2)}), and ${figure(40000, 'head', 3)} at no flow; then ${figure(2, 'W', 2)}`
    const plain = (unit: 'liquidFlow' | 'head' | 'W', value: number, digits: number) =>
      wordingText([figure(value, unit, digits)], 'si')
    expect(wordingText(moverLine(full, 'water'), 'si')).toBe(
      `a pump that moves at least ${plain('liquidFlow', 1e-4, 2)} against a head of ${plain('head', 25400, 3)}; it draws about ${plain('W', 5, 2)}.`,
    )
  })
  test('leaves words without such figures as they are', () => {
    const full = words`pump: ${flow}`
    expect(moverLine(full, 'water')).toBe(full)
  })
})
