import type { Trial } from '#model/sizing/area-search.ts'
import { exceedance } from '#model/sizing/exceedance.ts'
import { areaOnly, judged, slopeNearZero, type AreaAlone, type SizingTask } from '#model/sizing/size.ts'

/** An area under a hand that still moves a slider: two or three seasons instead of a whole sizing. */
export interface AboutArea {
  readonly kind: 'met' | 'floor' | 'notNeeded'
  readonly area_m2: number
}

/** A step is believed up to this factor of area; where a longer one would be needed the area is searched. */
const BELIEVED_FACTOR = 1.6
/** The last step is shorter than this factor, so that what is left is its square. */
const LAST_FACTOR = 1.04
const MOST_SEASONS = 3

/**
 * About the area a changed task needs: Newton's rule with the slope of the answer before, then secant steps with its
 * own, two or three seasons in all. The tank keeps its proportion.
 */
export function aboutArea(task: SizingTask, before: AreaAlone): AboutArea {
  if (exceedance(task.doNothing_C, task.yardstick).measure <= 0) return { kind: 'notNeeded', area_m2: 0 }
  const area_m2 = fewSteps(task, before) ?? areaOnly(task, before)
  return area_m2 === null ? { kind: 'floor', area_m2: task.maxArea_m2 } : { kind: 'met', area_m2 }
}

/** Null where the steps cannot be believed. */
function fewSteps(task: SizingTask, { ratio_m3m2, guess_m2, slope }: AreaAlone): number | null {
  let area_m2 = Math.min(guess_m2, task.maxArea_m2)
  let here: Trial | null = null
  for (let seasons = 0; seasons < MOST_SEASONS; seasons++) {
    const before: Trial | null = here
    here = { area_m2, measure: measureAt(task, area_m2, ratio_m3m2) }
    const steep = before === null ? slope : slopeNearZero([before, here])
    const factor = steep === null ? NaN : Math.exp(-here.measure / steep)
    if (!(factor < BELIEVED_FACTOR && factor > 1 / BELIEVED_FACTOR)) return null
    area_m2 *= factor
    if (area_m2 > task.maxArea_m2) return null
    if (before !== null && factor < LAST_FACTOR && factor > 1 / LAST_FACTOR) break
  }
  return area_m2
}

function measureAt(task: SizingTask, area_m2: number, ratio_m3m2: number): number {
  const storeVolume_m3 = task.storeVolume_m3 ?? ratio_m3m2 * area_m2
  return judged(task, { area_m2, storeVolume_m3, flow_kgsm2: task.flow_kgsm2 }).measure
}
