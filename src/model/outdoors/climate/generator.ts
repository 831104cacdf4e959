import { YEAR_HOURS } from '#model/basis/hours'
import { cloudYear } from './cloud-year.ts'
import type { InventedPlace } from './place.ts'
import { pressureYear } from './pressure-year.ts'
import { seededRandom, type RandomSource } from '#model/basis/numbers'
import { sampleStart_utcMs } from './sample-format.ts'
import { drawDayStates } from './spells.ts'
import { irradianceYear } from './irradiance-year.ts'
import { temperatureYear } from './temperature-year.ts'
import { windYear } from './wind-year.ts'
import { WEATHER_COLUMNS, type WeatherRecord } from '#model/outdoors/weather'

/**
 * Invents one year of hourly weather for a place. The same place and the same random source give the same year.
 *
 * One persistent state of cloud drives sunlight, daily range, wind lulls and (through `cloud_frac`) the sky's
 * longwave, so that they agree; there is no longwave column because the sky model must work it out.
 * @param place  targets and spreads of the invented place
 * @param random source of uniform numbers; by default seeded with the place's own seed
 * @returns      8760 h that begin at local midnight on 1 January; radiation at the middle of each hour
 */
export function inventClimate(
  place: InventedPlace,
  random: RandomSource = seededRandom(place.seed),
): WeatherRecord {
  const { site } = place
  const start_utcMs = sampleStart_utcMs(site.utcOffset_h)
  const days = drawDayStates(place, random)
  const cloud_frac = cloudYear(place, days.cloud, random)
  const moist = temperatureYear(place, days, cloud_frac, random)
  return {
    site,
    start_utcMs,
    hours: YEAR_HOURS,
    radiationMiddle_h: 0.5,
    ...moist,
    pressure_Pa: pressureYear(place, days.pressure),
    wind_ms: windYear(place, days.wind, cloud_frac, random),
    ...irradianceYear(site, start_utcMs, place.turbidity, cloud_frac),
    cloud_frac,
    origins: Object.fromEntries(
      WEATHER_COLUMNS.map((name) => [name, { kind: 'read', note: 'Invented.', filledHours: 0 }]),
    ),
    basis: `Invented sample climate: ${place.description} No such place was measured.`,
  }
}
