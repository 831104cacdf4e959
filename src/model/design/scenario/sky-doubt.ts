import type { WeatherRecord } from '#model/outdoors/weather'

/** Kinds of climate in which nights of measured longwave were at hand. */
export type SkyClimate = 'cold' | 'dry summer' | 'humid'

/**
 * Root of the mean square of the modelled less the measured sky over the mean of five nights, a place's bias with it, as a share of
 * what the sky lacks to black (–). Five nights are the hot spell that decides a size. Places with measured longwave, rule, clear
 * hours and formula as shipped (`npm run -s evidence -- sky`): humid hills 9.0 of 39 W/m² (146 nights), Mediterranean 8.9 of 55
 * (362), alpine valley 14.6 of 44 (240). A ship and a forest (9 and 29 nights) gave less and are too short to count.
 */
export const SKY_DOUBT: Readonly<Record<SkyClimate, number>> = {
  cold: 0.33,
  'dry summer': 0.16,
  humid: 0.23,
}

/** A warmest month under this mean is that of the alpine station, °C; air this far over its dew point is dry, K (common practice, no source). */
const COLD_C = 15
const DRY_K = 7
const MONTH_H = 730

/** The weather that tells the kind of climate; a record without hours is taken as humid. */
export type SkyDoubtWeather = Partial<Pick<WeatherRecord, 'airTemp_C' | 'dewPoint_C'>>

/** The kind of climate of a record, by its warmest twelfth. */
export function skyClimate({ airTemp_C, dewPoint_C }: SkyDoubtWeather): SkyClimate {
  if (airTemp_C === undefined || dewPoint_C === undefined || airTemp_C.length === 0) return 'humid'
  let warmest = { mean_C: -Infinity, dry_K: 0 }
  for (let from = 0; from < airTemp_C.length; from += MONTH_H) {
    const air = airTemp_C.subarray(from, from + MONTH_H)
    const mean_C = meanOf(air)
    const dry_K = mean_C - meanOf(dewPoint_C.subarray(from, from + MONTH_H))
    if (mean_C > warmest.mean_C) warmest = { mean_C, dry_K }
  }
  if (warmest.mean_C < COLD_C) return 'cold'
  return warmest.dry_K >= DRY_K ? 'dry summer' : 'humid'
}

const meanOf = (values: Float64Array) => values.reduce((sum, value) => sum + value, 0) / values.length

/** Ends of an even draw of that standard deviation, as factors on what the sky lacks to black, –. */
export function skyDoubtTimes(weather: SkyDoubtWeather): readonly [number, number] {
  const half = Math.sqrt(3) * SKY_DOUBT[skyClimate(weather)]
  return [1 - half, 1 + half]
}
