import { ranked } from '#model/basis/numbers'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { TargetSpec } from './target.ts'

/** Hours this far under their limit are not ranked: no target hangs on them, K. */
const FAR_UNDER_K = -8
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
  /** Distance from the target, continuous: K over the limit of the hottest hour not allowed, or K h; ≤ 0 exactly when met. */
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
  const near_K: number[] = []
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
    if (above_K > FAR_UNDER_K) near_K.push(above_K)
  }
  const held = stick.hotDayStarts_h.filter((start) => dayHeld(room_C, stick.limit_C, start)).length
  return {
    peak_C,
    hours_h,
    degreeHours_Kh,
    hotDays: stick.hotDayStarts_h.length,
    hotDaysHeld: held,
    measure: measureOf(stick.target, over_K, near_K, degreeHours_Kh),
  }
}

function dayHeld(room_C: Float64Array, limit_C: Float64Array, start: number): boolean {
  for (let h = start; h < start + 24; h++) {
    if (room_C[h]! - limit_C[h]! > HELD_TOLERANCE_K) return false
  }
  return true
}

/**
 * Distance from the target, continuous in the room's temperature; ≤ 0 exactly when the target is met. A count of hours
 * is judged by the hottest hour that is not allowed: with n allowed, the (n + 1)th from the top, K over its limit.
 */
function measureOf(
  target: TargetSpec,
  over_K: number,
  near_K: readonly number[],
  degreeHours_Kh: number,
): number {
  switch (target.kind) {
    case 'peak':
      return over_K
    case 'hours':
    case 'adaptive':
      return rankedFromTop(near_K, Math.floor(target.allowedHours_h))
    case 'degreeHours':
      return degreeHours_Kh - target.allowedDegreeHours_Kh
  }
}

/** The value with `above` values over it; far under the limit where there are not as many. */
function rankedFromTop(values: readonly number[], above: number): number {
  if (values.length <= above) return FAR_UNDER_K
  return ranked(Float64Array.from(values), values.length - 1 - above)
}
