import { YEAR_HOURS } from '#model/basis/hours'

/**
 * The hourly weather record: what every later stage reads. A struct of equal-length columns, one entry an
 * hour, contiguous in time, in local standard time.
 */

/** Where the weather was measured (or invented). */
export interface Site {
  readonly name: string
  /** North positive, degrees, −90…90. */
  readonly latitude_deg: number
  /** East positive, degrees, −180…180. */
  readonly longitude_deg: number
  readonly altitude_m: number
  /** Local standard time minus UTC, hours (fixed; no daylight saving). */
  readonly utcOffset_h: number
}

/** The columns of the record that are always there. */
export const WEATHER_COLUMNS = [
  'airTemp_C',
  'dewPoint_C',
  'pressure_Pa',
  'wind_ms',
  'globalHorizontal_Wm2',
  'directNormal_Wm2',
  'diffuseHorizontal_Wm2',
  'cloud_frac',
] as const
export type WeatherColumn = (typeof WEATHER_COLUMNS)[number]

/** How a column came to be: read, worked out from others, or part filled; `note` is a sentence for people. */
export interface ColumnOrigin {
  readonly kind: 'read' | 'derived'
  /** e.g. the header it was read from, or the formula with its source. */
  readonly note: string
  /** Hours filled (interpolated or copied from neighbouring days). */
  readonly filledHours: number
}

/**
 * Hourly weather. Index i covers the hour that begins i hours after `start_utcMs`; a typical year starts at
 * local standard midnight on 1 January and has 8760 entries (8784 is accepted for a real leap year); logger
 * records and station days may be any length.
 */
export interface WeatherRecord {
  readonly site: Site
  /** Epoch milliseconds (UTC) of the beginning of hour 0. For a typical year the year is nominal. */
  readonly start_utcMs: number
  readonly hours: number
  /**
   * Hours from the beginning of index i to the middle of the period its irradiance covers: 0.5 for
   * hour means (ending or beginning stamps both become this), 0 for instantaneous at the stamp, or as the
   * data set says. The sun is evaluated there.
   */
  readonly radiationMiddle_h: number
  /** Dry-bulb air temperature, °C. */
  readonly airTemp_C: Float64Array
  /** Dew point over water, °C; never above the dry bulb. */
  readonly dewPoint_C: Float64Array
  readonly pressure_Pa: Float64Array
  /** Wind speed at 10 m in open country, m/s. */
  readonly wind_ms: Float64Array
  readonly globalHorizontal_Wm2: Float64Array
  readonly directNormal_Wm2: Float64Array
  readonly diffuseHorizontal_Wm2: Float64Array
  /** Opaque cloud, 0…1, carried across the night. */
  readonly cloud_frac: Float64Array
  /** Measured (or reanalysis) downwelling longwave, W/m²; absent when the file has none. NaN hours fall back to the model. */
  readonly skyLongwave_Wm2?: Float64Array
  readonly origins: Readonly<Partial<Record<WeatherColumn | 'skyLongwave_Wm2', ColumnOrigin>>>
  /** One sentence: data set, years, whether invented. */
  readonly basis: string
  /** Present where no hour was measured, but the year was made from a place's monthly climate. */
  readonly madeFrom?: 'months'
  /** Standard errors of such a year, K: of its month means in any one year, and of its hottest spells over them. */
  readonly madeErrors?: { readonly months_K: number; readonly hotSpell_K: number }
}

/** True when the record is a whole year (8760 h, or 8784 h for a leap year) and so can be simulated as one. */
export function isWholeYear(record: WeatherRecord): boolean {
  return record.hours === YEAR_HOURS || record.hours === YEAR_HOURS + 24
}
