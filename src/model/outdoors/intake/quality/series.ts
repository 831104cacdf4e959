import type { Quantity } from '../column/quantity.ts'
import { writeMoment, HOUR_MS } from '#model/basis/hours'

/** Hourly values in our units, NaN where there is none; one array a quantity the file has. */
export type HourlySeries = Partial<Record<Quantity, Float64Array>>

/** What an hour index means in people's time: local standard, the beginning of the hour. */
export interface HourNames {
  readonly start_utcMs: number
  readonly utcOffset_h: number
  readonly wholeYear: boolean
}

/** Local standard time of the beginning of an hour; a whole year is named by month and day only. */
export function nameHour(names: HourNames, hour: number): string {
  const text = writeMoment(names.start_utcMs + (names.utcOffset_h + hour) * HOUR_MS)
  return names.wholeYear ? text.slice(5) : text
}

/** Calendar month of an hour, 0 for January, local standard time. */
export function monthOfHour(names: HourNames, hour: number): number {
  return new Date(names.start_utcMs + (names.utcOffset_h + hour) * HOUR_MS).getUTCMonth()
}
