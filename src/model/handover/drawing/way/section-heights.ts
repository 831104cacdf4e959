import { figure, words, type Text } from '#model/basis/words'
import { label, path, type Shape } from '../shapes.ts'
import type { Paper } from './section-paper.ts'
import type { Piece, WayFacts } from './way-facts.ts'

/** Between two lines of text, mm. */
const PITCH = 3.4
/** Highest line, mm from the top of the paper. */
const TOP = 3

interface Mark {
  readonly z_m: number
  readonly what: Text
}

/** All heights that are given, from the highest down. */
function marksOf(facts: WayFacts, pieces: readonly Piece[]): Mark[] {
  const made = pieces.filter((piece) => piece.made && (piece.mark[0] !== 'F' || piece.mark === 'F1'))
  const marks: Mark[] = [
    { z_m: facts.height_m, what: 'ceiling' },
    { z_m: 0, what: 'floor' },
    ...made.flatMap(({ mark, low_m, high_m }) => [
      { z_m: high_m, what: words`${mark} upper edge` },
      { z_m: low_m, what: words`${mark} lower edge` },
    ]),
    ...(facts.ceilingFan?.ceiling === true ? [{ z_m: facts.ceilingFan.blades_m, what: 'blades' }] : []),
  ]
  return marks.toSorted((a, b) => b.z_m - a.z_m)
}

/** Paper that the list of heights takes above the ground, mm. */
export const heightsNeed = (facts: WayFacts, pieces: readonly Piece[]): number =>
  PITCH * marksOf(facts, pieces).length

/** Heights on the right, each at its level or, where they are close, above the one below. */
export function heights({ facts, at }: Paper, pieces: readonly Piece[], right: number): Shape[] {
  const marks = marksOf(facts, pieces)
  const textYs: number[] = []
  let last = Infinity
  for (const { z_m } of marks.toReversed()) {
    last = Math.min(at(0, z_m)[1], last - PITCH)
    textYs.unshift(last)
  }
  // where that leaves the paper at its top, down again from there
  textYs.forEach((y, i) => (textYs[i] = Math.max(y, i === 0 ? TOP : textYs[i - 1]! + PITCH)))
  return marks.flatMap(({ z_m, what }, i): Shape[] => {
    const y = at(0, z_m)[1]
    const textY = textYs[i]!
    return [
      path(
        [
          [right + 2, y],
          [right + 5, y],
          [right + 9, textY],
        ],
        'thin',
      ),
      label([right + 10, textY + 1], words`+${figure(z_m, 'span', 2)} ${what}`, 'start'),
    ]
  })
}
