import type { Trial } from './area-search.ts'

/** How the measure falls with the logarithm of the area about an answer: a parabola through three trials, zero where the area is 1. */
export class AreaCurve {
  private readonly straight: number
  private readonly bent: number

  /** @param trials  three areas as shares of the answer’s (about ½, 1, 2), and their distances from the target */
  constructor(trials: readonly [Trial, Trial, Trial]) {
    const [a, b, c] = trials.map(({ area_m2, measure }) => ({ x: Math.log(area_m2), y: measure }))
    const ab = (b!.y - a!.y) / (b!.x - a!.x)
    const bc = (c!.y - b!.y) / (c!.x - b!.x)
    this.bent = (bc - ab) / (c!.x - a!.x)
    this.straight = ab - this.bent * (a!.x + b!.x)
  }

  /** Over its value at 1. */
  at(share: number): number {
    const x = Math.log(share)
    return (this.straight + this.bent * x) * x
  }

  /** The share of the answer's area at which it is `measure` over its value at 1; null where it does not fall so far or no longer falls. */
  where(measure: number): number | null {
    const root = Math.sqrt(this.straight ** 2 + 4 * this.bent * measure)
    if (!(root > 0 && this.straight < 0)) return null
    return Math.exp((2 * measure) / (this.straight - root))
  }
}

/** No step is longer than this factor of area. */
const LONGEST_FACTOR = 2
/** The first step is the last where it is shorter than this: draws differ from the answer in how high the curve lies, little in its form. */
const FIRST_AND_LAST_FACTOR = 1.05
/** A later step is the last where it is shorter than this. */
const LAST_FACTOR = 1.03
const MOST_TRIALS = 6

/**
 * Where the measure of something like the answer falls to zero: the curve, raised or lowered so that it goes through the first trial,
 * then also made steeper so that it goes through the last two.
 * @param measureOf  distance from the target at a share of the answer's area
 * @param most       the largest share; more than that is returned where it is not enough
 * @returns null where the steps do not end
 */
export function alongCurve(
  curve: AreaCurve,
  measureOf: (share: number) => number,
  most: number,
): number | null {
  let share = Math.min(1, most)
  let steep = 1
  let before: { readonly measure: number; readonly height: number } | null = null
  for (let trials = 0; trials < MOST_TRIALS; trials++) {
    const measure = measureOf(share)
    if (measure > 0 && share === most) return Infinity
    const height = curve.at(share)
    if (before !== null) steep = (measure - before.measure) / (height - before.height)
    if (!(steep > 0)) return null
    const next = curve.where(height - measure / steep)
    if (next === null) return null
    const short = before === null ? FIRST_AND_LAST_FACTOR : LAST_FACTOR
    const factor = next / share
    if (factor < short && factor > 1 / short && next < most) return next
    share = Math.min(most, share * Math.min(LONGEST_FACTOR, Math.max(1 / LONGEST_FACTOR, factor)))
    before = { measure, height }
  }
  return null
}
