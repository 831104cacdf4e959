import { HOUR_MS } from '#model/basis/hours'
import { median } from '#model/basis/numbers'
import { sunHours } from '#model/outdoors/sun'
import type { Site } from '#model/outdoors/weather'

/** One day's difference between the middle of its radiation and solar noon. */
export interface DayOffset {
  /** First hour of the day's window in the record. */
  readonly hour: number
  /** Middle of the radiation minus middle of the sun's height, h; positive is late. */
  readonly late_h: number
  /** Sum of the day's global over that of a sun in empty space: clear days are near 0.75. */
  readonly clearness_frac: number
}

/** What is needed to place radiation against the sun. */
export interface RadiationInTime {
  readonly global: Float64Array
  readonly start_utcMs: number
  readonly radiationMiddle_h: number
  readonly site: Pick<Site, 'latitude_deg' | 'longitude_deg'>
}

/** Records shorter than this are taken from their first hour on: a day cut at midnight UTC still closes on a circle. */
const SHORT_H = 72

/** Lowest daily mean global that says anything, W/m². */
const DARK_WM2 = 15

/**
 * Middle of each day's global radiation against the middle of the sun's height, both as directions on a 24 h circle.
 * Windows of 24 h are laid round the solar noon that `shift_h` puts off, so that no day is cut through.
 */
export function solarNoonOffsets(given: RadiationInTime, shift_h = 0): DayOffset[] {
  const { global, start_utcMs, radiationMiddle_h, site } = given
  const hours = global.length
  const sun = sunHours(start_utcMs, hours, radiationMiddle_h, site.latitude_deg, site.longitude_deg)
  const height = sun.altitude_deg.map((altitude, i) =>
    altitude <= 0 ? 0 : Math.sin((altitude * Math.PI) / 180) * sun.extraterrestrial_Wm2[i]!,
  )
  const noon_utcH = 12 - site.longitude_deg / 15
  const firstHour_utcH = (start_utcMs / HOUR_MS) % 24
  const windowStart = hours < SHORT_H ? 0 : Math.round(noon_utcH - 12 - firstHour_utcH + shift_h)
  const offsets: DayOffset[] = []
  for (let start = hours < SHORT_H ? 0 : ((windowStart % 24) + 24) % 24; start + 24 <= hours; start += 24) {
    const day = middlesOfDay(global, height, start, hours < SHORT_H ? 0 : Math.round(shift_h))
    if (day === null || day.measured.sum < DARK_WM2 * 24) continue
    const apart = day.measured.angle_h - day.expected.angle_h
    offsets.push({
      hour: start,
      late_h: apart - 24 * Math.round((apart - shift_h) / 24),
      clearness_frac: day.measured.sum / day.expected.sum,
    })
  }
  return offsets
}

interface Middle {
  /** Direction on a clock face, h. */
  readonly angle_h: number
  readonly sum: number
}

/** Share of the day's expected light that may be missing. */
const MISSING_FRAC = 0.2

/** Middles of a day's measured and expected light over the hours that have a reading; null when too much is missing. */
function middlesOfDay(
  global: Float64Array,
  height: Float64Array,
  start: number,
  shift: number,
): { readonly measured: Middle; readonly expected: Middle } | null {
  const measured: [number, number][] = []
  const expected: [number, number][] = []
  let missing = 0
  let all = 0
  for (let i = start; i < start + 24; i += 1) {
    const light = height[i - shift] ?? 0
    all += light
    if (Number.isNaN(global[i]!)) {
      missing += light
      continue
    }
    measured.push([i, global[i]!])
    expected.push([i - shift, light])
  }
  const of = middle(measured)
  const from = middle(expected)
  return of === null || from === null || missing > all * MISSING_FRAC
    ? null
    : { measured: of, expected: from }
}

/** Direction of weights at hours on a clock face; null when they point nowhere. */
function middle(weights: readonly (readonly [number, number])[]): Middle | null {
  let x = 0
  let y = 0
  let sum = 0
  for (const [hour, weight] of weights) {
    const angle = (2 * Math.PI * hour) / 24
    x += weight * Math.cos(angle)
    y += weight * Math.sin(angle)
    sum += weight
  }
  return sum > 0 && Math.hypot(x, y) > 0.1 * sum
    ? { angle_h: (Math.atan2(y, x) * 24) / (2 * Math.PI), sum }
    : null
}

/** The clearer half of the days: their radiation is the more even about noon. */
export function clearerHalf(days: readonly DayOffset[]): readonly DayOffset[] {
  const limit = median(days.map((day) => day.clearness_frac))
  return days.filter((day) => day.clearness_frac >= limit)
}
