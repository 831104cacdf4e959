import { clearSkyIndex_frac } from '#model/sun/clear-sky.ts'
import type { SunHours } from '#model/sun/hours.ts'

/** The sun must stand this high for global radiation to tell cloud from haze, degrees (common practice, no source). */
export const CLOUD_SUN_DEG = 10

export const CLOUD_NOTE =
  'Worked out: 1 − global ÷ clear-sky global while the sun is above 10°, carried over the night by a straight line ' +
  '(Crawford & Duchon 1999; clear sky Ineichen & Perez 2002).'

/**
 * Cloud fraction from the clear-sky index by day, interpolated across the hours with a low sun or none.
 * Source: Crawford & Duchon 1999, J. Appl. Meteorol. 38, 474: clf = 1 − s. 0 throughout where the sun never rises
 * high enough, which `null` says.
 */
export function deriveCloud(
  global: Float64Array,
  sun: SunHours,
  altitude_m: number,
  cyclic: boolean,
): Float64Array | null {
  const cloud = global.map((g, i) => {
    const index = clearSkyIndex_frac(
      g,
      sun.altitude_deg[i]!,
      sun.extraterrestrial_Wm2[i]!,
      altitude_m,
      CLOUD_SUN_DEG,
    )
    return index === index ? Math.min(1, Math.max(0, 1 - index)) : NaN
  })
  return interpolateNaN(cloud, cyclic)
}

/** Straight lines across the NaN stretches, level at the ends (or round the year); null when all are NaN. */
export function interpolateNaN(values: Float64Array, cyclic: boolean): Float64Array | null {
  const n = values.length
  const known: number[] = []
  for (let i = 0; i < n; i += 1) if (values[i]! === values[i]!) known.push(i)
  if (known.length === 0) return null
  const first = known[0]!
  const last = known.at(-1)!
  const result = values.slice()
  const bridge = (from: number, to: number): void => {
    const a = values[((from % n) + n) % n]!
    const b = values[((to % n) + n) % n]!
    for (let i = from + 1; i < to; i += 1)
      result[((i % n) + n) % n] = a + ((b - a) * (i - from)) / (to - from)
  }
  for (let k = 1; k < known.length; k += 1) bridge(known[k - 1]!, known[k]!)
  if (cyclic) bridge(last, first + n)
  else {
    result.fill(values[first]!, 0, first)
    result.fill(values[last]!, last + 1)
  }
  return result
}
