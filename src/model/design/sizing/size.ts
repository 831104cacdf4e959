import { smallestArea, type AreaSearch, type AreaSearchStart, type Trial } from './area-search.ts'
import { exceedance, type Exceedance } from '#model/design/target'
import { largerAreas, type LargerAreas } from './larger-areas.ts'
import type { SizingResult } from './result.ts'
import { judgingHours } from './near-hours.ts'
import { Runs } from './runs.ts'
import type { Spell } from './season.ts'
import type { Candidate, SizingTask } from './task.ts'
import { FIRST_STORE_m3m2, kneeFromAbove, storeKnee, type StoreKnee } from './store-knee.ts'

/** The area that the knee is looked for at is searched to this share of itself, and then read between the last two trials. */
const REFERENCE_TOLERANCE = 0.01
/** The area is found to this share of itself. */
const AREA_TOLERANCE = 0.001
/** It is so much above the smallest that is enough, as areas are that are searched. */
export const ABOVE = 1 + AREA_TOLERANCE / 2
/**
 * Finds area, and the tank at its knee, for a target. Every year simulated is remembered, so nothing is run twice.
 * @param alsoAround  false: neither whether more panel misses again is asked, nor whether its place limits the tank
 */
export function sizePanels(task: SizingTask, alsoAround = true): SizingResult {
  const doNothing = exceedance(task.doNothing_C, task.yardstick)
  const runs = new Runs(task)
  if (doNothing.measure <= 0) return result(task, runs, 'notNeeded', 0, NO_KNEE, doNothing)
  const start = { guess_m2: task.guess_m2, max_m2: task.maxArea_m2 }
  const first = searchArea(runs, FIRST_STORE_m3m2, { ...start, tolerance: REFERENCE_TOLERANCE })
  const reference_m2 = first.zero_m2 === null ? task.maxArea_m2 : first.zero_m2 * ABOVE
  const slope = slopeNearZero(first.trials)
  const knee = storeKnee(task, runs, reference_m2, doNothing, alsoAround)
  const { ratio_m3m2 } = knee
  const tolerance = AREA_TOLERANCE
  const { area_m2 } = searchArea(runs, ratio_m3m2, { ...start, guess_m2: reference_m2, slope, tolerance })
  if (area_m2 === null) return result(task, runs, 'floor', task.maxArea_m2, knee, doNothing)
  const measureAt = (larger_m2: number): number => runs.at(larger_m2, ratio_m3m2).measure
  const larger = alsoAround
    ? largerAreas(area_m2, runs.curve(ratio_m3m2), task.maxArea_m2, measureAt)
    : NOT_LOOKED
  return { ...result(task, runs, 'met', area_m2, knee, doNothing), ...larger }
}

/**
 * The largest area with the tank at its knee, without the year of just that tank: where every tank tried there misses by more
 * than so much. Null where one does not, or the room needs no panels.
 */
export function surelyTooSmall(task: SizingTask, by: number): Candidate | null {
  const doNothing = exceedance(task.doNothing_C, task.yardstick)
  const { maxArea_m2: area_m2 } = task
  const runs = new Runs(task)
  if (!task.hasTank || task.storeVolume_m3 !== null || doNothing.measure <= by) return null
  if (runs.at(area_m2, FIRST_STORE_m3m2).measure <= by) return null
  const { ratio_m3m2, gains } = kneeFromAbove(task, runs, area_m2, doNothing)
  if (!gains.every((gain) => doNothing.measure - gain > by)) return null
  return {
    area_m2,
    storeVolume_m3: runs.volume_m3(area_m2, ratio_m3m2),
    flow_kgsm2: task.flow_kgsm2(area_m2),
  }
}

/** Change of the measure with the logarithm of the area between the two trials nearest to zero; null where it does not fall. */
export function slopeNearZero(trials: readonly Trial[]): number | null {
  const [a, b] = trials.toSorted((one, other) => Math.abs(one.measure) - Math.abs(other.measure))
  if (a === undefined || b === undefined) return null
  const slope = (b.measure - a.measure) / Math.log(b.area_m2 / a.area_m2)
  return slope < 0 ? slope : null
}

