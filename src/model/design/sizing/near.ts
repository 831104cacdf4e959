import { exceedance, type Exceedance, type Yardstick } from '#model/design/target'
import type { Trial } from './area-search.ts'
import type { KneeAnchor } from './knee-anchor.ts'
import { taskIn } from './near-hours.ts'
import { Runs } from './runs.ts'
import { ABOVE } from './size.ts'
import {
  FIRST_STORE_m3m2,
  fittingRatios_m3m2,
  kneeOf_K,
  kneeRatio_m3m2,
  SECANT,
  worthOf,
} from './store-knee.ts'
import type { SizingTask } from './task.ts'

/** An area further off than this factor is searched from scratch. */
const FURTHEST = 1.6
/** The last step to a zero, along the line through the last two trials, is no longer than this share of the area. */
const NEAR_SHARE = 0.003
const MOST_STEPS = 5

/** Area and tank before whole modules and a tank that is sold. */
export interface NearSizing {
  /** Where it was found: the beginning of the next one near by. */
  readonly anchor: KneeAnchor
  /** Seasons run, whole ones, and those of the hours that judged the answer near by alone. */
  readonly seasons: number
  readonly parts: number
}

/**
 * Area and tank of a changed task from those of one near by, in the time of about five seasons instead of three dozen. The search from scratch
 * tries six tanks at the area that the first tank needs. Here that area is found by the secant rule, and of the six only the best
 * and those to both sides of the knee are tried again at it, others only where the knee has moved on to them; in the hours alone that
 * these trials were judged by near by. The area with that tank is found in whole seasons.
 * @returns null where it has to be searched from scratch: the room needs no panels, the tank is given, its place holds other ones,
 *   or the area is far off
 */
export function sizeNear(task: SizingTask, from: KneeAnchor): NearSizing | null {
  if (!task.hasTank || task.storeVolume_m3 !== null) return null
  const doNothing = exceedance(task.doNothing_C, task.yardstick)
  if (doNothing.measure <= 0) return null
  const parts = new Runs(taskIn(task, from.spells))
  const reference = referenceArea(parts, from, doNothing, task.yardstick)
  if (reference === null || reference.reference_m2 > task.maxArea_m2) return null
  const { reference_m2, more } = reference
  const ratios_m3m2 = fittingRatios_m3m2(task.mostStore_m3 / reference_m2)
  if (ratios_m3m2.length !== from.ratios_m3m2.length) return null
  const knee = kneeThere(parts, { ...from, ratios_m3m2 }, reference_m2, doNothing, worthOf(more))
  // as far below the area that the first tank needs as near by, but for what the knee's tank takes off there
  const below = Math.log(from.area_m2 / from.reference_m2) - (knee.knee_K - from.knee_K) / from.slope
  const runs = new Runs(task)
  const measureAt = (area_m2: number): number => runs.at(area_m2, knee.ratio_m3m2).measure
  const end = zeroNear(measureAt, reference_m2 * Math.exp(below), from.slope)
  const area_m2 = ABOVE * (end?.zero_m2 ?? NaN)
  if (end === null || area_m2 > task.maxArea_m2) return null
  const { slope } = end
  const doNothing_K = doNothing.measure
  const anchor = { ...from, ...knee, area_m2, slope, ratios_m3m2, reference_m2, more, doNothing_K }
  return { anchor, seasons: runs.count, parts: parts.count }
}

/** The area that the first tank needs, and what a tenth more changes. */
function referenceArea(
  runs: Runs,
  from: KneeAnchor,
  doNothing: Exceedance,
  { target }: Yardstick,
): Pick<KneeAnchor, 'reference_m2' | 'more'> | null {
  const slopeNear = from.more / Math.log(SECANT)
  // a target or a room that is changed does to it about what it does to the room left alone
  const warmer_K = target.kind === 'degreeHours' ? 0 : doNothing.measure - from.doNothing_K
  const guess_m2 = (from.reference_m2 / ABOVE) * Math.exp(-warmer_K / slopeNear)
  const measureAt = (area_m2: number): number => runs.at(area_m2, FIRST_STORE_m3m2).measure
  const found = zeroNear(measureAt, guess_m2, slopeNear)
  if (found === null) return null
  const { last } = found
  const more = measureAt(last.area_m2 * SECANT) - last.measure
  return more < 0 ? { reference_m2: found.zero_m2 * ABOVE, more } : null
}

/** The knee at an area. */
function kneeThere(
  runs: Runs,
  { gains: were, ratios_m3m2, at: wasAt }: KneeAnchor,
  reference_m2: number,
  doNothing: Exceedance,
  worth: number,
): Pick<KneeAnchor, 'gains' | 'worth' | 'ratio_m3m2' | 'at' | 'knee_K'> {
  const gains = [...were]
  const gainOf = (i: number): number => {
    const { measure } = runs.at(reference_m2, ratios_m3m2[i]!)
    return (gains[i] = doNothing.measure - measure)
  }
  const best = were.indexOf(Math.max(...were))
  const enough = gainOf(best) - worth
  let at = wasAt
  while (at < best && gainOf(at) < enough) at++
  while (at > 0 && gainOf(at - 1) >= enough) at--
  const beside = <T>(of: readonly T[]): T[] => of.slice(Math.max(0, at - 1), at + 1)
  const ratio_m3m2 = kneeRatio_m3m2(beside(ratios_m3m2), beside(gains), enough)
  return { gains, worth, at, ratio_m3m2, knee_K: kneeOf_K(gains, at, enough, doNothing) }
}

/** Where a measure falls to zero, by the slope of before, then by that of the last two trials; null where it is far off. */
function zeroNear(
  measureAt: (area_m2: number) => number,
  guess_m2: number,
  slopeNear: number,
): { readonly zero_m2: number; readonly slope: number; readonly last: Trial } | null {
  let slope = slopeNear
  let last: Trial | null = null
  let area_m2 = guess_m2
  for (let steps = 0; steps < MOST_STEPS; steps++) {
    const trial = { area_m2, measure: measureAt(area_m2) }
    if (last !== null) slope = (trial.measure - last.measure) / Math.log(trial.area_m2 / last.area_m2)
    const step = -trial.measure / slope
    last = trial
    area_m2 *= Math.exp(step)
    if (!(slope < 0) || !(Math.abs(Math.log(area_m2 / guess_m2)) < Math.log(FURTHEST))) return null
    if (Math.abs(step) < NEAR_SHARE) return { zero_m2: area_m2, slope, last }
  }
  return null
}
