import type { WeatherRecord } from '#model/weather/record.ts'

/** Beginning of each hour in local standard time, `YYYY-MM-DDTHH:MM`. */
export function stampsOf(weather: WeatherRecord): string[] {
  const start_ms = weather.start_utcMs + weather.site.utcOffset_h * 3_600_000
  return Array.from({ length: weather.hours }, (_, h) =>
    new Date(start_ms + h * 3_600_000).toISOString().slice(0, 16),
  )
}
