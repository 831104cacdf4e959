import { stop } from '#model/basis/words'

/** Errors that decide whether two recipes can be told apart, one standard deviation each, –. */
export interface Repeatability {
  /** Between boards painted with one recipe. */
  readonly board: number
  /** Of one board against another in one moment: reading, gust, place. */
  readonly moment: number
}

/** How many boards of each recipe, read in how many moments. */
export interface PowerPlan {
  readonly boards: number
  readonly moments: number
  /** Chance that a difference of the size asked for is found. */
  readonly power_frac: number
}

/**
 * Boards painted alike differ by about 0.004 in solar reflectance; a moment of paired boards in the sun errs by
 * about 0.5 K √2 of 30 K between black and white, 0.02. Common practice, no source.
 */
export const USUAL_REPEATABILITY: Repeatability = { board: 0.004, moment: 0.02 }

/** Two-sided test at 5 %: standard deviations. */
const TWO_SIDED_SD = 1.96
const MOST_BOARDS = 12
const MOMENTS = [1, 2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 30, 40] as const
const WANTED_FRAC = 0.9

/**
 * Chance to find a difference of two recipes, with a false alarm in 5 % where there is none:
 *   σ² = 2 (s_board² + s_moment²/m)/n,  power = Φ(|d|/σ − 1.96) + Φ(−|d|/σ − 1.96)
 * @param boards  of each recipe, n; every board is read in each of the moments, m
 */
export function powerOf(
  difference: number,
  boards: number,
  moments: number,
  { board, moment }: Repeatability,
): number {
  const sd = Math.sqrt((2 * (board ** 2 + moment ** 2 / moments)) / boards)
  const ratio = Math.abs(difference) / sd
  return normalShare(ratio - TWO_SIDED_SD) + normalShare(-ratio - TWO_SIDED_SD)
}

/**
 * For one, two, three … boards of each recipe the fewest moments that find the difference in nine of ten trials; boards
 * with which no number of moments up to 40 does are left out. Ends where more boards save no moment.
 * @throws ProblemError for a difference that 12 boards and 40 moments do not show
 */
export function powerPlans(difference: number, repeatability: Repeatability): PowerPlan[] {
  const plans: PowerPlan[] = []
  for (let boards = 1; boards <= MOST_BOARDS; boards++) {
    const moments = MOMENTS.find((m) => powerOf(difference, boards, m, repeatability) >= WANTED_FRAC)
    const before = plans.at(-1)
    if (moments === undefined || (before !== undefined && moments >= before.moments)) continue
    plans.push({ boards, moments, power_frac: powerOf(difference, boards, moments, repeatability) })
  }
  if (plans.length > 0) return plans
  throw stop(
    'notebook-difference-too-small',
    `A difference of ${difference} is not to be seen with ${MOST_BOARDS} boards of each recipe and ${MOMENTS.at(-1)} moments.`,
    'Ask for a larger difference, or read with less error: more alike boards, calm air, a reference nearer to the samples.',
    { field: 'difference' },
  )
}

/** Share of a standard normal distribution below z. Abramowitz & Stegun 1964, eq. 26.2.17, to 1e-7. */
function normalShare(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z))
  const series =
    t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))))
  const tail = (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * series
  return z >= 0 ? 1 - tail : tail
}
