import type { SunHours } from '#model/sun/hours.ts'
import type { WeatherRecord } from '#model/weather/record.ts'

/** How the modelled longwave did against the measured one over some hours: model − measured, W/m². */
export interface SkyErrors {
  readonly hours: number
  readonly bias_Wm2: number
  readonly rmse_Wm2: number
}

/** Cloud cover below which an hour counts as clear, 0…1. */
const CLEAR_frac = 0.1

/** Errors over all hours, clear hours, days and nights; hours without a measured value are left out. */
export function skyErrors(
  weather: WeatherRecord,
  sun: SunHours,
  model_Wm2: Float64Array,
  measured_Wm2: Float64Array,
): Readonly<Record<'all' | 'day' | 'night' | 'clear day' | 'clear night', SkyErrors>> {
  const over = (counts: (h: number) => boolean): SkyErrors => {
    let hours = 0
    let sum = 0
    let squares = 0
    for (let h = 0; h < weather.hours; h++) {
      const error = model_Wm2[h]! - measured_Wm2[h]!
      if (Number.isNaN(error) || !counts(h)) continue
      hours++
      sum += error
      squares += error * error
    }
    return { hours, bias_Wm2: sum / hours, rmse_Wm2: Math.sqrt(squares / hours) }
  }
  const up = (h: number): boolean => sun.altitude_deg[h]! > 0
  const clear = (h: number): boolean => weather.cloud_frac[h]! < CLEAR_frac
  return {
    all: over(() => true),
    day: over(up),
    night: over((h) => !up(h)),
    'clear day': over((h) => up(h) && clear(h)),
    'clear night': over((h) => !up(h) && clear(h)),
  }
}
