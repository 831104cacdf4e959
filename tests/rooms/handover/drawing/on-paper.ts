import { expect } from 'vitest'
import type { Drawing } from '#model/handover/drawing'
import { wordingText } from '#model/basis/words'

/** A drawing is at most this large, mm: A4 or Letter between their margins. */
const PAPER = [188, 250] as const
/** A letter of a drawing is at most this wide, mm, at the height it is drawn. */
const LETTER_WIDE = 1.75

/** Every line and every text of a drawing begins on its paper, and that fits the page. */
export function expectOnPaper({ id, width, height, shapes, us }: Drawing): void {
  if (us !== undefined) expectOnPaper(us)
  expect(width, id).toBeLessThanOrEqual(PAPER[0])
  expect(height, id).toBeLessThanOrEqual(PAPER[1])
  for (const shape of shapes) {
    for (const [x, y] of shape.kind === 'path' ? shape.points : [shape.at]) {
      const said = `${id} ${JSON.stringify(shape)}`
      expect(Number.isFinite(x) && Number.isFinite(y), said).toBe(true)
      expect(x, said).toBeGreaterThanOrEqual(-0.01)
      expect(x, said).toBeLessThanOrEqual(width + 0.01)
      expect(y, said).toBeGreaterThanOrEqual(-0.01)
      expect(y, said).toBeLessThanOrEqual(height + 0.01)
    }
  }
}

/** No text runs out over the edge, in either system of units. */
export function expectTextOnPaper({ id, width, shapes, us }: Drawing): void {
  if (us !== undefined) expectTextOnPaper(us)
  for (const shape of shapes) {
    if (shape.kind !== 'text' || shape.turned) continue
    for (const system of ['si', 'us'] as const) {
      const wide = LETTER_WIDE * wordingText(shape.text, system).length
      const before = shape.anchor === 'start' ? 0 : shape.anchor === 'end' ? wide : wide / 2
      const said = `${id}: ${wordingText(shape.text, system)}`
      expect(shape.at[0] - before, said).toBeGreaterThanOrEqual(-1)
      expect(shape.at[0] - before + wide, said).toBeLessThanOrEqual(width + 1)
    }
  }
}
