import { box, label, path, type Shape } from '../shapes.ts'
import type { Paper } from './section-paper.ts'
import type { Piece, WayFacts } from './way-facts.ts'

/** Frame and height of a cooler, an outdoor unit's, m (common practice, no source). */
const COOLER_m = { off: 0.15, across: 0.9, high: 1 }
const OUTDOOR_m = { off: 0.2, across: 0.35, high: 0.6, foot: 0.3 }

/** Cooler or outdoor unit behind the back wall. */
export function machines({ facts, at, mm }: Paper, pieces: readonly Piece[]): Shape[] {
  const wall_m = facts.width_m
  const find = (mark: string) => pieces.find((piece) => piece.mark === mark)
  const duct = find('D1')
  const unit = find('A1')
  const shapes: Shape[] = []
  if (facts.cooler !== null && duct !== undefined) {
    const foot_m = Math.max(0.1, (duct.low_m + duct.high_m) / 2 - 0.5 * COOLER_m.high)
    const [x, y] = at(wall_m + COOLER_m.off, foot_m + COOLER_m.high)
    const wide = mm(COOLER_m.across)
    shapes.push(
      box([x, y], wide, mm(COOLER_m.high), 'thick', 'pale'),
      label([x + wide / 2, y + 4], 'E1', 'middle', { bold: true }),
      box(at(wall_m, duct.high_m), mm(COOLER_m.off), mm(duct.high_m - duct.low_m), 'line', 'paper'),
      ...[0.15, 0.85].map((share) =>
        path([
          [x + share * wide, y + mm(COOLER_m.high)],
          [x + share * wide, at(0, 0)[1]],
        ]),
      ),
    )
  }
  if (facts.conditioner !== null && unit !== undefined) {
    const [x, y] = at(wall_m + OUTDOOR_m.off, OUTDOOR_m.foot + OUTDOOR_m.high)
    const line = at(wall_m + 0.5 * OUTDOOR_m.off, 0)[0]
    shapes.push(
      box([x, y], mm(OUTDOOR_m.across), mm(OUTDOOR_m.high), 'thick', 'pale'),
      label([x + mm(OUTDOOR_m.across) / 2, y + mm(OUTDOOR_m.high) / 2 + 1], 'A2', 'middle', { bold: true }),
      path([at(wall_m, unit.low_m), [line, at(0, unit.low_m)[1]], [line, y + 3], [x, y + 3]], 'supply'),
      path(
        [at(wall_m, unit.low_m - 0.08), [line - 1, at(0, unit.low_m - 0.12)[1]], [line - 1, at(0, 0.1)[1]]],
        'hidden',
      ),
    )
  }
  return shapes
}

/** How far a unit outdoors reaches behind the back wall, m. */
export const beyond_m = ({ cooler, conditioner }: WayFacts): number =>
  cooler !== null
    ? COOLER_m.off + COOLER_m.across
    : conditioner !== null
      ? OUTDOOR_m.off + OUTDOOR_m.across
      : 0.2
