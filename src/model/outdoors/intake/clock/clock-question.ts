import type { Stamp } from '../mapping.ts'
import type { HourNames } from '../quality/series.ts'
import type { Site } from '#model/outdoors/weather'

/** A record's radiation with the assumptions it was placed in time by. */
export interface ClockQuestion {
  /** Global horizontal as read, NaN where missing; null when the file has none. */
  readonly global: Float64Array | null
  readonly names: HourNames
  readonly site: Site
  readonly radiationMiddle_h: number
  readonly step_h: number
  readonly clockOffset_h: number
  readonly stamp: Stamp
  readonly shift_h: number
}

/** A difference of clock times brought to −12…12 h. */
export function wrapped(hours: number): number {
  return hours - 24 * Math.round(hours / 24)
}

/** An offset with its sign, as people write it: +1, −5. */
export function signed(offset_h: number): string {
  return offset_h < 0 ? `−${-offset_h}` : `+${offset_h}`
}
