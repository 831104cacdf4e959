import type { SunHours } from '#model/sun/hours.ts'
import type { WeatherRecord } from '#model/weather/record.ts'
import type { PlanSpec } from '#model/year/plan.ts'

/** 1 in the hours in which the running plan lets the loop run (clock, sun and season), else 0. */
export type PlanHours = Uint8Array

/** Below this geometric altitude the sun counts as down, degrees: refraction and the sun's radius (common practice, no source). */
const SUNSET_deg = -0.833

/** Weight of yesterday's running mean in today's, as in EN 16798-1's running mean outdoor temperature. */
const RUNNING_MEAN_WEIGHT = 0.8

/**
 * Hours in which the plan lets the loop run.
 * @param plan  running plan; `startHour_h`…`endHour_h` may pass midnight and are compared with the hour's middle
 * @returns one entry an hour, 1 = may run
 */
export function planHours(weather: WeatherRecord, sun: SunHours, plan: PlanSpec): PlanHours {
  const allowed = new Uint8Array(weather.hours)
  const runningMean_C = runningMeanOutdoor_C(weather)
  for (let h = 0; h < weather.hours; h++) {
    const season = (runningMean_C[h] ?? 0) >= plan.seasonGate_C
    allowed[h] = season && clockAllows(plan, localHour(weather, h) + 0.5, sun.altitude_deg[h] ?? 0) ? 1 : 0
  }
  return allowed
}

/** Local standard hour of the day (0…23, may be fractional for records that do not start on the hour) of hour `h`. */
export function localHour(weather: WeatherRecord, h: number): number {
  const start_h = weather.start_utcMs / 3_600_000 + weather.site.utcOffset_h
  return (((start_h + h) % 24) + 24) % 24
}

function clockAllows(plan: PlanSpec, hour_h: number, sunAltitude_deg: number): boolean {
  if (plan.kind === 'allDay') return true
  if (plan.kind === 'nightOnly') return sunAltitude_deg < SUNSET_deg
  const { startHour_h: from, endHour_h: to } = plan
  return from <= to ? hour_h >= from && hour_h < to : hour_h >= from || hour_h < to
}

/**
 * Running mean outdoor temperature, °C, one value an hour (constant over each 24 h of the record): the mean of
 * the days before, each weighing 0.8 of the one after it (EN 16798-1:2019, B.2). A whole year wraps around.
 */
export function runningMeanOutdoor_C(weather: WeatherRecord): Float64Array {
  const days = Math.ceil(weather.hours / 24)
  const daily_C = new Float64Array(days)
  for (let d = 0; d < days; d++) {
    const end = Math.min(weather.hours, (d + 1) * 24)
    let sum = 0
    for (let h = d * 24; h < end; h++) sum += weather.airTemp_C[h] ?? 0
    daily_C[d] = sum / (end - d * 24)
  }
  const out = new Float64Array(weather.hours)
  let mean_C = daily_C[days - 1] ?? 0
  const warmUp_days = Math.min(days, 30)
  for (let d = -warmUp_days; d < days; d++) {
    if (d >= 0) out.fill(mean_C, d * 24, Math.min(weather.hours, (d + 1) * 24))
    mean_C = RUNNING_MEAN_WEIGHT * mean_C + (1 - RUNNING_MEAN_WEIGHT) * (daily_C[(d + days) % days] ?? 0)
  }
  return out
}
