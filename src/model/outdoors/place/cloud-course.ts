import { seasonal } from '#model/basis/hours'
import { solarHour_h } from '#model/outdoors/climate'
import type { Site } from '#model/outdoors/weather'
import type { MonthTargets } from './months.ts'
import { within } from './within.ts'

/**
 * Daily course of opaque cloud over land. Heaps over warmed ground are most in the afternoon, low sheets of the cool season most after
 * sunrise: kind and hour after Warren et al. 1986 (NCAR/TN-273) and Eastman & Warren 2014 (J. Climate 27, 2386–2404), amplitudes
 * of the mean course from memory of them.
 */
const HEAPS = { amplitude_frac: 0.06, peak_h: 14.5 }
const SHEETS = { amplitude_frac: 0.03, peak_h: 8.5 }
/** Ground is warm enough for heaps on from the first, and always from the second mean temperature, °C. */
const WARM_C = [8, 20] as const

/**
 * What the hour adds to the logit of cloud, –, zero over a whole day.
 * @param slope  change of the mean cloud with its logit at one half, as its other states spread it
 */
export function cloudCourse(site: Site, { airTemp_C }: MonthTargets, slope: number): Float64Array {
  const warm = seasonal(airTemp_C.map((air_C) => within((air_C - WARM_C[0]) / (WARM_C[1] - WARM_C[0]), 0, 1)))
  const course = ({ amplitude_frac, peak_h }: typeof HEAPS, hour_h: number): number =>
    (amplitude_frac / slope) * Math.cos((2 * Math.PI * (hour_h - peak_h)) / 24)
  return warm.map((share, h) => {
    const hour_h = solarHour_h(site, h)
    return share * course(HEAPS, hour_h) + (1 - share) * course(SHEETS, hour_h)
  })
}
