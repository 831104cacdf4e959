import { dayMeans, seasonal, YEAR_DAYS } from '#model/basis/hours'
import { median, seededRandom, type RandomSource } from '#model/basis/numbers'
import { placeDays, type DayShape, type PlaceDays } from './day-states.ts'
import type { MonthTargets } from './months.ts'

/** Draws among which a place's own year is the middle one, and what sets their seeds apart. */
const DRAWS = 15
const NEXT_SEED = 1000
const HOT_DAYS = 3
const DAMP_DAYS = 5

/** Days of a year, and the source of chance as they leave it. */
export interface DrawnDays {
  readonly days: PlaceDays
  readonly random: RandomSource
}

/** Days as chance has them. */
export function plainDays(shape: DayShape, seed: number, airSpread_frac: number): DrawnDays {
  const random = seededRandom(seed)
  return { days: placeDays(shape, random, airSpread_frac), random }
}

/**
 * Days whose hottest three in a row, and whose five hottest and dampest, are nearest to the middle of fifteen draws: a year that is
 * ordinary in what sizes a panel. The same idea as the typical month of Hall et al. 1978 (Sandia SAND78-1601).
 */
export function typicalDays(
  months: MonthTargets,
  shape: DayShape,
  seed: number,
  airSpread_frac: number,
): DrawnDays {
  const air_C = dayMeans(seasonal(months.airTemp_C))
  const dew_C = dayMeans(seasonal(months.dewPoint_C))
  const draws = Array.from({ length: DRAWS }, (_, k) => {
    const drawn = plainDays(shape, seed + k * NEXT_SEED, airSpread_frac)
    const { days } = drawn
    const hot = air_C.map((mean, day) => mean + days.air_K[day]!)
    const damp = hot.map((hot_C, day) => 0.5 * (hot_C + dew_C[day]! + days.dew_K[day]!))
    return { drawn, hot_C: spell(hot, HOT_DAYS), damp_C: spell(damp, DAMP_DAYS) }
  })
  const [hot_C, damp_C] = [median(draws.map((one) => one.hot_C)), median(draws.map((one) => one.damp_C))]
  const off = (one: (typeof draws)[number]): number => Math.hypot(one.hot_C - hot_C, one.damp_C - damp_C)
  return draws.reduce((best, one) => (off(one) < off(best) ? one : best)).drawn
}

/** Highest mean of so many days in a row. */
function spell(values: Float64Array, days: number): number {
  let sum = 0
  let highest = -Infinity
  for (let day = 0; day < YEAR_DAYS; day++) {
    sum += values[day]! - (day >= days ? values[day - days]! : 0)
    if (day >= days - 1) highest = Math.max(highest, sum / days)
  }
  return highest
}
