import type { ProblemList } from '#model/weather/problems.ts'
import {
  DAY_MS,
  isLeapYear,
  moment_ms,
  NOMINAL_YEAR,
  writeMoment,
  yearOf,
} from '#model/weather/time/calendar.ts'

/**
 * A typical year is put together from months of different years. Finds that out and gives every row the same
 * nominal year; other files come back as they are.
 * @param centres_ms middles of the rows' periods on the file's clock
 */
export function oneNominalYear(
  centres_ms: Float64Array,
  step_h: number,
  yearless: boolean,
  problems: ProblemList,
): { readonly centres_ms: Float64Array; readonly years: readonly number[]; readonly mixed: boolean } {
  const byMonth = Array.from({ length: 12 }, () => new Set<number>())
  let lowest = Infinity
  let highest = -Infinity
  let dated = 0
  for (const ms of centres_ms) {
    if (ms !== ms) continue
    const date = new Date(ms)
    byMonth[date.getUTCMonth()]!.add(date.getUTCFullYear())
    lowest = Math.min(lowest, ms)
    highest = Math.max(highest, ms)
    dated += 1
  }
  const years = [...new Set(byMonth.flatMap((set) => [...set]))].sort((a, b) => a - b)
  const span_d = (highest - lowest) / DAY_MS
  const patched = byMonth.every((set) => set.size <= 1) && span_d > (1.5 * dated * step_h) / 24 + 31
  const joined = !patched && isJoinedYear(lowest, highest)
  const mixed = years.length > 1 && (patched || joined)
  if (!mixed) return { centres_ms, years: yearless ? [] : years, mixed }
  if (joined) {
    problems.warn(
      'weather-joined-year',
      `The file runs from ${writeMoment(lowest)} to ${writeMoment(highest)}; it is turned so that the year starts on 1 January.`,
      'Nothing to do; the weather on either side of the join is from different years.',
    )
  }
  const nominal = years.find((year) => !isLeapYear(year)) ?? NOMINAL_YEAR
  const { moved, leapRows } = withYear(centres_ms, nominal)
  if (leapRows > 0) {
    problems.warn(
      'weather-leap-day',
      `The ${leapRows} rows of 29 February are left out: a typical year has 365 days.`,
      'Nothing to do.',
    )
  }
  return { centres_ms: moved, years, mixed }
}

/** The rows with one year for all; 29 February drops out of a year that has none. */
function withYear(
  centres_ms: Float64Array,
  year: number,
): { readonly moved: Float64Array; readonly leapRows: number } {
  let leapRows = 0
  const moved = centres_ms.map((ms) => {
    if (ms !== ms) return NaN
    const date = new Date(ms)
    const ofDay_ms = ((ms % DAY_MS) + DAY_MS) % DAY_MS
    const there = moment_ms(year, date.getUTCMonth() + 1, date.getUTCDate(), ofDay_ms)
    if (there !== there) leapRows += 1
    return there
  })
  return { moved, leapRows }
}

/** A year of weather that does not begin in January. */
function isJoinedYear(lowest_ms: number, highest_ms: number): boolean {
  const span_d = (highest_ms - lowest_ms) / DAY_MS
  const inside = Date.UTC(yearOf(highest_ms), 0, 1)
  return (
    span_d > 363.5 && span_d < 366.1 && lowest_ms < inside - 2 * DAY_MS && highest_ms > inside + 2 * DAY_MS
  )
}
