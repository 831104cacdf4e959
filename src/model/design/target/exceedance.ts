import type { WeatherRecord } from '#model/outdoors/weather'
import type { TargetSpec } from './target.ts'

/** Half width of the ramp that replaces the step when hours are counted for the search, K. */
const RAMP_K = 0.25
/** The hottest days of the year: those whose outdoor maximum is in the highest tenth. */
const HOT_SHARE = 0.1
/** A day is held when the room stays under its limit by the rounding of a thermometer, K. */
const HELD_TOLERANCE_K = 0.05

/** How a room did against the target. */
export interface Exceedance {
  /** Highest operative temperature in counted hours, °C. */
  readonly peak_C: number
  /** Counted hours above the limit. */
  readonly hours_h: number
  readonly degreeHours_Kh: number
  /** Days among the hottest tenth of the year's days (by outdoor maximum), and how many of them are held. */
  readonly hotDays: number
  readonly hotDaysHeld: number
  /** Smooth distance from the target in its own unit; ≤ 0 when met. */
  readonly measure: number
}

/** The yardstick of one target in one climate: a limit an hour, and which days are hot. */
export interface Yardstick {
  readonly target: TargetSpec
  /** Upper limit of the operative temperature each hour, °C; NaN where the hour does not count. */
  readonly limit_C: Float64Array
  /** Index of the first hour of each hot day. */
  readonly hotDayStarts_h: readonly number[]
}

/**
 * Makes the yardstick.
 * @param upper_C  upper limit each hour, °C (a constant, or an adaptive one), one entry an hour
 * @param hourOfDay local standard hour of the day (0…23) at index 0
 */
export function yardstick(
  target: TargetSpec,
  weather: WeatherRecord,
  upper_C: Float64Array,
  firstHourOfDay: number,
): Yardstick {
  const limit_C = new Float64Array(weather.hours)
  for (let h = 0; h < weather.hours; h++) {
    limit_C[h] = counts(target, (firstHourOfDay + h) % 24) ? upper_C[h]! : NaN
  }
  return { target, limit_C, hotDayStarts_h: hotDays(weather.airTemp_C) }
}

function counts({ occupiedFrom_h: from, occupiedUntil_h: until }: TargetSpec, hour: number): boolean {
  if (from === until) return true
  return from < until ? hour >= from && hour < until : hour >= from || hour < until
}

function hotDays(outdoor_C: Float64Array): number[] {
  const days = Math.floor(outdoor_C.length / 24)
  const peaks = Array.from({ length: days }, (_, d) => {
    let peak_C = -Infinity
    for (let h = d * 24; h < d * 24 + 24; h++) peak_C = Math.max(peak_C, outdoor_C[h]!)
    return { start_h: d * 24, peak_C }
  })
  const wanted = Math.max(1, Math.round(days * HOT_SHARE))
  const hottest = peaks.toSorted((a, b) => b.peak_C - a.peak_C || a.start_h - b.start_h).slice(0, wanted)
  return hottest.map((day) => day.start_h).sort((a, b) => a - b)
}

/** How a room's operative temperature (°C, one entry an hour; NaN hours are passed over) did against the yardstick. */
export function exceedance(room_C: Float64Array, stick: Yardstick): Exceedance {
  let peak_C = -Infinity
  let over_K = -Infinity
  let hours_h = 0
  let soft_h = 0
  let degreeHours_Kh = 0
  for (let h = 0; h < room_C.length; h++) {
    const above_K = room_C[h]! - stick.limit_C[h]!
    if (Number.isNaN(above_K)) continue
    peak_C = Math.max(peak_C, room_C[h]!)
    over_K = Math.max(over_K, above_K)
    if (above_K > 0) {
      hours_h++
      degreeHours_Kh += above_K
    }
    soft_h += Math.min(1, Math.max(0, above_K / (2 * RAMP_K) + 0.5))
  }
  const held = stick.hotDayStarts_h.filter((start) => dayHeld(room_C, stick.limit_C, start)).length
  return {
    peak_C,
    hours_h,
    degreeHours_Kh,
    hotDays: stick.hotDayStarts_h.length,
    hotDaysHeld: held,
    measure: measureOf(stick.target, over_K, soft_h, degreeHours_Kh),
  }
}

function dayHeld(room_C: Float64Array, limit_C: Float64Array, start: number): boolean {
  for (let h = start; h < start + 24; h++) {
    if (room_C[h]! - limit_C[h]! > HELD_TOLERANCE_K) return false
  }
  return true
}

/** Distance from the target in its own unit, continuous in the room's temperature; ≤ 0 when met. */
function measureOf(target: TargetSpec, over_K: number, soft_h: number, degreeHours_Kh: number): number {
  switch (target.kind) {
    case 'peak':
      return over_K
    case 'hours':
    case 'adaptive':
      return soft_h - target.allowedHours_h
    case 'degreeHours':
      return degreeHours_Kh - target.allowedDegreeHours_Kh
  }
}
