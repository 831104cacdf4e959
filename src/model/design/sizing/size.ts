import { smallestArea, type AreaSearch, type AreaSearchStart, type Trial } from './area-search.ts'
import { exceedance, type Yardstick, type Exceedance } from '#model/design/target'
import type { SizingResult } from './result.ts'
import { seasonDecides, type Season } from './season.ts'

/** One candidate: what a search changes. */
export interface Candidate {
  readonly area_m2: number
  readonly storeVolume_m3: number
  readonly flow_kgsm2: number
}

/** What sizing needs of the stages before it. */
export interface SizingTask {
  readonly yardstick: Yardstick
  /** Operative temperature of the room each hour of the year with a candidate, °C. */
  readonly room_C: (candidate: Candidate) => Float64Array
  /** The part of the year that decides, or null for all of it; and the same simulated there only, from `doNothing_C` elsewhere. */
  readonly season: Season | null
  readonly seasonRoom_C: (candidate: Candidate, season: Season) => Float64Array
  readonly doNothing_C: Float64Array
  readonly maxArea_m2: number
  readonly guess_m2: number
  /** Null: chosen at the knee. */
  readonly storeVolume_m3: number | null
  /** False for slab and building: there is no tank to choose. */
  readonly hasTank: boolean
  /** Flow per panel area that an area is run with, kg/s m²; and what other flows come to there. */
  readonly flow_kgsm2: (area_m2: number) => number
  readonly flowRows: (area_m2: number) => SizingResult['flowKnee']
  readonly moduleArea_m2: number
}

/** Tank per m² of panel that the search begins with, and those the knee is looked for among, m³/m² (common practice, no source). */
const FIRST_STORE_m3m2 = 0.08
const STORE_LADDER_m3m2 = [0.03, 0.05, 0.08, 0.12, 0.18, 0.27]
/** The knee is looked for at an area found to this share of itself. */
const REFERENCE_TOLERANCE = 0.01
/** The knee: the smallest tank that needs no more than this share of panel over the tank that needs least. */
const MORE_PANEL = 0.03
/** What more panel is worth is found over so much more of it. */
const SECANT = 1.1
/** The same as a share of the best gain, where the trials do not show what panel is worth (common practice, no source). */
const KNEE_SHARE = 0.97

/**
 * Finds area, and the tank at its knee, for a target. Every year simulated is remembered, so nothing is run twice.
 * @param alsoLarger  false: whether more panel misses again is not asked
 */
export function sizePanels(task: SizingTask, alsoLarger = true): SizingResult {
  const doNothing = exceedance(task.doNothing_C, task.yardstick)
  const runs = new Runs(task)
  if (doNothing.measure <= 0) return result(task, runs, 'notNeeded', 0, FIRST_STORE_m3m2, doNothing, [])
  const start = { guess_m2: task.guess_m2, max_m2: task.maxArea_m2 }
  const first = searchArea(runs, FIRST_STORE_m3m2, { ...start, tolerance: REFERENCE_TOLERANCE })
  const reference_m2 = first.area_m2 ?? task.maxArea_m2
  const slope = slopeNearZero(first.trials)
  const knee = storeKnee(task, runs, reference_m2, doNothing)
  const { area_m2 } = searchArea(runs, knee.ratio_m3m2, { ...start, guess_m2: reference_m2, slope })
  if (area_m2 === null)
    return result(task, runs, 'floor', task.maxArea_m2, knee.ratio_m3m2, doNothing, knee.rows)
  const missedAgainFrom_m2 = alsoLarger ? missedAgain_m2(task, runs, area_m2, knee.ratio_m3m2) : null
  return {
    ...result(task, runs, 'met', area_m2, knee.ratio_m3m2, doNothing, knee.rows),
    missedAgainFrom_m2,
  }
}

/** Multiples of the area found at which the target must still be met. */
const LARGER = [1.25, 2, 4]

/** The smallest of some larger areas at which the target is missed again; null where more panel never does harm. */
function missedAgain_m2(task: SizingTask, runs: Runs, area_m2: number, ratio_m3m2: number): number | null {
  const larger = LARGER.map((times) => times * area_m2).filter((one) => one <= task.maxArea_m2)
  return larger.find((one) => runs.at(one, ratio_m3m2).measure > 0) ?? null
}

/** Change of the measure with the logarithm of the area between the two trials nearest to zero; null where it does not fall. */
export function slopeNearZero(trials: readonly Trial[]): number | null {
  const [a, b] = trials.toSorted((one, other) => Math.abs(one.measure) - Math.abs(other.measure))
  if (a === undefined || b === undefined) return null
  const slope = (b.measure - a.measure) / Math.log(b.area_m2 / a.area_m2)
  return slope < 0 ? slope : null
}

