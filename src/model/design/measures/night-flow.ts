import type { WeatherRecord } from '#model/outdoors/weather'

/** Single-sided opening: wind and stack terms (EN 16798-7, from memory), and the difference counted with, K. */
const WIND_TERM = 0.001
const STACK_TERM = 0.0035
const COUNTED_K = 3

/**
 * Air through an opening on one side, m³/h.
 *   q = 500 · 3.6 · A √V,  V = max(0.001 u², 0.0035 h ΔT)
 * Source: EN 16798-7:2017, single-sided ventilation (from memory).
 */
export function openingFlow_m3h(
  area_m2: number,
  height_m: number,
  wind_ms: number,
  difference_K: number,
): number {
  const drive = Math.max(WIND_TERM * wind_ms * wind_ms, STACK_TERM * height_m * Math.abs(difference_K))
  return 500 * 3.6 * area_m2 * Math.sqrt(drive)
}

/** The same over a record, m³/h: mean over its hours' wind (10 m, halved at a sheltered wall), 3 K warmer inside. */
export function meanOpeningFlow_m3h(area_m2: number, height_m: number, weather: WeatherRecord): number {
  let sum = 0
  for (let h = 0; h < weather.hours; h++)
    sum += openingFlow_m3h(area_m2, height_m, 0.5 * weather.wind_ms[h]!, COUNTED_K)
  return sum / weather.hours
}
