import type { Trial } from './area-search.ts'
import { exceedance, type Exceedance } from '#model/design/target'
import { type Season, seasonDecides, widerSeason } from './season.ts'
import type { Candidate, SizingTask } from './task.ts'

/** Tank of an area, m³: given, or in a proportion to it and no larger than fits. */
export function tankOf_m3(
  { storeVolume_m3, mostStore_m3 }: Pick<SizingTask, 'storeVolume_m3' | 'mostStore_m3'>,
  area_m2: number,
  ratio_m3m2: number,
): number {
  return storeVolume_m3 ?? Math.min(ratio_m3m2 * area_m2, mostStore_m3)
}

/** How a candidate does, and the room it was judged by, °C: outside `season` that of the room left alone; null: a whole year. */
export interface Judged {
  readonly found: Exceedance
  readonly room_C: Float64Array
  readonly season: Season | null
}

/** Two seasons that do not settle a run, and it is a whole year. */
const MOST_SEASONS = 2

/** Years already simulated in one sizing. */
export class Runs {
  private readonly curves = new Map<number, Map<number, Exceedance>>()
  private readonly done = new Map<string, Judged>()
  private readonly tried: { readonly candidate: Candidate; readonly season: Season | null }[] = []
  private readonly task: SizingTask

  constructor(task: SizingTask) {
    this.task = task
  }

  get count(): number {
    return this.done.size
  }

  volume_m3(area_m2: number, ratio_m3m2: number): number {
    return tankOf_m3(this.task, area_m2, ratio_m3m2)
  }

  /** With the tank in a proportion to the area. */
  at(area_m2: number, ratio_m3m2: number): Exceedance {
    const curve = this.curves.get(ratio_m3m2) ?? new Map<number, Exceedance>()
    this.curves.set(ratio_m3m2, curve)
    const found = this.with(area_m2, this.volume_m3(area_m2, ratio_m3m2))
    curve.set(area_m2, found)
    return found
  }

  /** With a tank of so much, whether it fits or not. */
  with(area_m2: number, storeVolume_m3: number): Exceedance {
    return this.judgedWith(area_m2, storeVolume_m3).found
  }

  /** The same, and the room it was judged by. */
  judgedWith(area_m2: number, storeVolume_m3: number): Judged {
    const key = `${area_m2} ${storeVolume_m3}`
    const known = this.done.get(key)
    if (known !== undefined) return known
    const flow_kgsm2 = this.task.flow_kgsm2(area_m2)
    const candidate = { area_m2, storeVolume_m3, flow_kgsm2 }
    const judged = judgedRoom(this.task, candidate, this.seasonFor(candidate))
    this.done.set(key, judged)
    this.tried.push({ candidate, season: judged.season })
    return judged
  }

  /** What settled no smaller design is not tried for a larger one: the last season, or whole year, that such a design needed. */
  private seasonFor({ area_m2, storeVolume_m3 }: Candidate): Season | null {
    const smaller = this.tried.findLast(
      ({ candidate, season }) =>
        season !== this.task.season &&
        candidate.area_m2 <= area_m2 &&
        candidate.storeVolume_m3 <= storeVolume_m3,
    )
    return smaller === undefined ? this.task.season : smaller.season
  }

  /** What was tried with the tank in a proportion, in rising area. */
  curve(ratio_m3m2: number): readonly (Trial & { readonly result: Exceedance })[] {
    return [...(this.curves.get(ratio_m3m2) ?? [])]
      .map(([area_m2, result]) => ({ area_m2, result, measure: result.measure }))
      .toSorted((a, b) => a.area_m2 - b.area_m2)
  }
}

/** How a candidate does. */
export function judged(task: SizingTask, candidate: Candidate): Exceedance {
  return judgedRoom(task, candidate, task.season).found
}

/** From a season alone where that is enough, else from the whole year. */
function judgedRoom(task: SizingTask, candidate: Candidate, begin: Season | null): Judged {
  const { yardstick, doNothing_C } = task
  let season = begin
  for (let tries = 0; tries < MOST_SEASONS && season !== null; tries++) {
    const room_C = task.seasonRoom_C(candidate, season)
    const found = exceedance(room_C, yardstick)
    if (seasonDecides(season, yardstick, found)) return { found, room_C, season }
    season = widerSeason(season, yardstick, doNothing_C, room_C)
  }
  const room_C = task.room_C(candidate)
  return { found: exceedance(room_C, yardstick), room_C, season: null }
}