/** What a design of the user's own area does: not sized, only judged. */
export function judgeOwnArea(task: SizingTask, area_m2: number): SizingResult {
  const doNothing = exceedance(task.doNothing_C, task.yardstick)
  return result(task, new Runs(task), 'own', area_m2, FIRST_STORE_m3m2, doNothing, [])
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

/** Years already simulated in one sizing. */
export class Runs {
  readonly done = new Map<string, { area_m2: number; ratio_m3m2: number; result: Exceedance }>()
  private readonly task: SizingTask

  constructor(task: SizingTask) {
    this.task = task
  }

  volume_m3(area_m2: number, ratio_m3m2: number): number {
    return this.task.storeVolume_m3 ?? ratio_m3m2 * area_m2
  }

  at(area_m2: number, ratio_m3m2: number): Exceedance {
    const key = `${area_m2} ${ratio_m3m2}`
    const known = this.done.get(key)
    if (known !== undefined) return known.result
    const storeVolume_m3 = this.volume_m3(area_m2, ratio_m3m2)
    const found = judged(this.task, { area_m2, storeVolume_m3, flow_kgsm2: this.task.flow_kgsm2(area_m2) })
    this.done.set(key, { area_m2, ratio_m3m2, result: found })
    return found
  }
}

/** How a candidate does: from the season alone where that is enough, else from the whole year. */
export function judged(task: SizingTask, candidate: Candidate): Exceedance {
  const { season, yardstick } = task
  if (season !== null) {
    const found = exceedance(task.seasonRoom_C(candidate, season), yardstick)
    if (seasonDecides(season, yardstick, found)) return found
  }
  return exceedance(task.room_C(candidate), yardstick)
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

function storeKnee(
  task: SizingTask,
  runs: Runs,
  area_m2: number,
  doNothing: Exceedance,
): { ratio_m3m2: number; rows: SizingResult['storeKnee'] } {
  if (!task.hasTank || task.storeVolume_m3 !== null) return { ratio_m3m2: FIRST_STORE_m3m2, rows: [] }
  const tried = STORE_LADDER_m3m2.map((ratio_m3m2) => ({ ratio_m3m2, result: runs.at(area_m2, ratio_m3m2) }))
  const gain = ({ result: found }: (typeof tried)[number]): number => doNothing.measure - found.measure
  const gains = tried.map(gain)
  const rows = tried.map((row) => ({
    volume_m3: row.ratio_m3m2 * area_m2,
    area_m2: row.result.measure <= 0 ? area_m2 : null,
    peak_C: row.result.peak_C,
  }))
  const more =
    runs.at(area_m2 * SECANT, FIRST_STORE_m3m2).measure - runs.at(area_m2, FIRST_STORE_m3m2).measure
  const best = Math.max(...gains)
  // what so much more panel would gain; where it gains nothing, a share of what there is
  const worth = more < 0 ? (-more * Math.log(1 + MORE_PANEL)) / Math.log(SECANT) : (1 - KNEE_SHARE) * best
  return { ratio_m3m2: kneeRatio_m3m2(STORE_LADDER_m3m2, gains, best - worth), rows }
}

function result(
  task: SizingTask,
  runs: Runs,
  kind: SizingResult['kind'],
  area_m2: number,
  ratio_m3m2: number,
  doNothing: Exceedance,
  storeRows: SizingResult['storeKnee'],
): SizingResult {
  const withPanels = area_m2 > 0 ? runs.at(area_m2, ratio_m3m2) : doNothing
  const onCurve = [...runs.done.values()]
    .filter((run) => run.ratio_m3m2 === ratio_m3m2)
    .toSorted((a, b) => a.area_m2 - b.area_m2)
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
      area_m2: [0, ...onCurve.map((run) => run.area_m2)],
      peak_C: [doNothing.peak_C, ...onCurve.map((run) => run.result.peak_C)],
      hours_h: [doNothing.hours_h, ...onCurve.map((run) => run.result.hours_h)],
    },
    storeKnee: storeRows,
    flowKnee: area_m2 > 0 ? task.flowRows(area_m2) : [],
    missedAgainFrom_m2: null,
    slope: slopeNearZero(onCurve.map((run) => ({ area_m2: run.area_m2, measure: run.result.measure }))),
    yearRuns: runs.done.size,
  }
}
