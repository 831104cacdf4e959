import { interpolateParabolic } from '#model/basis/numbers'

/** A grid of values, row by row; `known` says which of them are simulated. */
export interface Sheet {
  readonly columns: number
  readonly rows: number
  readonly values: Float64Array
  readonly known: Uint8Array
}

/** The places of an axis at which it is simulated first, and the axis itself on a scale on which values bend little. */
export interface Knots {
  readonly columns: readonly number[]
  readonly rows: readonly number[]
  readonly x: readonly number[]
  readonly y: readonly number[]
}

/** The values at every crossing, read by piecewise cubics through those at the knots alone: along the rows, then the columns. */
export function readThroughKnots({ columns, rows, values }: Sheet, knots: Knots): Float64Array {
  const { x, y } = knots
  const xs = knots.columns.map((column) => x[column]!)
  const ys = knots.rows.map((row) => y[row]!)
  const along = knots.rows.map((row) =>
    interpolateParabolic(
      xs,
      knots.columns.map((column) => values[row * columns + column]!),
      x,
    ),
  )
  const read = new Float64Array(columns * rows)
  for (let column = 0; column < columns; column++) {
    const up = interpolateParabolic(
      ys,
      along.map((line) => line[column]!),
      y,
    )
    for (let row = 0; row < rows; row++) read[row * columns + column] = up[row]!
  }
  return read
}

/**
 * The reading mended by what it missed at the simulated crossings: each miss is taken off around its place with the fourth
 * power of its nearness, and simulated crossings keep their value.
 * Source: Shepard 1968, Proc. 23rd ACM National Conference, 517–524 (inverse distance weighting; from memory).
 */
export function mended({ columns, rows, values, known }: Sheet, read: Float64Array): Float64Array {
  const places: number[] = []
  for (let i = 0; i < known.length; i++) if (known[i] === 1) places.push(i)
  return read.map((value, i) => {
    if (known[i] === 1) return values[i]!
    const [column, row] = [i % columns, Math.floor(i / columns)]
    let sum = 0
    let weights = 0
    for (const at of places) {
      const across = (column - (at % columns)) / columns
      const up = (row - Math.floor(at / columns)) / rows
      const near = 1 / (across * across + up * up) ** 2
      sum += near * (values[at]! - read[at]!)
      weights += near
    }
    return value + sum / weights
  })
}

/**
 * Crossings that are not simulated though the zero passes between them and the next one, along a row or a column; a value
 * of at most 0 counts as below.
 */
export function besideZero({ columns, rows, known }: Sheet, shown: Float64Array): number[] {
  const found = new Set<number>()
  const look = (a: number, b: number): void => {
    if (shown[a]! > 0 === shown[b]! > 0) return
    if (known[a] === 0) found.add(a)
    if (known[b] === 0) found.add(b)
  }
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const i = row * columns + column
      if (column + 1 < columns) look(i, i + 1)
      if (row + 1 < rows) look(i, i + columns)
    }
  return [...found].sort((a, b) => a - b)
}

/** So many places of an axis, those nearest to evenly apart on its scale, with both ends; fewer where places fall together. */
export function placesOnScale(scale: readonly number[], count: number): number[] {
  const [first, last] = [scale[0]!, scale.at(-1)!]
  const wanted = Array.from({ length: count }, (_, k) => first + (k / (count - 1)) * (last - first))
  const nearest = wanted.map((value) =>
    scale.reduce((best, mark, i) => (Math.abs(mark - value) < Math.abs(scale[best]! - value) ? i : best), 0),
  )
  return [...new Set(nearest)]
}
