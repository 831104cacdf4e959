import { Matrix } from 'ml-matrix'
import type { ErrorBlock } from '#model/basis/numbers'
import { runningHours } from './log.ts'
import { AS_DESIGNED, departedHours, predictedFall_K, type AsBuiltInputs, type Departure } from './plant.ts'

/**
 * Errors of one logged hour that are nobody's fault, one standard deviation: the pair of sensors; the sky formula
 * (measured stations: 8–16 W/m² an hour, half of it all night long), more under cloud; gusts and shelter; the sun.
 * Sensors, gusts and sun: common practice, no source.
 */
export const HOUR_ERRORS = {
  sensors_K: 0.1,
  skyHour_Wm2: 8,
  skyDay_Wm2: 8,
  cloudSky_Wm2: 20,
  windLog: 0.3,
  sun_frac: 0.06,
} as const

/** How one kind of error moves the fall of every running hour, per unit. */
export function moves(
  inputs: AsBuiltInputs,
  about: Departure,
  of: 'sky_Wm2' | 'windLog' | 'sunGain_frac',
  step: number,
): Float64Array {
  const at = (departure: Departure) => predictedFall_K(inputs, departedHours(inputs, departure), departure)
  const base = at(about)
  return at({ ...about, [of]: about[of] + step }).map((value, i) => (value - base[i]!) / step)
}

/**
 * Covariance of the logged falls, a block for each day from noon to noon (so that a night stays together), for a panel
 * that departs from the design in a given way (half the flow answers twice as much to the weather).
 */
export function dayBlocks(inputs: AsBuiltInputs, about: Departure = AS_DESIGNED): ErrorBlock[] {
  const sky = moves(inputs, about, 'sky_Wm2', 5)
  const wind = moves(inputs, about, 'windLog', 0.1)
  const sun = moves(inputs, about, 'sunGain_frac', 0.05)
  const hours = runningHours(inputs.log)
  const cloud = hours.map((hour) => inputs.weather.cloud_frac[hour]!)
  return dayRows(hours).map((rows) => ({
    rows,
    covariance: new Matrix(
      rows.map((i) =>
        rows.map((j) => {
          const shared = sky[i]! * sky[j]! * HOUR_ERRORS.skyDay_Wm2 ** 2
          if (i !== j) return shared
          const skyHour_Wm2 = Math.hypot(HOUR_ERRORS.skyHour_Wm2, HOUR_ERRORS.cloudSky_Wm2 * cloud[i]!)
          return (
            shared +
            HOUR_ERRORS.sensors_K ** 2 +
            (sky[i]! * skyHour_Wm2) ** 2 +
            (wind[i]! * HOUR_ERRORS.windLog) ** 2 +
            (sun[i]! * HOUR_ERRORS.sun_frac) ** 2
          )
        }),
      ),
    ),
  }))
}

/** Row numbers grouped by noon-to-noon day of their hour. */
export function dayRows(hours: readonly number[]): number[][] {
  const days = new Map<number, number[]>()
  hours.forEach((hour, row) => {
    const day = Math.floor((hour + 12) / 24)
    const rows = days.get(day)
    if (rows === undefined) days.set(day, [row])
    else rows.push(row)
  })
  return [...days.values()]
}
