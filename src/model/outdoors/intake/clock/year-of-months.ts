import type { ProblemList } from '../problems.ts'
import { DAY_MS, isLeapYear, moment_ms, NOMINAL_YEAR, writeMoment, yearOf } from '#model/basis/hours'

/** A year with fewer of a month's rows than this is an overhang of its first or last hour. */
const OVERHANG_FRAC = 0.05
/** A month and year with less of all rows than this is an overhang too. */
const STRAY_FRAC = 0.002
/** A typical year has rows for at least so many days. */
const NEARLY_A_YEAR_D = 300

/**
 * A typical year is put together from months of different years. Finds that out and gives every row the same
 * nominal year; other files come back as they are.
 * @param centres_ms middles of the rows' periods on the file's clock
 * @returns the middles, and the years the rows came from (none when the file has none)
 */
export function oneNominalYear(
  centres_ms: Float64Array,
  step_h: number,
  yearless: boolean,
  problems: ProblemList,
): { readonly centres_ms: Float64Array; readonly years: readonly number[] } {
  const { months, lowest, highest, dated } = tally(centres_ms)
  const main = months.map((years) =>
    [...years].filter(([, rows]) => rows > total(years) * OVERHANG_FRAC && rows > dated * STRAY_FRAC),
  )
  const years = [...new Set(main.flatMap((month) => month.map(([year]) => year)))].sort((a, b) => a - b)
  const [rows_d, span_d] = [(dated * step_h) / 24, (highest - lowest) / DAY_MS]
  const patched =
    main.every((month) => month.length <= 1) && rows_d > NEARLY_A_YEAR_D && span_d > 1.5 * rows_d + 31
  const joined = !patched && isJoinedYear(lowest, highest)
  if (years.length < 2 || (!patched && !joined)) return { centres_ms, years: yearless ? [] : years }
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
  return { centres_ms: moved, years }
}

/** Rows by calendar month and year, with the first and the last moment. */
function tally(centres_ms: Float64Array) {
  const months = Array.from({ length: 12 }, () => new Map<number, number>())
  let lowest = Infinity
  let highest = -Infinity
  let dated = 0
  for (const ms of centres_ms) {
    if (ms !== ms) continue
    const date = new Date(ms)
    const years = months[date.getUTCMonth()]!
    years.set(date.getUTCFullYear(), (years.get(date.getUTCFullYear()) ?? 0) + 1)
    lowest = Math.min(lowest, ms)
    highest = Math.max(highest, ms)
    dated += 1
  }
  return { months, lowest, highest, dated }
}

function total(years: ReadonlyMap<number, number>): number {
  return [...years.values()].reduce((sum, rows) => sum + rows, 0)
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
