import { YEAR_HOURS } from './clock.ts'

/** Days of the months of a year without a leap day. */
export const MONTH_DAYS: readonly number[] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]
export const YEAR_DAYS = 365

/** First day (0-based) of each month, and 365 at the end. */
export const MONTH_STARTS: readonly number[] = MONTH_DAYS.reduce(
  (starts, days) => [...starts, starts.at(-1)! + days],
  [0],
)

/** Month, 0–11, that a day of the year (0-based) falls in. */
export function monthOfDay(day: number): number {
  let month = 11
  while (MONTH_STARTS[month]! > day) month -= 1
  return month
}

/** Hourly series through twelve month values set at the middle of their months, straight lines between. */
export function seasonal(monthly: ArrayLike<number>): Float64Array {
  const middle_h = MONTH_DAYS.map((days, month) => (MONTH_STARTS[month]! + days / 2) * 24)
  const series = new Float64Array(YEAR_HOURS)
  for (let hour = 0; hour < YEAR_HOURS; hour += 1) {
    const next = middle_h.findIndex((middle) => middle > hour + 0.5)
    const after = next < 0 ? 12 : next
    const from = middle_h[(after + 11) % 12]! - (after === 0 ? YEAR_HOURS : 0)
    const to = middle_h[after % 12]! + (after === 12 ? YEAR_HOURS : 0)
    const share = (hour + 0.5 - from) / (to - from)
    series[hour] = monthly[(after + 11) % 12]! * (1 - share) + monthly[after % 12]! * share
  }
  return series
}

/** Hourly series through daily values set at noon, straight lines between, the year closed on itself. */
export function hourlyFromDays(daily: Float64Array): Float64Array {
  const series = new Float64Array(daily.length * 24)
  for (let hour = 0; hour < series.length; hour += 1) {
    const position = (hour + 0.5 - 12) / 24
    const before = Math.floor(position)
    const share = position - before
    const day = (before + daily.length) % daily.length
    series[hour] = daily[day]! * (1 - share) + daily[(day + 1) % daily.length]! * share
  }
  return series
}

/** Means of an hourly 8760 h series over each day. */
export function dayMeans(series: Float64Array): Float64Array {
  return Float64Array.from({ length: YEAR_DAYS }, (_, day) => {
    let sum = 0
    for (let hour = day * 24; hour < day * 24 + 24; hour += 1) sum += series[hour]!
    return sum / 24
  })
}

/** Largest minus smallest hour of each day. */
export function dayRanges(series: Float64Array): Float64Array {
  return Float64Array.from({ length: YEAR_DAYS }, (_, day) => {
    const hours = series.subarray(day * 24, day * 24 + 24)
    return hours.reduce((high, value) => Math.max(high, value)) - hours.reduce((low, v) => Math.min(low, v))
  })
}

/** Means over each month of a series with a fixed number of values a day (365 or 8760 long). */
export function monthMeans(series: Float64Array): Float64Array {
  const perDay = series.length / YEAR_DAYS
  return Float64Array.from(MONTH_DAYS, (days, month) => {
    const from = MONTH_STARTS[month]! * perDay
    let sum = 0
    for (let index = from; index < from + days * perDay; index += 1) sum += series[index]!
    return sum / (days * perDay)
  })
}
