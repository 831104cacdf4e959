import { dewPoint_C, saturationPressure_Pa } from '#model/outdoors/air'
import type { NearbyClimate } from './nearest.ts'
import { within } from './within.ts'

/** What a year is made from: twelve values each, January first. */
export interface PlaceMonths {
  /** Mean of all hours. */
  readonly airTemp_C: readonly number[]
  /** Hottest less coldest hour of a day, mean of the days. */
  readonly dailyRange_K: readonly number[]
  /** Relative humidity, mean of all hours, 0…1. */
  readonly humidity_frac: readonly number[]
  /** Share of the possible sunshine, 0…1. */
  readonly sunshine_frac: readonly number[]
  /** At 10 m. */
  readonly wind_ms: readonly number[]
}

/** Climate tables take a day's true extremes and open, exposed masts; hourly files less: by 190 station years. */
const HOURLY_RANGE_frac = 0.9
const HOURLY_WIND_frac = 0.85

/**
 * Warming over land since 1961–1990 by latitude, K: from memory of global land records (about 1.1 K), less in the tropics and
 * more towards the poles.
 */
export function usualWarming_K(latitude_deg: number): number {
  const from_deg = Math.abs(latitude_deg)
  if (from_deg < 15) return 0.7
  return from_deg < 45 ? 1 : 1.3
}

/** The monthly climate of 1961–1990 as hourly files have it, warmed; relative humidity is kept. */
export function placeMonths({ months }: NearbyClimate, warming_K: number): PlaceMonths {
  return {
    airTemp_C: months.airTemp_C.map((air_C) => air_C + warming_K),
    dailyRange_K: months.dailyRange_K.map((range_K) => range_K * HOURLY_RANGE_frac),
    humidity_frac: months.humidity_pct.map((value) => within(value / 100, 0.05, 1)),
    sunshine_frac: months.sunshine_pct.map((value) => within(value / 100, 0, 1)),
    wind_ms: months.wind_ms.map((wind_ms) => Math.max(0.3, wind_ms * HOURLY_WIND_frac)),
  }
}

/** All of a month as the year is built to hold it. */
export interface MonthTargets extends Omit<PlaceMonths, 'humidity_frac' | 'sunshine_frac'> {
  readonly dewPoint_C: readonly number[]
  /** Opaque cloud, 0…1. */
  readonly cloud_frac: readonly number[]
  /** Sunshine on the ground over that of a clear sky, 0…1. */
  readonly clearIndex_frac: readonly number[]
}

/**
 * Dew point, opaque cloud and clear-sky index of the months.
 *   T_d = dew(RH e_s(T)) − 1.05 − 0.0794 R + 1.80 RH,   n = 1.041 − 0.923 s,   K_c = 0.361 + 0.597 s
 * The mean of relative humidity says too much of the mean vapour of a swinging day; the straight lines have the form of
 * Ångström 1924. Coefficients: regression on 190 station years (place method of this project), residual 0.3 K, 0.11, 0.07.
 */
export function monthTargets(months: PlaceMonths): MonthTargets {
  const { airTemp_C, dailyRange_K, humidity_frac, sunshine_frac, wind_ms } = months
  return {
    airTemp_C,
    dailyRange_K,
    wind_ms,
    dewPoint_C: airTemp_C.map((air_C, k) => {
      const humid = humidity_frac[k]!
      const asMean_C = dewPoint_C(humid * saturationPressure_Pa(air_C))
      return Math.min(air_C - 0.3, asMean_C - 1.05 - 0.0794 * dailyRange_K[k]! + 1.8 * humid)
    }),
    cloud_frac: sunshine_frac.map((share) => within(1.041 - 0.923 * share, 0.05, 0.95)),
    clearIndex_frac: sunshine_frac.map((share) => within(0.361 + 0.597 * share, 0.3, 1)),
  }
}

/** Months of a summer. */
export const SUMMER_MONTHS = 3

/** Numbers of the warmest months, 0 for January. */
export const warmestMonths = (airTemp_C: readonly number[]): number[] =>
  airTemp_C
    .map((air_C, k) => ({ air_C, k }))
    .toSorted((a, b) => b.air_C - a.air_C)
    .slice(0, SUMMER_MONTHS)
    .map(({ k }) => k)
