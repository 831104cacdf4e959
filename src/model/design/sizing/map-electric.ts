import type { MapAxes } from './map-axes.ts'
import { placesOnScale, readThroughKnots } from './map-reading.ts'

/** Whole years along the areas and along the other axis between which electricity is read. */
const KNOTS = { columns: 5, rows: 4 } as const
const BETWEEN = 4
/** A map of so many crossings has a whole year at each of them. */
const WHOLE_YEARS = 50
/** About how many years it takes, for the share done. */
export const MOST_YEARS = KNOTS.columns * KNOTS.rows + BETWEEN

/** Electricity over a map, and how far it was off where a year was run only to see that. */
export interface ReadElectric {
  readonly electric_J: Float64Array
  readonly electricMiss_J: number | null
}

/**
 * Electricity in the year at every crossing of a map, J: it is small beside the rest of a price and bends little, so it is
 * read between a few whole years; at a few others it is seen how far that is off.
 * @param run  electricity in the year at a column and row, J
 * @returns an iterator of years run; the electricity at the end
 */
export function* electricOver(
  { area_m2, other }: MapAxes,
  run: (column: number, row: number) => number,
): Generator<number, ReadElectric> {
  const [columns, rows] = [area_m2.length, other.length]
  const [x, y] = [area_m2.map(Math.log), other.map(Math.log)]
  const each = columns * rows <= WHOLE_YEARS
  const knots = each
    ? { columns: [...x.keys()], rows: [...y.keys()], x, y }
    : { columns: placesOnScale(x, KNOTS.columns), rows: placesOnScale(y, KNOTS.rows), x, y }
  const values = new Float64Array(columns * rows)
  const known = new Uint8Array(columns * rows)
  let years = 0
  const simulate = (column: number, row: number): number => {
    const i = row * columns + column
    values[i] = run(column, row)
    known[i] = 1
    return ++years
  }
  for (const row of knots.rows) for (const column of knots.columns) yield simulate(column, row)
  const electric_J = readThroughKnots({ columns, rows, values, known }, knots)
  let miss_J: number | null = null
  for (const row of between(knots.rows))
    for (const column of between(knots.columns)) {
      if (known[row * columns + column] === 1) continue
      const i = row * columns + column
      yield simulate(column, row)
      miss_J = Math.max(miss_J ?? 0, Math.abs(values[i]! - electric_J[i]!))
    }
  return {
    electric_J: electric_J.map((read_J, i) => (known[i] === 1 ? values[i]! : Math.max(0, read_J))),
    electricMiss_J: miss_J,
  }
}

/** The places half way between the first two knots and between the last two. */
function between(knots: readonly number[]): number[] {
  const half = (a: number, b: number): number => Math.round((a + b) / 2)
  return [...new Set([half(knots[0]!, knots[1]!), half(knots.at(-2)!, knots.at(-1)!)])]
}
