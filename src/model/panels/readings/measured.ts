/** One cause of doubt in a measured value, one standard deviation in the value's own unit. */
export interface Doubt {
  readonly of: string
  readonly sd: number
  /** What would make it smaller. */
  readonly next: string
}

/** A measured value with its 90 % interval, what dominates it, and what to do next. */
export interface Measured {
  readonly value: number
  readonly low: number
  readonly high: number
  /** Doubts, the largest first. */
  readonly doubts: readonly Doubt[]
}

/** Middle 90 % of a normal distribution, in standard deviations. */
const NINETY_SD = 1.645
/** A stated error of single readings counts like this many earlier readings when scatter is judged. */
const STATED_FREEDOM = 10

/** The value with its interval from independent doubts. The interval is cut at 0 and 1, the value is not. */
export function measured(value: number, doubts: readonly Doubt[]): Measured {
  const half = NINETY_SD * Math.hypot(...doubts.map(({ sd }) => sd))
  return {
    value,
    low: Math.max(0, value - half),
    high: Math.min(1, value + half),
    doubts: [...doubts].sort((a, b) => b.sd - a.sd),
  }
}

export const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length

/** Standard error of a mean of repeats: the stated error of one, corrected by the scatter there was. */
export function meanError(values: readonly number[], stated: number): number {
  const middle = mean(values)
  const squares = values.reduce((sum, v) => sum + (v - middle) ** 2, 0)
  const variance = (STATED_FREEDOM * stated ** 2 + squares) / (STATED_FREEDOM + values.length - 1)
  return Math.sqrt(variance / values.length)
}
