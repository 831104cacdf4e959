import type { Yardstick } from '#model/design/target'
import type { SizingResult } from './result.ts'
import type { Season } from './season.ts'

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
  /** Largest tank that may be chosen, m³; Infinity where nothing limits it. */
  readonly mostStore_m3: number
  /** False for slab and building: there is no tank to choose. */
  readonly hasTank: boolean
  /** Flow per panel area that an area is run with, kg/s m²; and what other flows come to there. */
  readonly flow_kgsm2: (area_m2: number) => number
  readonly flowRows: (area_m2: number) => SizingResult['flowKnee']
  readonly moduleArea_m2: number
}
