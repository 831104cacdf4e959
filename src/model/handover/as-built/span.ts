import { HOUR_MS } from '#model/basis/hours'
import type { ProblemList, HourPlan } from '#model/outdoors/intake'
import { isWholeYear, type WeatherRecord } from '#model/outdoors/weather'

const YEAR_MS = 365 * 24 * HOUR_MS

/** Hours that a log and a weather record share. */
export interface CommonSpan {
  readonly logFrom: number
  readonly weatherFrom: number
  readonly hours: number
}

/**
 * Lays a log over the weather by the clock. A log of another year than a whole-year record is laid by the day of the
 * year, with a warning: typical weather is not the weather that was. Null (and a problem) when nothing is shared.
 */
export function commonSpan(weather: WeatherRecord, plan: HourPlan, problems: ProblemList): CommonSpan | null {
  const apart_h = Math.round((plan.start_utcMs - weather.start_utcMs) / HOUR_MS)
  const exact = overlap(apart_h, weather.hours, plan.hours)
  if (exact !== null) return exact
  const turned = isWholeYear(weather) ? overlap(sameSeason_h(weather, plan), weather.hours, plan.hours) : null
  if (turned === null) {
    problems.error(
      'as-built-no-common-hours',
      'The logger file and the weather share no hour.',
      'Give the weather of the logged days; the check needs the weather that was.',
    )
    return null
  }
  problems.warn(
    'as-built-other-year',
    'The weather is of another year than the logger file and was laid over it by the day of the year.',
    'Give the weather of the logged days: against typical weather only large faults can be found.',
  )
  return turned
}

/** Hours from the beginning of the weather's year to the log's, whole years taken off. */
function sameSeason_h(weather: WeatherRecord, plan: HourPlan): number {
  const local = (ms: number) => new Date(ms + weather.site.utcOffset_h * HOUR_MS)
  const log = local(plan.start_utcMs)
  const first = local(weather.start_utcMs)
  const year = first.getUTCFullYear()
  const turned = Date.UTC(year, log.getUTCMonth(), log.getUTCDate(), log.getUTCHours())
  const late = turned - first.getTime()
  return Math.round((late < 0 ? late + YEAR_MS : late) / HOUR_MS)
}

function overlap(apart_h: number, weatherHours: number, logHours: number): CommonSpan | null {
  const weatherFrom = Math.max(0, apart_h)
  const logFrom = Math.max(0, -apart_h)
  const hours = Math.min(weatherHours - weatherFrom, logHours - logFrom)
  return hours > 0 ? { logFrom, weatherFrom, hours } : null
}

/** The weather of a span as a record of its own. */
export function weatherSpan(weather: WeatherRecord, span: CommonSpan): WeatherRecord {
  const cut = (column: Float64Array) => column.slice(span.weatherFrom, span.weatherFrom + span.hours)
  const columns = Object.fromEntries(
    Object.entries(weather).map(([name, value]) => [
      name,
      value instanceof Float64Array ? cut(value) : value,
    ]),
  )
  return {
    ...(columns as unknown as WeatherRecord),
    hours: span.hours,
    start_utcMs: weather.start_utcMs + span.weatherFrom * HOUR_MS,
  }
}
