import { disc, head, label, outline, path, type Shape, type Spot } from './shapes.ts'

/** A valve is drawn where a pipe is so long, mm. */
const VALVE = 3

/** One row of the plan, on paper: its fed corner, its drained corner. */
export interface RowEnds {
  readonly fed: Spot
  readonly drained: Spot
}

/** Supply and return, `aside` of the field, from where they come through the roof, `through` off its edges, to the corners of each row; mm. */
export function roofPipes(rows: readonly RowEnds[], aside: number, through: number): Shape[] {
  const fedX = rows[0]!.fed[0]
  const farX = Math.max(...rows.map(({ drained }) => drained[0]))
  const left = fedX - aside
  const right = farX + aside
  const first = rows[0]!
  const last = rows.at(-1)!
  const up: Spot = [left, last.fed[1] + through]
  const down: Spot = [right, first.drained[1] - through]
  return [
    path([up, [left, first.fed[1]]], 'supply'),
    path([[right, last.drained[1]], down], 'return'),
    ...rows.flatMap(({ fed, drained }) => [
      path([[left, fed[1]], fed], 'supply'),
      path([drained, [right, drained[1]]], 'return'),
      ...(aside > VALVE ? balancing([(left + fed[0]) / 2 - 0.4, fed[1]]) : []),
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
