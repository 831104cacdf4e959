/** Panels in a combination, guessed in a few years, so that only those that may matter need be sized. */
import type { RoomNetwork } from '#model/building/room'
import { tanksSoldAbout_m3, taskOf, type Prepared } from '#model/design/assembly'
import {
  type Candidate,
  judged,
  slopeNearZero,
  tankOf_m3,
  type SizingTask,
  type Trial,
} from '#model/design/sizing'
import { exceedance } from '#model/design/target'
import { yearWith, type PanelYear, type Sized } from './decide-panels.ts'

/** Tank for each m² of panel where none was sized yet, m³/m². */
const GUESSED_STORE_m3m2 = 0.2

/** Steps of a guess: how far at once, and how many years. */
const LONGEST_FACTOR = 2.5
const MOST_YEARS = 6
/** Where the slope says that the area needed is no further than this factor from one tried, that is near enough. */
const NEAR_ENOUGH = 1.25
/** The same where the slope is that of other measures, which may be far from its own: a second area shows it. */
const NEAR_BORROWED = 1.06
/** Share of the guessed area that may be enough once it is sized as built. */
const LUCKY_AREA = 0.93
/** The same of the tank. */
const LUCKY_TANK = 0.8
const SMALLEST_m2 = 0.05
/** Where the logarithm of the area changes the distance from the target by less, K, an area cannot be read from it. */
const FLAT_K = -0.4
/** The slope beside other measures holds where their area is no further than this factor; else two areas so far apart show it. */
const SAME_SLOPE = 1.6
const APART = 1.3

/** A ceiling fan moves the limit itself: so many other measures are nearer. */
const FAN_APART = 3

/** A slope from other rooms, and the area it was found at, where that is known. */
interface Borrowed {
  readonly slope: number
  readonly holdsAt_m2: number | null
}

const apart = (a: number, b: number): number => Math.max(a / b, b / a)

/** A design known already, with the measures it is combined with. */
interface Known {
  readonly measures: readonly string[]
  readonly area_m2: number
  readonly slope: number | null
}

/**
 * About the smallest area that meets the target with a tank in proportion, or the largest there is room for: a few steps
 * from the area beside the measures that are most nearly the same.
 */
export class PanelGuess {
  private readonly known: Known[] = []
  private slope: number | null = null
  /** The last with the largest area. */
  private last: {
    readonly room: RoomNetwork
    readonly candidate: Candidate
    readonly year: PanelYear
  } | null = null
  /** Tank for each m² where the largest area was not enough, as the last such one was sized, m³/m². */
  private floorRatio_m3m2: number | null = null
  /** Tank for each m² of panel as the last one was sized, m³/m². */
  private ratio_m3m2 = GUESSED_STORE_m3m2

  /** Null where nothing is known to begin from, or the steps do not end: it has to be sized. */
  year(prepared: Prepared, measures: readonly string[]): PanelYear | null {
    const near = this.nearest(measures)
    const slope = near?.slope ?? this.slope
    const task = taskOf(prepared)
    if (slope === null) return this.atMost(prepared, task, measures)
    const guess_m2 = this.expected_m2(measures) ?? near?.area_m2 ?? task.guess_m2
    const holdsAt_m2 = near === null || near.slope === null ? null : near.area_m2
    return this.fewYears(prepared, task, measures, guess_m2, { slope, holdsAt_m2 })
  }

  /** The largest area where it is not enough, else null. */
  private atMost(prepared: Prepared, task: SizingTask, measures: readonly string[]): PanelYear | null {
    if (this.floorRatio_m3m2 === null) return null
    const candidate = guessed(task, task.maxArea_m2, this.floorRatio_m3m2)
    const year = this.floorYear(prepared, candidate)
    if (exceedance(year.room_C, prepared.yardstick).measure <= 0) return null
    this.learn(measures, task.maxArea_m2, this.slope)
    return year
  }

  /** Rooms that differ in the limit alone have the same year with the same panels. */
  private floorYear(prepared: Prepared, candidate: Candidate): PanelYear {
    const { last } = this
    if (last?.room === prepared.room && last.candidate.storeVolume_m3 === candidate.storeVolume_m3)
      return last.year
    const year: PanelYear = { ...yearWith(prepared, candidate, 'built'), floor: true }
    this.last = { room: prepared.room, candidate, year }
    return year
  }

