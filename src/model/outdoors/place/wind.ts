import { hourlyFromDays, monthMeans, monthOfDay } from '#model/basis/hours'
import { persistentSeries, type RandomSource } from '#model/basis/numbers'
import { exceedance, solarHour_h } from '#model/outdoors/climate'
import type { Site } from '#model/outdoors/weather'
import type { MonthTargets } from './months.ts'

const DAY_VARIANCE = 0.45
const HOUR_PERSISTENCE = 0.8
/** Night's share of the afternoon's wind, and what a wholly clear night takes away besides. */
const NIGHT_frac = 0.7
const CLEAR_NIGHT_LULL = 0.35
/** Solar hour of the strongest wind. */
const STRONGEST_H = 15

/** Wind of each hour at 10 m, m/s: Weibull of shape 2, strongest in the afternoon, calm on clear nights; month means held. */
export function placeWind(
  site: Site,
  months: MonthTargets,
  dayState: Float64Array,
  cloud_frac: Float64Array,
  random: RandomSource,
): Float64Array {
  const byDay = hourlyFromDays(dayState)
  const byHour = persistentSeries(random, byDay.length, HOUR_PERSISTENCE)
  const raw = byDay.map((day, h) => {
    const state = Math.sqrt(DAY_VARIANCE) * day + Math.sqrt(1 - DAY_VARIANCE) * byHour[h]!
    const afternoon = 0.5 + 0.5 * Math.cos((2 * Math.PI * (solarHour_h(site, h) - STRONGEST_H)) / 24)
    const lull = 1 - CLEAR_NIGHT_LULL * (1 - cloud_frac[h]!) * (1 - afternoon) ** 2
    return (NIGHT_frac + (1 - NIGHT_frac) * afternoon) * lull * Math.sqrt(-Math.log(exceedance(state)))
  })
  const means = monthMeans(raw)
  return raw.map((value, h) => {
    const k = monthOfDay(Math.floor(h / 24))
    return (value * months.wind_ms[k]!) / means[k]!
  })
}
