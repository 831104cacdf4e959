import type { Stamp } from '../mapping.ts'
import { isLeapYear, yearOf, HOUR_MS } from '#model/basis/hours'

/** From a row's stamp to the middle of what it covers, h. */
export function stampToMiddle_h(stamp: Stamp, step_h: number): number {
  if (stamp === 'ending') return -step_h / 2
  return stamp === 'beginning' ? step_h / 2 : 0
}

/** Which hour of the record each row falls in. */
export interface HourPlan {
  /** UTC of the beginning of hour 0. */
  readonly start_utcMs: number
  readonly hours: number
  /** Hour of each row, −1 for rows that are left out. */
  readonly hourOfRow: Int32Array
  /** Mean distance from the beginning of an hour to the middles of its rows, h. */
  readonly middle_h: number
  /** The record is one calendar year that closes on itself. */
  readonly wholeYear: boolean
}

/** The one calendar year the moments fill, or null. */
function filledYear(centres_ms: Float64Array): { readonly year: number; readonly hours: number } | null {
  let lowest = Infinity
  let highest = -Infinity
  for (const ms of centres_ms) {
    if (ms < lowest) lowest = ms
    if (ms > highest) highest = ms
  }
  if (!Number.isFinite(lowest)) return null
  const year = yearOf((lowest + highest) / 2)
  const start = Date.UTC(year, 0, 1)
  const end = Date.UTC(year + 1, 0, 1)
  const near = 14 * HOUR_MS
  if (lowest < start - near || highest > end + near || lowest > start + near || highest < end - near)
    return null
  return { year, hours: isLeapYear(year) ? 8784 : 8760 }
}

/** Rows an hour must have to count: half of what the step allows. */
export function fewestRows(step_h: number): number {
  return step_h > 0 ? Math.max(1, Math.ceil(0.5 / step_h)) : 1
}

/** First and last hour that have rows enough, local time; null when none has. */
function fullHours(
  centres_ms: Float64Array,
  toLocal_h: number,
  fewest: number,
): { readonly start_ms: number; readonly hours: number } | null {
  const rows = new Map<number, number>()
  for (const ms of centres_ms) {
    if (ms !== ms) continue
    const hour = Math.floor(ms / HOUR_MS + toLocal_h + 1e-9)
    rows.set(hour, (rows.get(hour) ?? 0) + 1)
  }
  let first = Infinity
  let last = -Infinity
  for (const [hour, count] of rows) {
    if (count < fewest) continue
    first = Math.min(first, hour)
    last = Math.max(last, hour)
  }
  return Number.isFinite(first) ? { start_ms: first * HOUR_MS, hours: last - first + 1 } : null
}

/**
 * Lays the rows into hours of local standard time. A file that fills one calendar year is turned so that hour 0
 * begins at local midnight on 1 January, what overhangs at one end going to the other; other files keep their span.
 * @param centres_ms middles of the rows' periods, on the file's clock
 * @param toLocal_h local standard time minus the file's clock, h; whole years are turned by whole hours
 */
export function planHours(
  centres_ms: Float64Array,
  toLocal_h: number,
  utcOffset_h: number,
  step_h: number,
): HourPlan | null {
  const whole = filledYear(centres_ms)
  const span = whole === null ? fullHours(centres_ms, toLocal_h, fewestRows(step_h)) : null
  if (whole === null && span === null) return null
  const start = span?.start_ms ?? Date.UTC(whole!.year, 0, 1)
  const hours = span?.hours ?? whole!.hours
  const { hourOfRow, middle_h } = layRows(
    centres_ms.map((ms) => (ms + toLocal_h * HOUR_MS - start) / HOUR_MS),
    hours,
    whole !== null,
  )
  return { start_utcMs: start - utcOffset_h * HOUR_MS, hours, hourOfRow, middle_h, wholeYear: whole !== null }
}

/**
 * The hour each row falls in. In a year that closes on itself a row beyond one end goes to the other, unless that
 * hour has a row of its own; otherwise rows beyond the ends are left out.
 * @param middles_h middles of the rows' periods, hours after the record's beginning; NaN for rows without a time
 */
function layRows(middles_h: Float64Array, hours: number, cyclic: boolean) {
  const hourOfRow = new Int32Array(middles_h.length).fill(-1)
  const own = new Uint8Array(hours)
  const index = (middle: number): number => Math.floor(middle + 1e-9)
  let within = 0
  let rows = 0
  middles_h.forEach((middle, row) => {
    const hour = index(middle)
    if (!(hour >= 0 && hour < hours)) return
    hourOfRow[row] = hour
    own[hour] = 1
    within += middle - hour
    rows += 1
  })
  middles_h.forEach((middle, row) => {
    if (!cyclic || middle !== middle || hourOfRow[row] !== -1) return
    const hour = ((index(middle) % hours) + hours) % hours
    if (own[hour] === 0) hourOfRow[row] = hour
  })
  return { hourOfRow, middle_h: Math.round((within / rows) * 3600) / 3600 }
}

/**
 * Means of a column over the hours, NaN where an hour has fewer values than `fewest`.
 * @param convert takes a printed value to our unit
 */
export function hourlyMeans(
  values: Float64Array,
  plan: HourPlan,
  fewest: number,
  convert: (value: number) => number,
): Float64Array {
  const sums = new Float64Array(plan.hours)
  const counts = new Uint32Array(plan.hours)
  for (let row = 0; row < values.length; row += 1) {
    const hour = plan.hourOfRow[row]!
    const value = values[row]!
    if (hour < 0 || value !== value) continue
    sums[hour]! += convert(value)
    counts[hour]! += 1
  }
  return sums.map((sum, hour) => (counts[hour]! < fewest ? NaN : sum / counts[hour]!))
}
