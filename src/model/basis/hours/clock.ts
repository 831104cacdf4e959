/** When and where a series of hours runs: its beginning and the offset of its wall clock. */
export interface Clock {
  /** Epoch milliseconds (UTC) of the beginning of hour 0. */
  readonly start_utcMs: number
  readonly site: {
    /** Local standard time minus UTC, hours. */
    readonly utcOffset_h: number
  }
}

export const HOUR_S = 3600
export const HOUR_MS = 3_600_000
export const J_PER_KWH = 3.6e6
/** Hours in a typical year. */
export const YEAR_HOURS = 8760

/** Local standard hour of the day, 0 ≤ h < 24, at which hour `index` begins (fractional where the series is). */
export function localHour({ start_utcMs, site }: Clock, index: number): number {
  const start_h = start_utcMs / HOUR_MS + site.utcOffset_h
  return (((start_h + index) % 24) + 24) % 24
}

/** Local standard time of an hour: month 0…11, day of the month from 1, hour of the day 0…23. */
export function localTime(
  { start_utcMs, site }: Clock,
  hour: number,
): { readonly month: number; readonly day: number; readonly hourOfDay: number } {
  const wall = new Date(start_utcMs + (site.utcOffset_h + hour) * HOUR_MS)
  return { month: wall.getUTCMonth(), day: wall.getUTCDate(), hourOfDay: wall.getUTCHours() }
}
