import type { TableMapping } from '../mapping.ts'
import type { TimeChoices } from '../said.ts'
import type { ProblemList } from '../problems.ts'
import type { RawTable } from '../table/raw.ts'
import { HOUR_MS } from '#model/basis/hours'
import { chooseYear, isScattered } from './span.ts'
import { undoDaylightSaving } from './daylight-saving.ts'
import { planHours, stampToMiddle_h, type HourPlan } from './hours.ts'
import { rowMoments } from './moments.ts'
import { keepFirstOfDuplicates } from './order.ts'
import { medianStep_h } from './step.ts'
import { oneNominalYear } from './year-of-months.ts'

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
  if (isScattered(chosen, raw, step_h, problems)) return null
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
