import { HOUR_MS } from '#model/basis/hours'
import { sunHours } from '#model/outdoors/sun'
import type { WeatherRecord } from '#model/outdoors/weather'

/** Mean course of the light over the day, against solar noon: the evidence behind the verdict on a clock. */
export interface NoonProfile {
  /** Hours from mean solar noon, −12…12, ascending; one entry for each hour of the clock. */
  readonly fromNoon_h: readonly number[]
  /** Mean global horizontal irradiance as read, W/m². */
  readonly measured_Wm2: readonly number[]
  /** Irradiance on a level plane in empty space at the same hours, scaled to the same daily sum, W/m². */
  readonly sun_Wm2: readonly number[]
}

/**
 * Measured light and the sun's own height by hour of the day; hours without a reading are left out of both.
 * Mean solar noon is taken for true noon: the equation of time (±16 min) evens out over a year.
 */
export function noonProfile(weather: WeatherRecord): NoonProfile {
  const { hours, start_utcMs, radiationMiddle_h, site, globalHorizontal_Wm2: global } = weather
  const sun = sunHours(start_utcMs, hours, radiationMiddle_h, site.latitude_deg, site.longitude_deg)
  const measured = new Float64Array(24)
  const expected = new Float64Array(24)
  const count = new Float64Array(24)
  for (let hour = 0; hour < hours; hour += 1) {
    if (Number.isNaN(global[hour]!)) continue
    const slot = hour % 24
    const sine = Math.sin((sun.altitude_deg[hour]! * Math.PI) / 180)
    measured[slot]! += global[hour]!
    expected[slot]! += Math.max(0, sine) * sun.extraterrestrial_Wm2[hour]!
    count[slot]! += 1
  }
  const mean = (sums: Float64Array, slot: number): number => (count[slot] ? sums[slot]! / count[slot] : 0)
  const slots = [...Array(24).keys()]
  const total = (sums: Float64Array): number => slots.reduce((sum, slot) => sum + mean(sums, slot), 0)
  const scale = total(expected) > 0 ? total(measured) / total(expected) : 0
  const firstFromNoon_h = (start_utcMs / HOUR_MS + radiationMiddle_h + site.longitude_deg / 15 - 12) % 24
  const ordered = slots
    .map((slot) => ({ slot, fromNoon_h: around(firstFromNoon_h + slot) }))
    .sort((a, b) => a.fromNoon_h - b.fromNoon_h)
  return {
    fromNoon_h: ordered.map(({ fromNoon_h }) => fromNoon_h),
    measured_Wm2: ordered.map(({ slot }) => mean(measured, slot)),
    sun_Wm2: ordered.map(({ slot }) => mean(expected, slot) * scale),
  }
}

/** Brought to −12…12. */
function around(hours: number): number {
  return hours - 24 * Math.round(hours / 24)
}
