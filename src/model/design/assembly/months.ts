import { HOUR_S } from '#model/basis/hours'
import type { MonthSummary } from './design-answer.ts'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { YearResult } from '#model/building/year'

const WEEK_h = 168

/** Month (1…12) of each hour in local standard time. */
export function monthOfHours(weather: WeatherRecord): Uint8Array {
  const months = new Uint8Array(weather.hours)
  const start_ms = weather.start_utcMs + weather.site.utcOffset_h * HOUR_S * 1000
  for (let h = 0; h < weather.hours; h++) {
    months[h] = new Date(start_ms + h * HOUR_S * 1000).getUTCMonth() + 1
  }
  return months
}

/** Sums and peaks by calendar month; twelve entries, those without hours have zero sums and NaN temperatures. */
export function monthSummaries(
  weather: WeatherRecord,
  year: YearResult,
  doNothing: YearResult,
  limit_C: Float64Array,
): MonthSummary[] {
  const months = monthOfHours(weather)
  return Array.from({ length: 12 }, (_, index) => {
    const hours = [...months.keys()].filter((h) => months[h] === index + 1)
    const sum = (column: Float64Array): number => hours.reduce((total, h) => total + zeroIfNaN(column[h]!), 0)
    const peak = (column: Float64Array): number =>
      hours.reduce((top, h) => Math.max(top, column[h]!), -Infinity)
    const over = (room_C: Float64Array): number => hours.filter((h) => room_C[h]! > limit_C[h]!).length
    const mean = (column: Float64Array): number => sum(column) / hours.length
    return {
      month: index + 1,
      outdoorMean_C: mean(weather.airTemp_C),
      roomMean_C: mean(year.room_C),
      roomPeak_C: peak(year.room_C),
      doNothingPeak_C: peak(doNothing.room_C),
      hoursOver_h: over(year.room_C),
      doNothingHoursOver_h: over(doNothing.room_C),
      panelHeat_J: sum(year.panelHeat_W) * HOUR_S,
      delivered_J: sum(year.delivered_W) * HOUR_S,
      electric_J: sum(year.electric_W) * HOUR_S,
      pumpRun_h: sum(year.pumpRun_frac),
    }
  })
}

const zeroIfNaN = (value: number): number => (Number.isNaN(value) ? 0 : value)

/** First hour of the seven days (from a midnight of the record) with the highest mean outdoor temperature. */
export function hottestWeekStart_h(weather: WeatherRecord): number {
  const week_h = Math.min(WEEK_h, weather.hours)
  let best = 0
  let bestSum = -Infinity
  for (let start = 0; start + week_h <= weather.hours; start += 24) {
    let sum = 0
    for (let h = start; h < start + week_h; h++) sum += weather.airTemp_C[h]!
    if (sum > bestSum) {
      bestSum = sum
      best = start
    }
  }
  return best
}