  /** Newton's steps, then secants, until one is near enough; null where they do not end. */
  private fewYears(
    prepared: Prepared,
    task: SizingTask,
    measures: readonly string[],
    guess_m2: number,
    { slope, holdsAt_m2 }: Borrowed,
  ): PanelYear | null {
    const { maxArea_m2 } = task
    const { ratio_m3m2 } = this
    let area_m2 = Math.min(guess_m2, maxArea_m2)
    if (area_m2 === maxArea_m2) {
      const floor = this.atMost(prepared, task, measures)
      if (floor !== null) return floor
    }
    let before: Trial | null = null
    for (let k = 0; k < MOST_YEARS; k++) {
      const { measure } = judged(task, guessed(task, area_m2, ratio_m3m2))
      const here: Trial = { area_m2, measure }
      if (measure > 0 && area_m2 === maxArea_m2) {
        this.learn(measures, area_m2, slope)
        return this.floorYear(prepared, guessed(task, area_m2, this.floorRatio_m3m2 ?? ratio_m3m2))
      }
      const own: number | null = before === null ? null : slopeNearZero([before, here])
      const steep = own ?? slope
      const factor = Math.exp(-measure / steep)
      const enough = own === null ? NEAR_BORROWED : NEAR_ENOUGH
      const near = factor < enough && (factor > 1 / enough || area_m2 < SMALLEST_m2)
      const known = own !== null || (holdsAt_m2 !== null && apart(holdsAt_m2, area_m2) < SAME_SLOPE)
      if (near && own !== null && own > FLAT_K) return null
      if (near && known && factor * area_m2 <= maxArea_m2) {
        this.learn(measures, factor * area_m2, steep)
        return hopedYear(prepared, task, factor * area_m2, ratio_m3m2)
      }
      before = here
      const far = known ? factor : measure > 0 ? Math.max(factor, APART) : Math.min(factor, 1 / APART)
      const held = Math.min(LONGEST_FACTOR, Math.max(1 / LONGEST_FACTOR, far))
      area_m2 = Math.min(maxArea_m2, held * area_m2)
    }
    return null
  }

  /** Sized as it would be built: the next guess may begin from it. */
  learnSized(measures: readonly string[], { kind, area_m2, storeVolume_m3, slope }: Sized): void {
    if (area_m2 > 0 && storeVolume_m3 > 0) {
      this.ratio_m3m2 = storeVolume_m3 / area_m2
      if (kind === 'floor') this.floorRatio_m3m2 = this.ratio_m3m2
    }
    this.learn(measures, area_m2, slope)
  }

  private learn(measures: readonly string[], area_m2: number, slope: number | null): void {
    if (slope !== null) this.slope = slope
    if (area_m2 > 0) this.known.unshift({ measures, area_m2, slope })
  }

  /** As if each measure changed the area by the same share beside others as alone; null where one was not seen alone. */
  private expected_m2(measures: readonly string[]): number | null {
    const alone = (ids: readonly string[]): number | undefined =>
      this.known.find(
        (one) => one.measures.length === ids.length && ids.every((id) => one.measures.includes(id)),
      )?.area_m2
    const none_m2 = alone([])
    return measures.reduce<number | null>((area_m2, id) => {
      const with_m2 = alone([id])
      return area_m2 === null || none_m2 === undefined || with_m2 === undefined
        ? null
        : (area_m2 * with_m2) / none_m2
    }, none_m2 ?? null)
  }

  /** The design beside the measures that differ least; of several, the latest. */
  private nearest(measures: readonly string[]): Known | null {
    const differs = ({ measures: others }: Known): number =>
      [...measures.filter((id) => !others.includes(id)), ...others.filter((id) => !measures.includes(id))]
        .map((id) => (id === 'ceilingFan' ? FAN_APART : 1))
        .reduce((sum, each) => sum + each, 0)
    return this.known.reduce<Known | null>(
      (best, one) => (best === null || differs(one) < differs(best) ? one : best),
      null,
    )
  }
}

function guessed(task: SizingTask, area_m2: number, ratio_m3m2 = GUESSED_STORE_m3m2): Candidate {
  const storeVolume_m3 = tankOf_m3(task, area_m2, ratio_m3m2)
  return { area_m2, storeVolume_m3, flow_kgsm2: task.flow_kgsm2(area_m2) }
}

/**
 * The whole modules and the tank sold that might do, with some luck, where about so much area is needed. Only their season is run
 * where it is known: what they draw there is less than they draw in the year (observed), and all that is asked of a guess.
 */
function hopedYear(prepared: Prepared, task: SizingTask, needed_m2: number, ratio_m3m2: number): PanelYear {
  const modules = Math.max(1, Math.ceil((LUCKY_AREA * needed_m2) / task.moduleArea_m2))
  const area_m2 = modules * task.moduleArea_m2
  const storeVolume_m3 =
    task.storeVolume_m3 ?? tanksSoldAbout_m3(LUCKY_TANK * ratio_m3m2 * needed_m2, task.mostStore_m3)[0]!
  const candidate = { area_m2, storeVolume_m3, flow_kgsm2: task.flow_kgsm2(area_m2) }
  return { ...yearWith(prepared, candidate, 'built', task.season), hoped: true }
}
