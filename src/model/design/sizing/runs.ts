import type { Trial } from './area-search.ts'
import { exceedance, type Exceedance } from '#model/design/target'
import { seasonDecides } from './season.ts'
import type { Candidate, SizingTask } from './task.ts'

/** Tank of an area, m³: given, or in a proportion to it and no larger than fits. */
export function tankOf_m3(
  { storeVolume_m3, mostStore_m3 }: Pick<SizingTask, 'storeVolume_m3' | 'mostStore_m3'>,
  area_m2: number,
  ratio_m3m2: number,
): number {
  return storeVolume_m3 ?? Math.min(ratio_m3m2 * area_m2, mostStore_m3)
}

/** Years already simulated in one sizing. */
export class Runs {
  private readonly curves = new Map<number, Map<number, Exceedance>>()
  private readonly done = new Map<string, Exceedance>()
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
    const key = `${area_m2} ${storeVolume_m3}`
    const known = this.done.get(key)
    if (known !== undefined) return known
    const found = judged(this.task, { area_m2, storeVolume_m3, flow_kgsm2: this.task.flow_kgsm2(area_m2) })
    this.done.set(key, found)
    return found
  }

  /** What was tried with the tank in a proportion, in rising area. */
  curve(ratio_m3m2: number): readonly (Trial & { readonly result: Exceedance })[] {
    return [...(this.curves.get(ratio_m3m2) ?? [])]
      .map(([area_m2, result]) => ({ area_m2, result, measure: result.measure }))
      .toSorted((a, b) => a.area_m2 - b.area_m2)
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
