import type { Trial } from './area-search.ts'
import { exceedance } from '#model/design/target'
import type { SizingResult } from './result.ts'
import { judged, tankOf_m3 } from './runs.ts'
import { areaOnly, slopeNearZero, type AreaAlone } from './size.ts'
import type { SizingTask } from './task.ts'

/** An area under a hand that still moves a slider: one to three seasons instead of a whole sizing. */
export interface AboutArea {
  readonly kind: 'met' | 'floor' | 'notNeeded'
  readonly area_m2: number
}

/** A design near by to begin from: the last one followed, or a whole answer. */
export type NearDesign = Pick<SizingResult, 'area_m2' | 'storeVolume_m3' | 'slope'>

/** No step is longer than this factor of area. */
const LONGEST_FACTOR = 1.6
/** The last step is shorter than this factor, so that what is left is its square. */
const LAST_FACTOR = 1.03
/** The first step is the last where it is shorter than this one: the slope it goes by is another answer's. */
const FIRST_AND_LAST_FACTOR = 1.01
const MOST_SEASONS = 6

/**
 * About the area a changed task needs: Newton's rule with the slope of the answer before, then secant steps with its
 * own, one to three seasons in all as a rule. The tank keeps its proportion. Where no slope is known, or the steps do
 * not end, the area is searched.
 */
export function aboutArea(task: SizingTask, before: AreaAlone): AboutArea {
  if (exceedance(task.doNothing_C, task.yardstick).measure <= 0) return { kind: 'notNeeded', area_m2: 0 }
  const floor: AboutArea = { kind: 'floor', area_m2: task.maxArea_m2 }
  const area_m2 = before.slope === null ? null : fewSteps(task, before, before.slope)
  if (area_m2 !== null) return area_m2 > task.maxArea_m2 ? floor : { kind: 'met', area_m2 }
  const searched_m2 = areaOnly(task, before)
  return searched_m2 === null ? floor : { kind: 'met', area_m2: searched_m2 }
}

/** More than the largest area where that does not meet the target; null where the steps do not end. */
function fewSteps(task: SizingTask, { ratio_m3m2, guess_m2 }: AreaAlone, slope: number): number | null {
  const { maxArea_m2 } = task
  let area_m2 = Math.min(guess_m2, maxArea_m2)
  let here: Trial | null = null
  for (let seasons = 0; seasons < MOST_SEASONS; seasons++) {
    const before: Trial | null = here
    here = { area_m2, measure: measureAt(task, area_m2, ratio_m3m2) }
    if (here.measure > 0 && area_m2 === maxArea_m2) return Infinity
    const steep = before === null ? slope : slopeNearZero([before, here])
    if (steep === null) return null
    const factor = Math.exp(-here.measure / steep)
    const held = Math.min(LONGEST_FACTOR, Math.max(1 / LONGEST_FACTOR, factor))
    area_m2 = Math.min(area_m2 * held, maxArea_m2)
    const short = before === null ? FIRST_AND_LAST_FACTOR : LAST_FACTOR
    if (factor < short && factor > 1 / short && area_m2 < maxArea_m2) return area_m2
  }
  return null
}

function measureAt(task: SizingTask, area_m2: number, ratio_m3m2: number): number {
  const storeVolume_m3 = tankOf_m3(task, area_m2, ratio_m3m2)
  return judged(task, { area_m2, storeVolume_m3, flow_kgsm2: task.flow_kgsm2(area_m2) }).measure
}
