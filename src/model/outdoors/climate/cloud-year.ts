import { hourlyFromDays } from '#model/basis/hours'
import { solarHour_h } from './day-shape.ts'
import { holdMonths } from './hold-months.ts'
import type { InventedPlace } from './place.ts'
import { persistentSeries, type RandomSource } from '#model/basis/numbers'

/** Share of the cloud state's variance that belongs to the day, the rest to the hour; hourly lag-1 correlation. */
const DAY_VARIANCE = 0.7
const HOUR_PERSISTENCE = 0.85

/**
 * Hourly cloud, 0…1: the logistic of a persistent normal state, so mostly clear or mostly overcast where the
 * contrast is high (a logit-normal share is bimodal from a spread of about 1.4). Held to the month means.
 */
export function cloudYear(place: InventedPlace, dayState: Float64Array, random: RandomSource): Float64Array {
  const byDay = hourlyFromDays(dayState)
  const byHour = persistentSeries(random, byDay.length, HOUR_PERSISTENCE)
  const state = byDay.map((day, hour) => {
    const phase = (2 * Math.PI * (solarHour_h(place.site, hour) - place.cloudPeak_h)) / 24
    const spread = Math.sqrt(DAY_VARIANCE) * day + Math.sqrt(1 - DAY_VARIANCE) * byHour[hour]!
    return place.cloudContrast * spread + place.cloudSwing * Math.cos(phase)
  })
  const build = (shift: Float64Array) => state.map((value, hour) => 1 / (1 + Math.exp(-value - shift[hour]!)))
  return holdMonths(place.cloud_frac, build, 5, 40)
}
