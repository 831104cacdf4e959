import { niceTicks } from '#ui/steps/nice-ticks.ts'

/** One draw as a dot: where it is on the axis (0…1), how high in its column (0, 1, 2 …), and whether it is good enough. */
export interface Dot {
  readonly share: number
  readonly level: number
  readonly good: boolean
}

/** Draws as columns of dots over a quantity; what is beyond the axis is counted in a column of its own at its end. */
export interface DrawnDots {
  readonly dots: readonly Dot[]
  readonly levels: number
  /** Largest value of the axis. */
  readonly top: number
  readonly beyond: number
  readonly ticks: readonly { readonly share: number; readonly value: number }[]
  readonly shareOf: (value: number) => number
}

/** Columns over the axis. */
const COLUMNS = 40
/** The axis holds so many of the draws at least, and every value that is marked on it. */
const HELD_FRAC = 0.92
const SPARE = 1.12

/**
 * @param values  of each draw in rising order; null: none is enough
 * @param marked  values that have to be on the axis
 * @param good    whether a value is good enough
 */
export function drawnDots(
  values: readonly (number | null)[],
  marked: readonly number[],
  good: (value: number) => boolean,
): DrawnDots {
  const found = values.filter((value): value is number => value !== null)
  const most = found[Math.min(found.length - 1, Math.floor(HELD_FRAC * values.length))] ?? 0
  const top = SPARE * Math.max(most, ...marked, 1e-6)
  const shareOf = (value: number): number => Math.min(1, value / top)
  const filled = new Map<number, number>()
  const dots = found
    .filter((value) => value <= top)
    .map((value) => {
      const column = Math.min(COLUMNS - 1, Math.floor(COLUMNS * shareOf(value)))
      const level = filled.get(column) ?? 0
      filled.set(column, level + 1)
      return { share: (column + 0.5) / COLUMNS, level, good: good(value) }
    })
  const ticks = niceTicks(top).map((value) => ({ share: shareOf(value), value }))
  return {
    dots,
    levels: Math.max(1, ...filled.values()),
    top,
    beyond: values.length - dots.length,
    ticks,
    shareOf,
  }
}
