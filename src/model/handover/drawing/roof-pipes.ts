import { disc, head, label, outline, path, type Shape, type Spot } from './shapes.ts'

/** Pipes run so far off the modules, on paper, mm; nearer where the roof ends before. */
const OFF = 4.5
const NEAREST = 2
/** From the field's edge to the place where a pipe goes through the roof, mm. */
const THROUGH = 2.4

/** One row of the plan, on paper: its fed corner, its drained corner. */
export interface RowEnds {
  readonly fed: Spot
  readonly drained: Spot
}

/** Supply and return on the roof, from where they come through it to the corners of each row. */
export function roofPipes(rows: readonly RowEnds[], roofLeft: number, roofRight: number): Shape[] {
  const fedX = rows[0]!.fed[0]
  const farX = Math.max(...rows.map(({ drained }) => drained[0]))
  const left = fedX - Math.max(NEAREST, Math.min(OFF, fedX - roofLeft - 1))
  const right = farX + Math.max(NEAREST, Math.min(OFF, roofRight - farX - 1))
  const first = rows[0]!
  const last = rows.at(-1)!
  const up: Spot = [left, last.fed[1] + THROUGH]
  const down: Spot = [right, first.drained[1] - THROUGH]
  return [
    path([up, [left, first.fed[1]]], 'supply'),
    path([[right, last.drained[1]], down], 'return'),
    ...rows.flatMap(({ fed, drained }) => [
      path([[left, fed[1]], fed], 'supply'),
      path([drained, [right, drained[1]]], 'return'),
      ...(fed[0] - left > 3.5 ? balancing([(left + fed[0]) / 2 - 0.4, fed[1]]) : []),
      head(fed, [1, 0]),
    ]),
    disc(up, 1.3, 'ink'),
    disc(down, 1.3, 'paper', 'thick'),
    label([up[0] - 2.2, up[1] + 1], 'U', 'end', { bold: true }),
    label([down[0] + 2.2, down[1] + 1], 'D', 'start', { bold: true }),
  ]
}

/** The valve of a row, small. */
function balancing([x, y]: Spot): Shape[] {
  const r = 1.1
  return [
    outline(
      [
        [x - r, y - r],
        [x + r, y + r],
        [x + r, y - r],
        [x - r, y + r],
      ],
      'line',
      'paper',
    ),
  ]
}
