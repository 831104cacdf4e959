import { localHour } from '#model/basis/hours'
import { type WeatherRecord, runningMeanOutdoor_C } from '#model/outdoors/weather'
import { type SunHours, SUNSET_deg } from '#model/outdoors/sun'
import type { PlanSpec } from './plan.ts'

/** 1 in the hours in which the running plan lets the loop run (clock, sun and season), else 0. */
export type PlanHours = Uint8Array

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

function clockAllows(plan: PlanSpec, hour_h: number, sunAltitude_deg: number): boolean {
  if (plan.kind === 'allDay') return true
  if (plan.kind === 'nightOnly') return sunAltitude_deg < SUNSET_deg
  const { startHour_h: from, endHour_h: to } = plan
  return from <= to ? hour_h >= from && hour_h < to : hour_h >= from || hour_h < to
}
