import { localHour } from '#model/basis/hours'
import { isWholeYear, type WeatherRecord } from './record.ts'

/** The record cut at local midnight. The first and last day may be short. */
export interface Days {
  /** Day (0-based) of each hour. */
  readonly dayOfHour: Uint32Array
  /** Mean outdoor temperature of each day, °C. */
  readonly mean_C: Float64Array
  /** Whether the days close into a circle: the day before the first is the last. */
  readonly cyclic: boolean
}

export function outdoorDays(weather: WeatherRecord): Days {
  const first_h = localHour(weather, 0)
  const dayOfHour = new Uint32Array(weather.hours).map((_, h) => Math.floor((first_h + h + 0.5) / 24))
  const days = weather.hours === 0 ? 0 : dayOfHour[weather.hours - 1]! + 1
  const sum = new Float64Array(days)
  const count = new Float64Array(days)
  for (let h = 0; h < weather.hours; h++) {
    sum[dayOfHour[h]!]! += weather.airTemp_C[h]!
    count[dayOfHour[h]!]! += 1
  }
  return { dayOfHour, mean_C: sum.map((total, day) => total / count[day]!), cyclic: isWholeYear(weather) }
}
