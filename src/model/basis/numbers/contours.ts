/** A point in steps of the grid: x along columns, y along rows. */
export type GridPoint = readonly [x: number, y: number]

/** A line of equal value; closed when its first and last point are one. */
export type ContourLine = readonly GridPoint[]

/** Values on the crossings of a grid, row by row: `values[row * columns + column]`. NaN: not known. */
export interface ValueGrid {
  readonly columns: number
  readonly rows: number
  readonly values: ArrayLike<number>
}

/** The two ends of a piece of line in one square, each on an edge of the grid that names it. */
interface Piece {
  readonly from: EdgePoint
  readonly to: EdgePoint
}
interface EdgePoint {
  readonly edge: string
  readonly at: GridPoint
}

/**
 * Lines along which values that are linear between neighbouring crossings reach a level. Squares with an unknown
 * corner are left out. In a saddle the mean of the corners decides which pair is joined.
 * @throws RangeError when the values do not fill the grid
 * Source: marching squares, the two-dimensional case of Lorensen & Cline 1987, Computer Graphics 21(4), 163–169.
 */
export function contourLines(grid: ValueGrid, level: number): ContourLine[] {
  if (grid.values.length !== grid.columns * grid.rows)
    throw new RangeError(
      `contours: ${grid.values.length} values for a grid of ${grid.columns} × ${grid.rows}`,
    )
  const pieces: Piece[] = []
  for (let row = 0; row + 1 < grid.rows; row++)
    for (let column = 0; column + 1 < grid.columns; column++)
      pieces.push(...piecesIn(grid, column, row, level))
  return joined(pieces)
}

/** Corners of a square, round about: (0,0), (1,0), (1,1), (0,1). */
const CORNERS = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
] as const

function piecesIn(grid: ValueGrid, column: number, row: number, level: number): Piece[] {
  const at = CORNERS.map(([dx, dy]) => [column + dx, row + dy] as const)
  const heights = at.map(([x, y]) => grid.values[y * grid.columns + x]! - level)
  if (heights.some((height) => Number.isNaN(height))) return []
  const crossings: EdgePoint[] = []
  for (let side = 0; side < 4; side++) {
    const next = (side + 1) % 4
    if (heights[side]! > 0 === heights[next]! > 0) continue
    crossings.push(edgePoint(at[side]!, at[next]!, heights[side]!, heights[next]!))
  }
  if (crossings.length < 2) return []
  const [a, b, c, d] = crossings as [EdgePoint, EdgePoint, EdgePoint?, EdgePoint?]
  if (c === undefined || d === undefined) return [{ from: a, to: b }]
  const middle = heights.reduce((sum, height) => sum + height, 0) / 4
  const cutsOffFirst = middle > 0 !== heights[0]! > 0
  return cutsOffFirst
    ? [
        { from: d, to: a },
        { from: b, to: c },
      ]
    : [
        { from: a, to: b },
        { from: c, to: d },
      ]
}

/** The same point, to the last bit, from both squares that share the edge. */
function edgePoint(a: GridPoint, b: GridPoint, heightA: number, heightB: number): EdgePoint {
  if (a[0] + a[1] > b[0] + b[1]) return edgePoint(b, a, heightB, heightA)
  const share = heightA / (heightA - heightB)
  return {
    edge: `${a.join()} ${b.join()}`,
    at: [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])],
  }
}

/** Joins pieces that meet on an edge into lines as long as can be. */
function joined(pieces: readonly Piece[]): ContourLine[] {
  const left = new Set(pieces)
  const meeting = new Map<string, Piece[]>()
  for (const piece of pieces)
    for (const { edge } of [piece.from, piece.to]) meeting.set(edge, [...(meeting.get(edge) ?? []), piece])
  const follow = (start: EdgePoint): GridPoint[] => {
    const points: GridPoint[] = []
    let end = start
    for (;;) {
      const next = meeting.get(end.edge)!.find((piece) => left.has(piece))
      if (next === undefined) return points
      left.delete(next)
      end = next.from.edge === end.edge ? next.to : next.from
      points.push(end.at)
    }
  }
  const lines: ContourLine[] = []
  for (const piece of pieces) {
    if (!left.delete(piece)) continue
    const onward = follow(piece.to)
    const back = follow(piece.from)
    lines.push([...back.reverse(), piece.from.at, piece.to.at, ...onward])
  }
  return lines
}
