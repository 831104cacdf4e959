import type { TableMapping } from '#model/weather/mapping.ts'
import type { TimeChoices } from '#model/weather/options.ts'
import type { ProblemList } from '#model/weather/problems.ts'
import type { RawTable } from '#model/weather/table/raw.ts'
import { HOUR_MS, writeMoment, yearOf } from '#model/weather/time/calendar.ts'
import { undoDaylightSaving } from '#model/weather/time/daylight-saving.ts'
import { planHours, stampToMiddle_h, type HourPlan } from '#model/weather/time/hours.ts'
import { rowMoments } from '#model/weather/time/moments.ts'
import { keepFirstOfDuplicates } from '#model/weather/time/order.ts'
import { medianStep_h } from '#model/weather/time/step.ts'
import { oneNominalYear } from '#model/weather/time/year-of-months.ts'

/** The rows laid into hours, and what the stamps turned out to be. */
export interface RowTimes {
  readonly plan: HourPlan
  readonly step_h: number
  /** The years the rows come from, ascending; empty when the file has none. */
  readonly years: readonly number[]
  readonly clockOffset_h: number
}

/**
 * From stamps to hours of local standard time: reads the moments, undoes daylight saving, gives months of several
 * years one year, drops repeated stamps, picks one year of many. Null (and a problem) when there is no time at all.
 * @param utcOffset_h local standard time minus UTC
 */
export function rowTimes(
  raw: RawTable,
  mapping: TableMapping,
  choices: TimeChoices,
  utcOffset_h: number,
  layoutYear: number | undefined,
  problems: ProblemList,
): RowTimes | null {
  const year = typeof choices.year === 'number' ? choices.year : layoutYear
  const moments = rowMoments(raw, mapping, year, problems)
  if (moments === null || !sayUnreadable(moments.ms, raw, problems)) return null
  const step_h = medianStep_h(moments.ms)
  if (step_h > 1) {
    problems.error(
      'weather-step-too-long',
      `The rows are ${step_h} h apart; hourly rows or finer are needed.`,
      'Use an hourly file: three-hourly or daily values hide the nights.',
    )
    return null
  }
  const clockOffset_h =
    choices.clockOffset_h ?? (moments.zoned ? 0 : mapping.time.clockOffset_h) ?? utcOffset_h
  const stamps =
    clockOffset_h === 0 || moments.zoned ? moments.ms : undoDaylightSaving(moments.ms, step_h, problems)
  const stamp = choices.stamp ?? mapping.time.stamp
  const shift_h = (choices.shift_h ?? mapping.time.shift_h) + stampToMiddle_h(stamp, step_h)
  const middles = stamps.map((ms) => ms + shift_h * HOUR_MS)
  const { centres_ms, years } = oneNominalYear(middles, step_h, moments.yearless, problems)
  const toLocal_h = utcOffset_h - clockOffset_h
  const single = keepFirstOfDuplicates(centres_ms, raw, problems)
  const chosen = chooseYear(single, toLocal_h, choices.year, step_h, problems)
  const plan = planHours(chosen, toLocal_h, utcOffset_h, step_h)
  return plan === null ? null : { plan, step_h, years, clockOffset_h }
}

/** Says how many stamps cannot be read; false when none can. */
function sayUnreadable(ms: Float64Array, raw: RawTable, problems: ProblemList): boolean {
  let unreadable = 0
  let first = -1
  ms.forEach((moment, row) => {
    if (Number.isFinite(moment)) return
    ms[row] = NaN
    unreadable += 1
    if (first < 0) first = row
  })
  if (unreadable === 0) return true
  const all = unreadable === ms.length
  problems[all ? 'error' : 'warn'](
    'weather-stamp-unreadable',
    all
      ? 'No row has a date and time that can be read.'
      : `${unreadable} rows have no readable date and time and are left out.`,
    'Check the date and time columns in the mapping.',
    { line: raw.lines[first]! },
  )
  return !all
}

/** Longest span that is simply kept, h: a leap year and a day. */
const LONGEST_SPAN_H = 8808

function chooseYear(
  centres_ms: Float64Array,
  toLocal_h: number,
  choice: number | 'all' | undefined,
  step_h: number,
  problems: ProblemList,
): Float64Array {
  if (choice === 'all') return centres_ms
  const rows = new Map<number, number>()
  let lowest = Infinity
  let highest = -Infinity
  for (const ms of centres_ms) {
    if (ms !== ms) continue
    const year = yearOf(ms + toLocal_h * HOUR_MS)
    rows.set(year, (rows.get(year) ?? 0) + 1)
    lowest = Math.min(lowest, ms)
    highest = Math.max(highest, ms)
  }
  if ((highest - lowest) / HOUR_MS <= LONGEST_SPAN_H) return centres_ms
  const fullest = [...rows].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0]!
  const year = typeof choice === 'number' && rows.has(choice) ? choice : fullest[0]
  if (rows.get(year)! * step_h < 7000) return centres_ms
  if (year !== choice) {
    problems.warn(
      'weather-many-years',
      `The file runs from ${writeMoment(lowest)} to ${writeMoment(highest)}; the year ${year} is used.`,
      `Choose another year among ${[...rows.keys()].sort().join(', ')} if you want it.`,
    )
  }
  return centres_ms.map((ms) => (yearOf(ms + toLocal_h * HOUR_MS) === year ? ms : NaN))
}
