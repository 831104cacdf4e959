import { hourlyFromDays, monthMeans, monthOfDay } from '#model/basis/hours'
import { solarHour_h } from './day-shape.ts'
import type { InventedPlace } from './place.ts'
import { persistentSeries, type RandomSource } from '#model/basis/numbers'

const DAY_VARIANCE = 0.55
const HOUR_PERSISTENCE = 0.8
/** Share of the wind that a wholly clear night takes away: cold air settles and lets go of the wind above. */
const CLEAR_NIGHT_LULL = 0.4

/**
 * Hourly wind at 10 m, m/s: a Weibull spread with shape 2 (the usual one, common practice, no source) drawn from
 * a persistent normal state, stronger in the afternoon, weaker on clear nights; held to the month means.
 */
export function windYear(
  place: InventedPlace,
  dayState: Float64Array,
  cloud_frac: Float64Array,
  random: RandomSource,
): Float64Array {
  const byDay = hourlyFromDays(dayState)
  const byHour = persistentSeries(random, byDay.length, HOUR_PERSISTENCE)
  const raw = byDay.map((day, hour) => {
    const state = Math.sqrt(DAY_VARIANCE) * day + Math.sqrt(1 - DAY_VARIANCE) * byHour[hour]!
    const afternoon = 0.5 + 0.5 * Math.cos((2 * Math.PI * (solarHour_h(place.site, hour) - 15)) / 24)
    const course = place.nightWind_frac + (1 - place.nightWind_frac) * afternoon
    const lull = 1 - CLEAR_NIGHT_LULL * (1 - cloud_frac[hour]!) * (1 - afternoon) ** 2
    return course * lull * Math.sqrt(-Math.log(exceedance(state)))
  })
  const means = monthMeans(raw)
  return raw.map((value, hour) => {
    const month = monthOfDay(Math.floor(hour / 24))
    return (value * place.wind_ms[month]!) / means[month]!
  })
}

/**
 * Share of a standard normal above x, by the logistic approximation 1/(1 + exp(1.5976x + 0.07056x³)), good to
 * 2e-4 (Page 1977, Applied Statistics 26, 75–76; from memory, tested against the error function's table).
 */
export function exceedance(x: number): number {
  return 1 / (1 + Math.exp(1.5976 * x + 0.07056 * x * x * x))
}
