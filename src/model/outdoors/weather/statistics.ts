import { dayMeans, dayRanges, monthMeans } from '#model/basis/hours'
import { YEAR_HOURS } from '#model/basis/hours'
import type { WeatherRecord } from './record.ts'

/** Means of one month of a typical year. */
export interface MonthClimate {
  /** 1…12. */
  readonly month: number
  readonly airTempMean_C: number
  /** Mean over the days of daily maximum − minimum, K. */
  readonly dailyRange_K: number
  readonly dewPointMean_C: number
  readonly cloudMean_frac: number
  readonly windMean_ms: number
  /** Mean daily global radiation on a horizontal plane, kWh/m². */
  readonly irradiation_kWhm2: number
}

/** A year in a line: what the index of samples and the comparison show. */
export interface ClimateSummary {
  readonly months: readonly MonthClimate[]
  readonly annualMean_C: number
  /** Mean of the three warmest and of the three coldest months in a row, °C. */
  readonly summerMean_C: number
  readonly winterMean_C: number
  readonly hottestHour_C: number
  readonly coldestHour_C: number
  /** Lag-1 correlation of daily mean temperature about a 31-day running mean. */
  readonly persistence_frac: number
}

/**
 * Month means and a year in a line.
 * @throws RangeError when the record is not a year of 8760 h (drop the leap day first)
 */
export function summariseClimate(record: WeatherRecord): ClimateSummary {
  if (record.hours !== YEAR_HOURS) {
    throw new RangeError(`summariseClimate: hours is ${record.hours}, must be ${YEAR_HOURS}`)
  }
  const air = monthMeans(record.airTemp_C)
  const range = monthMeans(dayRanges(record.airTemp_C))
  const dew = monthMeans(record.dewPoint_C)
  const cloud = monthMeans(record.cloud_frac)
  const wind = monthMeans(record.wind_ms)
  const irradiance = monthMeans(record.globalHorizontal_Wm2)
  const seasons_C = Array.from(
    air,
    (mean, month) => (mean + air[(month + 1) % 12]! + air[(month + 2) % 12]!) / 3,
  )
  return {
    months: Array.from(air, (airTempMean_C, index) => ({
      month: index + 1,
      airTempMean_C,
      dailyRange_K: range[index]!,
      dewPointMean_C: dew[index]!,
      cloudMean_frac: cloud[index]!,
      windMean_ms: wind[index]!,
      irradiation_kWhm2: irradiance[index]! * 0.024,
    })),
    annualMean_C: record.airTemp_C.reduce((sum, value) => sum + value, 0) / YEAR_HOURS,
    summerMean_C: Math.max(...seasons_C),
    winterMean_C: Math.min(...seasons_C),
    hottestHour_C: Math.max(...record.airTemp_C),
    coldestHour_C: Math.min(...record.airTemp_C),
    persistence_frac: dayPersistence(record.airTemp_C),
  }
}

/** Lag-1 correlation of the daily means of an hourly year about their 31-day running mean. */
export function dayPersistence(series: Float64Array): number {
  const means = dayMeans(series)
  const days = means.length
  const departures = means.map((mean, day) => {
    let sum = 0
    for (let near = -15; near <= 15; near += 1) sum += means[(day + near + days) % days]!
    return mean - sum / 31
  })
  let together = 0
  let alone = 0
  for (let day = 0; day < days; day += 1) {
    together += departures[day]! * departures[(day + 1) % days]!
    alone += departures[day]! ** 2
  }
  return together / alone
}