/** What a design of the user's own area does: not sized, only judged, its tank in proportion whether that fits or not. */
export function judgeOwnArea(task: SizingTask, area_m2: number): SizingResult {
  const doNothing = exceedance(task.doNothing_C, task.yardstick)
  return result(task, new Runs({ ...task, mostStore_m3: Infinity }), 'own', area_m2, NO_KNEE, doNothing)
}

/** What a search for the area alone starts from: another answer's area, tank and slope. */
export interface AreaAlone {
  readonly ratio_m3m2: number
  readonly guess_m2: number
  readonly slope: number | null
  /** The share of itself that the area is found to. */
  readonly tolerance?: number
}

/** The area alone, for a tank in a known proportion (or fixed): what the uncertainty run repeats. */
export function areaOnly(task: SizingTask, { ratio_m3m2, ...start }: AreaAlone): number | null {
  const doNothing = exceedance(task.doNothing_C, task.yardstick)
  if (doNothing.measure <= 0) return 0
  return searchArea(new Runs(task), ratio_m3m2, { ...start, max_m2: task.maxArea_m2 }).area_m2
}

/** Searches the area, with the tank in proportion to it (or fixed). */
function searchArea(runs: Runs, ratio_m3m2: number, start: AreaSearchStart): AreaSearch {
  return smallestArea((area_m2) => runs.at(area_m2, ratio_m3m2).measure, start)
}

/** The hours that judged the trials which a search near by repeats. */
function anchorHours(
  { yardstick }: SizingTask,
  runs: Runs,
  { reference_m2, ratios_m3m2, gains, ratio_m3m2, at }: NonNullable<StoreKnee['found']>,
  area_m2: number,
): readonly Spell[] {
  const tanks_m3m2 = [
    FIRST_STORE_m3m2,
    ...[at, gains.indexOf(Math.max(...gains))].map((i) => ratios_m3m2[i]!),
  ]
  const trials = tanks_m3m2.map((tank_m3m2) => [reference_m2, tank_m3m2] as const)
  return judgingHours(
    yardstick,
    [...trials, [area_m2, ratio_m3m2] as const].map(([at_m2, tank_m3m2]) =>
      runs.judgedWith(at_m2, runs.volume_m3(at_m2, tank_m3m2)),
    ),
  )
}

const NO_KNEE: StoreKnee = { ratio_m3m2: FIRST_STORE_m3m2, rows: [], placeLimit: null, found: null }
const NOT_LOOKED: LargerAreas = { missedAgainFrom_m2: null, looked_m2: [], widestStep_frac: 0 }

function result(
  task: SizingTask,
  runs: Runs,
  kind: SizingResult['kind'],
  area_m2: number,
  { ratio_m3m2, rows, placeLimit, found }: StoreKnee,
  doNothing: Exceedance,
): SizingResult {
  const withPanels = area_m2 > 0 ? runs.at(area_m2, ratio_m3m2) : doNothing
  const curve = runs.curve(ratio_m3m2)
  const slope = slopeNearZero(curve)
  return {
    kind,
    area_m2,
    modules: Math.ceil(area_m2 / task.moduleArea_m2 - 1e-9),
    flow_kgsm2: task.flow_kgsm2(area_m2),
    storeVolume_m3: task.hasTank ? runs.volume_m3(area_m2, ratio_m3m2) : 0,
    withPanels,
    beforeRounding: null,
    doNothing,
    limit: null,
    loadCuts: [],
    curve: {
      area_m2: [0, ...curve.map((run) => run.area_m2)],
      peak_C: [doNothing.peak_C, ...curve.map((run) => run.result.peak_C)],
      hours_h: [doNothing.hours_h, ...curve.map((run) => run.result.hours_h)],
    },
    storeKnee: rows,
    placeLimit,
    flowKnee: area_m2 > 0 ? task.flowRows(area_m2) : [],
    ...NOT_LOOKED,
    slope,
    anchor:
      kind === 'met' && found !== null && slope !== null
        ? { ...found, area_m2, slope, spells: anchorHours(task, runs, found, area_m2) }
        : null,
    yearRuns: runs.count,
  }
}
