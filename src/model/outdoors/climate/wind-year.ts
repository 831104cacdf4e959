import { hourlyFromDays, monthMeans, monthOfDay } from '#model/basis/hours'
import { solarHour_h } from './day-shape.ts'
import type { InventedPlace } from './place.ts'
import { persistentSeries, type RandomSource } from '#model/basis/numbers'
import type { Site } from '#model/outdoors/weather'

/** How the wind of a place behaves within its months. */
export interface WindHabits {
  /** Share of the variance of its state that whole days have, 0…1. */
  readonly dayVariance_frac: number
  /** Night's share of the afternoon's wind. */
  readonly night_frac: number
  /** Share that a wholly clear night takes away: cold air settles and lets go of the wind above. */
  readonly clearNightLull_frac: number
}

const HOUR_PERSISTENCE = 0.8
/** Solar hour of the strongest wind. */
const STRONGEST_H = 15

/** Hourly wind of an invented place at 10 m, m/s. */
export function windYear(
  place: InventedPlace,
  dayState: Float64Array,
  cloud_frac: Float64Array,
  random: RandomSource,
): Float64Array {
  const habits = { dayVariance_frac: 0.55, night_frac: place.nightWind_frac, clearNightLull_frac: 0.4 }
  return windHours(place.site, place.wind_ms, habits, dayState, cloud_frac, random)
}

/**
 * Hourly wind at 10 m, m/s: a Weibull spread with shape 2 (the usual one, common practice, no source) drawn from
 * a persistent normal state, stronger in the afternoon, weaker on clear nights; held to the month means.
 * @param wind_ms  twelve month means, m/s
 */
export function windHours(
  site: Site,
  wind_ms: readonly number[],
  { dayVariance_frac, night_frac, clearNightLull_frac }: WindHabits,
  dayState: Float64Array,
  cloud_frac: Float64Array,
  random: RandomSource,
): Float64Array {
  const byDay = hourlyFromDays(dayState)
  const byHour = persistentSeries(random, byDay.length, HOUR_PERSISTENCE)
  const raw = byDay.map((day, hour) => {
    const state = Math.sqrt(dayVariance_frac) * day + Math.sqrt(1 - dayVariance_frac) * byHour[hour]!
    const afternoon = 0.5 + 0.5 * Math.cos((2 * Math.PI * (solarHour_h(site, hour) - STRONGEST_H)) / 24)
    const course = night_frac + (1 - night_frac) * afternoon
    const lull = 1 - clearNightLull_frac * (1 - cloud_frac[hour]!) * (1 - afternoon) ** 2
    return course * lull * Math.sqrt(-Math.log(exceedance(state)))
  })
  const means = monthMeans(raw)
  return raw.map((value, hour) => {
    const month = monthOfDay(Math.floor(hour / 24))
    return (value * wind_ms[month]!) / means[month]!
  })
}

/**
 * Share of a standard normal above x, by the logistic approximation 1/(1 + exp(1.5976x + 0.07056x³)), good to
 * 2e-4 (Page 1977, Applied Statistics 26, 75–76; from memory, tested against the error function's table).
 */
export function exceedance(x: number): number {
  return 1 / (1 + Math.exp(1.5976 * x + 0.07056 * x * x * x))
}
