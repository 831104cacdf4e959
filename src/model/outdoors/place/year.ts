import { seasonal, YEAR_HOURS } from '#model/basis/hours'
import { standardPressure_Pa } from '#model/outdoors/air'
import { sampleStart_utcMs, windHours } from '#model/outdoors/climate'
import { type Site, WEATHER_COLUMNS, type WeatherRecord } from '#model/outdoors/weather'
import { placeCloud, placeSun } from './cloud-and-sun.ts'
import { dayShape } from './day-states.ts'
import { SUMMER_frac } from './errors.ts'
import { placeMoistHours } from './moist-hours.ts'
import { monthTargets, warmestMonths, type PlaceMonths } from './months.ts'
import { daySpreads } from './spreads.ts'
import { plainDays, typicalDays } from './typical.ts'

/** How a year is drawn; what is left out is usual. */
export interface PlaceYearChoices {
  /** 0 for the place's own year, an ordinary one; 1, 2, … for other years of the same months, as chance has them. */
  readonly another: number
  /** Multiplies the day-to-day spread of the temperature; 1 as the months say. */
  readonly airSpread_frac: number
  /** Added to the three warmest months: 0, or the standard deviations of a hot summer times 1.28 for one in ten. */
  readonly hotSummer: boolean
  /** Change of the mean temperature along the ground about the place, K/km, twelve months; null: not known. */
  readonly airGradient_Kkm: readonly number[] | null
  /** Sentence on where the months come from, for every output. */
  readonly basis: string
}

/** Whole days have less than half of the wind's variance in station files; clear nights are calm. */
const WIND = { dayVariance_frac: 0.45, night_frac: 0.7, clearNightLull_frac: 0.35 }

/** One summer in ten is warmer than this many standard deviations of summer means. */
const ONE_IN_TEN = 1.28
/** The dew point's share of a hot summer. */
const DEW_SHARE = 0.7

/** Seed of a place's own year: the same for all who ask, to 0.01°. */
export function placeSeed({
  latitude_deg,
  longitude_deg,
}: Pick<Site, 'latitude_deg' | 'longitude_deg'>): number {
  return (
    Math.imul(Math.round((latitude_deg + 90) * 100) + 1, 40_503) ^ Math.round((longitude_deg + 180) * 100)
  )
}

/**
 * An hourly year from twelve monthly values; the same months and choices give the same bytes. Air, dew point, daily range,
 * cloud, sun and wind of every month are held; cloud drives sun, range, calm and night sky alike. Method: the place method of
 * this project, after Richardson 1981.
 * @returns 8760 h from local midnight on 1 January; radiation at the middle of each hour
 */
export function placeYear(site: Site, given: PlaceMonths, choices: PlaceYearChoices): WeatherRecord {
  const drawn = drawnYear(site, given, choices)
  const { months, spreads, days, cloud_frac, moist, random } = drawn
  const start_utcMs = sampleStart_utcMs(site.utcOffset_h)
  const summer_K = choices.hotSummer ? seasonal(hotSummer_K(months.airTemp_C, spreads.air_K)) : null
  const airTemp_C = summer_K === null ? moist.airTemp_C : moist.airTemp_C.map((t, h) => t + summer_K[h]!)
  const dewPoint_C =
    summer_K === null
      ? moist.dewPoint_C
      : moist.dewPoint_C.map((dew, h) => Math.min(dew + DEW_SHARE * summer_K[h]!, airTemp_C[h]!))
  return {
    site,
    start_utcMs,
    hours: YEAR_HOURS,
    radiationMiddle_h: 0.5,
    airTemp_C,
    dewPoint_C,
    pressure_Pa: new Float64Array(YEAR_HOURS).fill(standardPressure_Pa(site.altitude_m)),
    wind_ms: windHours(site, months.wind_ms, WIND, days.wind, cloud_frac, random),
    ...placeSun(site, start_utcMs, months, cloud_frac),
    cloud_frac,
    // Cloud is written as read: worked out from sunshine it would count half the humid nights as clear.
    origins: Object.fromEntries(
      WEATHER_COLUMNS.map((name) => [name, { kind: 'read', note: choices.basis, filledHours: 0 }]),
    ),
    basis: choices.basis,
  }
}

/** What the air and the cloud of a year depend on. */
export type Drawn = Pick<PlaceYearChoices, 'another' | 'airSpread_frac' | 'airGradient_Kkm'>

/** Air and cloud of a year, and what is drawn after them. */
function drawnYear(site: Site, given: PlaceMonths, { another, airSpread_frac, airGradient_Kkm }: Drawn) {
  const months = monthTargets(given)
  const spreads = daySpreads(months, site, airGradient_Kkm)
  const seed = placeSeed(site)
  const shape = dayShape(months, spreads)
  const { days, random } =
    another === 0
      ? typicalDays(months, shape, seed, airSpread_frac)
      : plainDays(shape, seed + another, airSpread_frac)
  const cloud_frac = placeCloud(site, months, days.cloud, random)
  const moist = placeMoistHours(site, months, spreads, days, cloud_frac, random)
  return { months, spreads, days, cloud_frac, moist, random }
}

/** The hottest hour of one year of a place, °C. */
export function hottestHour_C(site: Site, given: PlaceMonths, choices: Drawn): number {
  const { airTemp_C } = drawnYear(site, given, choices).moist
  return airTemp_C.reduce((hottest, air_C) => Math.max(hottest, air_C), -Infinity)
}

/** What a hot summer adds to each month, K: the three warmest, the others nothing. */
function hotSummer_K(airTemp_C: readonly number[], spread_K: readonly number[]): number[] {
  const warmest = warmestMonths(airTemp_C)
  return airTemp_C.map((_, k) => (warmest.includes(k) ? ONE_IN_TEN * SUMMER_frac * spread_K[k]! : 0))
}
