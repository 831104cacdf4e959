import { exceedance, type Exceedance } from '#model/design/target'
import { seasonDecides, type Season } from './season.ts'
import type { Candidate, SizingTask } from './task.ts'

/**
 * How candidates do, one after the other: from the season of the search where that settles it, else from a wider one, else from
 * the whole year. What was not settled for a smaller design is not tried again for a larger one.
 * @param wide  a season that holds the task's; null for none
 */
export function judgedAlso(task: SizingTask, wide: Season | null): (candidate: Candidate) => Exceedance {
  const { yardstick } = task
  const seasons = [task.season, wide].filter((season) => season !== null)
  const unsettled: Candidate[][] = seasons.map(() => [])
  return (candidate) => {
    for (const [i, season] of seasons.entries()) {
      if (unsettled[i]!.some((smaller) => noLarger(smaller, candidate))) continue
      const found = exceedance(task.seasonRoom_C(candidate, season), yardstick)
      if (seasonDecides(season, yardstick, found)) return found
      unsettled[i]!.push(candidate)
    }
    return exceedance(task.room_C(candidate), yardstick)
  }
}

const noLarger = (a: Candidate, b: Candidate): boolean =>
  a.area_m2 <= b.area_m2 && a.storeVolume_m3 <= b.storeVolume_m3 && a.flow_kgsm2 <= b.flow_kgsm2
