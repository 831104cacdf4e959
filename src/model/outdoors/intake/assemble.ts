import { sunHours } from '#model/outdoors/sun'
import { buildRecord } from './build-record.ts'
import { fromOthers } from './derive/from-others.ts'
import { hourlySeries } from './hourly-series.ts'
import type { TableMapping } from './mapping.ts'
import type { OpenedWeather, OpenOptions } from './options.ts'
import type { TimeChoices } from './said.ts'
import type { ProblemList } from './problems.ts'
import { fillGaps } from './quality/gaps.ts'
import { judge } from './quality/judge.ts'
import { EMPTY_REPORT } from './quality/report.ts'
import type { HourNames } from './quality/series.ts'
import type { Site } from '#model/outdoors/weather'
import { AS_READ, asRead } from './question.ts'
import { resolveSite } from './resolve-site.ts'
import type { RawTable } from './table/raw.ts'
import { checkClock } from './clock/clock-check.ts'
import { asksAboutClock, CLOCK_UNKNOWN, type ClockReport } from './clock/clock-report.ts'
import { checkHemisphere } from './clock/hemisphere-check.ts'
import { rowTimes, type RowTimes } from './clock/row-times.ts'

/** What the layout or the guess said beside the mapping. */
export interface FileNotes {
  /** One sentence on the data set. */
  readonly basis: string
  /** The year where the file has none. */
  readonly year?: number
}

/** From a table of numbers and its mapping to the record, judged, filled and checked against the sun. */
export function assemble(
  raw: RawTable,
  mapping: TableMapping,
  notes: FileNotes,
  options: OpenOptions,
  problems: ProblemList,
): OpenedWeather {
  sayOddLines(raw, mapping, problems)
  const laid = layInTime(raw, mapping, notes, options, problems)
  if (laid === null) {
    return {
      ...{ record: null, mapping, clock: CLOCK_UNKNOWN, quality: EMPTY_REPORT },
      ...{ problems: problems.list, questions: problems.questions },
    }
  }
  const { site, times, names, radiationMiddle_h, sun } = laid
  const { plan } = times
  const { series: read, notes: worked } = fromOthers(
    hourlySeries(raw, mapping, plan, times.step_h, problems),
    site.altitude_m,
  )
  const judged = judge(read, sun, names, problems)
  const filled = fillGaps(judged.series, names, options.acceptLongGaps ?? false, problems)
  const global = judged.series.globalHorizontal ?? null
  const clock = checkClock({
    global,
    names,
    site,
    radiationMiddle_h,
    ...clockAsRead(times, mapping, options.time ?? {}),
  })
  askAboutClock(clock, options, problems)
  if (global !== null && options.answers?.['latitude'] !== AS_READ)
    checkHemisphere(global, plan.start_utcMs, site, problems)
  sayLength(times, problems)
  const record = buildRecord(
    {
      ...filled,
      mapping,
      worked,
      plan,
      radiationMiddle_h,
      site,
      sun,
      basis: basisOf(notes, times, site, options.file),
    },
    problems,
  )
  const quality = {
    hours: plan.hours,
    coverage: judged.coverage,
    findings: judged.findings,
    gaps: filled.gaps,
  }
  return {
    ...{ record: problems.stopped ? null : record, mapping, clock, quality },
    ...{ problems: problems.list, questions: problems.questions },
  }
}

/** Where and when the rows are, and the sun over them; null (and a problem) when either is unknown. */
function layInTime(
  raw: RawTable,
  mapping: TableMapping,
  notes: FileNotes,
  { site: chosen = {}, time = {}, file }: OpenOptions,
  problems: ProblemList,
) {
  const site = resolveSite(raw, mapping, chosen, file, problems)
  const times = rowTimes(raw, mapping, time, site?.utcOffset_h ?? 0, notes.year, problems)
  if (site === null || times === null) return null
  const { plan } = times
  const names: HourNames = { ...plan, utcOffset_h: site.utcOffset_h }
  const radiationMiddle_h = plan.middle_h + (time.radiationOffset_h ?? mapping.time.radiationOffset_h ?? 0)
  const sun = sunHours(plan.start_utcMs, plan.hours, radiationMiddle_h, site.latitude_deg, site.longitude_deg)
  return { site, times, names, radiationMiddle_h, sun }
}

/** How the stamps were read: the user's choice over the mapping's. */
function clockAsRead({ clockOffset_h, step_h }: RowTimes, { time }: TableMapping, choices: TimeChoices) {
  return {
    clockOffset_h,
    step_h,
    stamp: choices.stamp ?? time.stamp,
    shift_h: choices.shift_h ?? time.shift_h,
  }
}

function basisOf(notes: FileNotes, { years }: RowTimes, site: Site, file: string): string {
  const span =
    years.length === 0
      ? ''
      : ` ${years.length > 1 ? 'Years' : 'Year'} ${years[0]}${years.length > 1 ? `–${years.at(-1)}` : ''}.`
  return notes.basis === '' ? `${site.name}, from ${file}.${span}` : `${notes.basis}${span}`
}

/** Asks where the sun contradicts the clock and nobody has said how the stamps are meant. */
function askAboutClock(clock: ClockReport, { time, answers }: OpenOptions, problems: ProblemList): void {
  const said = [time?.clockOffset_h, time?.stamp, time?.shift_h, answers?.['clock']]
  if (said.some((one) => one !== undefined) || !asksAboutClock(clock)) return
  problems.ask({
    about: 'clock',
    sentence: clock.sentence,
    choices: [
      ...clock.corrections.map(({ sentence, change }) => ({ words: sentence, change })),
      asRead('clock'),
    ],
  })
}

function sayOddLines(raw: RawTable, mapping: TableMapping, problems: ProblemList): void {
  const first = raw.odd[0]
  if (first === undefined) return
  problems.warn(
    'weather-odd-lines',
    `${raw.oddCount} lines do not have the ${mapping.columns.length} fields of the table (the first has ${first.fields}: "${first.text}") and are left out.`,
    'Check the lines; a quotation mark or a separator may be missing.',
    { line: first.line },
  )
}

function sayLength({ plan }: RowTimes, problems: ProblemList): void {
  if (plan.wholeYear) return
  problems.warn(
    'weather-not-a-year',
    `The record holds ${plan.hours} h, not a whole calendar year of 8760.`,
    'It can be looked at and compared; to size a panel, open a file with a whole year.',
  )
}
