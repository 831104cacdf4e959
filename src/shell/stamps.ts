import { HOUR_MS } from '#model/basis/hours'
import type { WeatherRecord } from '#model/outdoors/weather'

/** Beginning of one hour in local standard time, `YYYY-MM-DDTHH:MM`. */
export function stampOfHour(
  { start_utcMs, site }: Pick<WeatherRecord, 'start_utcMs' | 'site'>,
  hour: number,
): string {
  return new Date(start_utcMs + (site.utcOffset_h + hour) * HOUR_MS).toISOString().slice(0, 16)
}

/** The same of every hour of a record. */
export function stampsOf(weather: WeatherRecord): string[] {
  return Array.from({ length: weather.hours }, (_, hour) => stampOfHour(weather, hour))
}
