import { seasonal, YEAR_HOURS } from '#model/basis/hours'
import { seededRandom } from '#model/basis/numbers'
import { standardPressure_Pa } from '#model/outdoors/air'
import { sampleStart_utcMs, windHours } from '#model/outdoors/climate'
import { type Site, WEATHER_COLUMNS, type WeatherRecord } from '#model/outdoors/weather'
import { placeCloud, placeSun } from './cloud-and-sun.ts'
import { placeDays } from './day-states.ts'
import { placeMoistHours } from './moist-hours.ts'
import { monthTargets, type PlaceMonths } from './months.ts'
import { daySpreads } from './spreads.ts'

/** How a year is drawn; what is left out is usual. */
export interface PlaceYearChoices {
  /** 0 for the place's own year; 1, 2, … for other years of the same months. */
  readonly another: number
  /** Multiplies the day-to-day spread of the temperature; 1 as the months say. */
  readonly airSpread_frac: number
  /** Added to the three warmest months: 0, or the standard deviations of a hot summer times 1.28 for one in ten. */
  readonly hotSummer: boolean
  /** Sentence on where the months come from, for every output. */
  readonly basis: string
}

/** Whole days have less than half of the wind's variance in station files; clear nights are calm. */
const WIND = { dayVariance_frac: 0.45, night_frac: 0.7, clearNightLull_frac: 0.35 }

/** One summer in ten is warmer than this many standard deviations of summer means. */
const ONE_IN_TEN = 1.28
/**
 * Standard deviation of a summer's mean over that of its days (0.23 by the days' persistence alone; the rest from memory of
 * records of summer means), and the dew point's share.
 */
const SUMMER_frac = 0.35
const DEW_SHARE = 0.7
const SUMMER_MONTHS = 3

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
  const drawn = drawnYear(site, given, choices.another, choices.airSpread_frac)
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

/** Air and cloud of a year, and what is drawn after them. */
function drawnYear(site: Site, given: PlaceMonths, another: number, airSpread_frac: number) {
  const months = monthTargets(given)
  const spreads = daySpreads(months, site.latitude_deg)
  const random = seededRandom(placeSeed(site) + another)
  const days = placeDays(months, spreads, random, airSpread_frac)
  const cloud_frac = placeCloud(months, days.cloud, random)
  const moist = placeMoistHours(site, months, spreads, days, cloud_frac, random)
  return { months, spreads, days, cloud_frac, moist, random }
}

/** The hottest hour of one year of a place, °C. */
export function hottestHour_C(
  site: Site,
  given: PlaceMonths,
  another: number,
  airSpread_frac: number,
): number {
  const { airTemp_C } = drawnYear(site, given, another, airSpread_frac).moist
  return airTemp_C.reduce((hottest, air_C) => Math.max(hottest, air_C), -Infinity)
}

/** What a hot summer adds to each month, K: the three warmest, the others nothing. */
function hotSummer_K(airTemp_C: readonly number[], spread_K: readonly number[]): number[] {
  const warmest = airTemp_C
    .map((air_C, k) => ({ air_C, k }))
    .toSorted((a, b) => b.air_C - a.air_C)
    .slice(0, SUMMER_MONTHS)
    .map(({ k }) => k)
  return airTemp_C.map((_, k) => (warmest.includes(k) ? ONE_IN_TEN * SUMMER_frac * spread_K[k]! : 0))
}
