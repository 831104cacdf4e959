import type { Exceedance } from '#model/design/target'
import type { KneeAnchor } from './knee-anchor.ts'
import type { PlaceLimit, SizingResult } from './result.ts'
import type { Runs } from './runs.ts'
import type { SizingTask } from './task.ts'

/** Tank per m² of panel that the search begins with, and those the knee is looked for among, m³/m² (common practice, no source). */
export const FIRST_STORE_m3m2 = 0.08
const STORE_LADDER_m3m2 = [0.03, 0.05, 0.08, 0.12, 0.18, 0.27]
/** The knee: the smallest tank that needs no more than this share of panel over the tank that needs least. */
const MORE_PANEL = 0.03
/** What more panel is worth is found over so much more of it. */
export const SECANT = 1.1
/** The same as a share of the best gain, where the trials do not show what panel is worth (common practice, no source). */
const KNEE_SHARE = 0.97
/** Whether the place limits the tank is seen from one this much larger. */
const BEYOND = 2

/** How much of the measure the panel is worth that a smaller tank may cost, where `more` is what a tenth more panel changes. */
export const worthOf = (more: number): number => (-more * Math.log(1 + MORE_PANEL)) / Math.log(SECANT)

/** The tank at its knee, in proportion to the area. */
export interface StoreKnee {
  /** Where no tank is chosen, null. */
  readonly found: Omit<KneeAnchor, 'area_m2' | 'slope' | 'spells'> | null
  readonly ratio_m3m2: number
  readonly rows: SizingResult['storeKnee']
  /** Where only its place keeps the tank from being larger; else null. */
  readonly placeLimit: PlaceLimit | null
}

/**
 * The smallest tank whose gain is enough: between two tanks tried, by a line over the logarithm of their
 * volume, so that it moves no faster than the gains do.
 */
export function kneeRatio_m3m2(
  ratios_m3m2: readonly number[],
  gains: readonly number[],
  enough: number,
): number {
  const at = gains.findIndex((gain) => gain >= enough)
  if (at <= 0) return ratios_m3m2[Math.max(0, at)]!
  const [less, more] = [ratios_m3m2[at - 1]!, ratios_m3m2[at]!]
  const share = (enough - gains[at - 1]!) / (gains[at]! - gains[at - 1]!)
  return less * (more / less) ** share
}

/**
 * The knee at an area, among the tanks that fit.
 * @param asksPlace  false: whether only its place keeps the tank from being larger is not asked
 */
export function storeKnee(
  task: SizingTask,
  runs: Runs,
  area_m2: number,
  doNothing: Exceedance,
  asksPlace = true,
): StoreKnee {
  if (!task.hasTank || task.storeVolume_m3 !== null)
    return { ratio_m3m2: FIRST_STORE_m3m2, rows: [], placeLimit: null, found: null }
  const ratios_m3m2 = fittingRatios_m3m2(task.mostStore_m3 / area_m2)
  const tried = ratios_m3m2.map((ratio_m3m2) => ({ ratio_m3m2, result: runs.at(area_m2, ratio_m3m2) }))
  const gainOf = (found: Exceedance): number => doNothing.measure - found.measure
  const gains = tried.map(({ result }) => gainOf(result))
  const rows = tried.map((row) => ({
    volume_m3: runs.volume_m3(area_m2, row.ratio_m3m2),
    area_m2: row.result.measure <= 0 ? area_m2 : null,
    peak_C: row.result.peak_C,
  }))
  const more = morePanel(runs, area_m2)
  const best = Math.max(...gains)
  const worth = worthAt(more, best)
  const worthIt = (found: Exceedance): boolean => gainOf(found) - best > worth
  const limited = asksPlace ? limitOfPlace(task, runs, area_m2, worthIt) : null
  const ratio_m3m2 = kneeRatio_m3m2(ratios_m3m2, gains, best - worth)
  const at = gains.findIndex((gain) => gain >= best - worth)
  const knee_K = kneeOf_K(gains, at, best - worth, doNothing)
  const doNothing_K = doNothing.measure
  const there = { reference_m2: area_m2, ratios_m3m2, gains, more }
  const found = { ...there, ratio_m3m2, at, worth, doNothing_K, knee_K }
  return { ratio_m3m2, rows, placeLimit: limited, found }
}

/** What a tenth more panel changes, with the tank that a search begins with. */
const morePanel = (runs: Runs, area_m2: number): number =>
  runs.at(area_m2 * SECANT, FIRST_STORE_m3m2).measure - runs.at(area_m2, FIRST_STORE_m3m2).measure

/** What so much more panel would gain; where it gains nothing, a share of what there is. */
const worthAt = (more: number, best: number): number => (more < 0 ? worthOf(more) : (1 - KNEE_SHARE) * best)

/**
 * The proportion at the same knee alone, the tanks tried from the largest down: below one that gains too little, and less than the
 * next larger, none is tried. The gain of each that was.
 */
export function kneeFromAbove(
  task: SizingTask,
  runs: Runs,
  area_m2: number,
  doNothing: Exceedance,
): { readonly ratio_m3m2: number; readonly gains: readonly number[] } {
  const ratios_m3m2 = fittingRatios_m3m2(task.mostStore_m3 / area_m2)
  const more = morePanel(runs, area_m2)
  const gains = new Array<number>(ratios_m3m2.length).fill(-Infinity)
  let best = -Infinity
  for (let i = gains.length - 1; i >= 0; i--) {
    gains[i] = doNothing.measure - runs.at(area_m2, ratios_m3m2[i]!).measure
    best = Math.max(best, gains[i]!)
    if (gains[i]! < best - worthAt(more, best) && gains[i]! < gains[i + 1]!) break
  }
  const ratio_m3m2 = kneeRatio_m3m2(ratios_m3m2, gains, best - worthAt(more, best))
  return { ratio_m3m2, gains: gains.filter((gain) => gain > -Infinity) }
}

/** The measure with the knee's tank, along the same line; the smallest tank of all may gain more than is enough. */
export function kneeOf_K(
  gains: readonly number[],
  at: number,
  enough: number,
  { measure }: Exceedance,
): number {
  return measure - (at > 0 ? enough : gains[0]!)
}

/** Those of the ladder that fit, and the most that does where that is less than the last. */
export function fittingRatios_m3m2(most_m3m2: number): readonly number[] {
  const fitting = STORE_LADDER_m3m2.filter((ratio) => ratio < most_m3m2)
  return fitting.length < STORE_LADDER_m3m2.length ? [...fitting, most_m3m2] : fitting
}

/** Whether a tank larger than fits would save more panel than the knee gives away, and what it would do. */
function limitOfPlace(
  { mostStore_m3 }: SizingTask,
  runs: Runs,
  area_m2: number,
  worthIt: (found: Exceedance) => boolean,
): PlaceLimit | null {
  const larger_m3 = Math.min(BEYOND * mostStore_m3, STORE_LADDER_m3m2.at(-1)! * area_m2)
  if (!(larger_m3 > mostStore_m3)) return null
  const larger = runs.with(area_m2, larger_m3)
  return worthIt(larger)
    ? { area_m2, most_m3: mostStore_m3, larger_m3, most: runs.with(area_m2, mostStore_m3), larger }
    : null
}
