import { outdoorDays, type Days } from './days.ts'
import type { WeatherRecord } from './record.ts'

/** Weight of each day in the next: EN 16798-1 takes 0.8; ASHRAE 55 allows 0.6–0.9. */
const MEMORY = 0.8

/** How the days before are weighed: the endless sum, or EN 16798-1's rounded seven days. */
export type RunningMeanForm = 'exponential' | 'sevenDay'

/**
 * Running mean outdoor temperature, °C per hour (one value a day), from the daily means of the days *before*. Exponential:
 * (1 − α)(T₋₁ + α T₋₂ + …), α = 0.8. A whole year closes on itself; a shorter record starts from its first day's mean.
 */
export function runningMeanOutdoor_C(
  weather: WeatherRecord,
  form: RunningMeanForm = 'exponential',
): Float64Array {
  const days = outdoorDays(weather)
  const daily_C = form === 'sevenDay' ? sevenDayMeans_C(days) : exponentialMeans_C(days)
  return new Float64Array(weather.hours).map((_, h) => daily_C[days.dayOfHour[h]!]!)
}

/** Days run before the first one, so that where the sum starts no longer shows (0.8⁶⁰ < 2e-6). */
const RUN_IN_days = 60

function exponentialMeans_C(days: Days): Float64Array {
  const count = days.mean_C.length
  const means = new Float64Array(count)
  let mean_C = days.mean_C[0] ?? 0
  for (let day = days.cyclic ? -RUN_IN_days : 0; day < count; day++) {
    if (day >= 0) means[day] = mean_C
    mean_C = MEMORY * mean_C + (1 - MEMORY) * dayMean_C(days, day)
  }
  return means
}

const SEVEN_DAY_WEIGHTS = [1, 0.8, 0.6, 0.5, 0.4, 0.3, 0.2] as const

function sevenDayMeans_C(days: Days): Float64Array {
  return days.mean_C.map(
    (_, day) =>
      SEVEN_DAY_WEIGHTS.reduce((sum, weight, back) => sum + weight * dayMean_C(days, day - 1 - back), 0) /
      3.8,
  )
}

/** Mean of a day that may lie before the record: the other end of a whole year, or the first day again. */
function dayMean_C(days: Days, day: number): number {
  const count = days.mean_C.length
  return days.mean_C[day >= 0 ? day : days.cyclic ? (day + count) % count : 0]!
}
