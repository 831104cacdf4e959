import { LOW_SUN_DEG } from './split.ts'

const RADIANS = Math.PI / 180

/** Relative air mass, –, altitude above the horizon. Source: Kasten & Young 1989, Applied Optics 28, 4735. */
export function airMass(altitude_deg: number): number {
  const h = Math.max(altitude_deg, 0)
  return 1 / (Math.sin(h * RADIANS) + 0.50572 * (h + 6.07995) ** -1.6364)
}

/** Clear-sky global horizontal irradiance from the sun's height alone, W/m². Source: Haurwitz 1945, 1946. */
export function haurwitzGlobal_Wm2(altitude_deg: number): number {
  const sine = Math.sin(altitude_deg * RADIANS)
  return sine <= 0 ? 0 : 1098 * sine * Math.exp(-0.059 / sine)
}

export interface ClearSky {
  readonly global_Wm2: number
  readonly direct_Wm2: number
  readonly diffuse_Wm2: number
}

/** Linke turbidity of ordinary clear air, – (2 very clean, 3 usual, 5 hazy; common practice, no source). */
export const USUAL_TURBIDITY = 3

/**
 * Clear-sky irradiance by turbidity and altitude of the place, W/m²: global horizontal, direct normal, diffuse.
 * Source: Ineichen & Perez 2002, Solar Energy 73, 151. Zero when the sun is below the horizon.
 */
export function ineichenPerez(
  altitude_deg: number,
  extraterrestrial_Wm2: number,
  site_m: number,
  turbidity = USUAL_TURBIDITY,
): ClearSky {
  const sine = Math.sin(altitude_deg * RADIANS)
  if (sine <= 0) return { global_Wm2: 0, direct_Wm2: 0, diffuse_Wm2: 0 }
  const mass = airMass(altitude_deg)
  const f1 = Math.exp(-site_m / 8000)
  const f2 = Math.exp(-site_m / 1250)
  const c1 = 5.09e-5 * site_m + 0.868
  const c2 = 3.92e-5 * site_m + 0.0387
  const global_Wm2 =
    c1 *
    extraterrestrial_Wm2 *
    sine *
    Math.exp(-c2 * mass * (f1 + f2 * (turbidity - 1))) *
    Math.exp(0.01 * mass ** 1.8)
  const beam = (0.664 + 0.163 / f1) * Math.exp(-0.09 * mass * (turbidity - 1)) * extraterrestrial_Wm2
  const ceiling = (global_Wm2 * (1 - (0.1 - 0.2 * Math.exp(-turbidity)) / (0.1 + 0.882 / f1))) / sine
  const direct_Wm2 = Math.max(0, Math.min(beam, ceiling))
  return { global_Wm2, direct_Wm2, diffuse_Wm2: global_Wm2 - direct_Wm2 * sine }
}

/**
 * Clear-sky index: measured over clear-sky global, 0…1.2 (Ineichen & Perez, usual turbidity). NaN where the sun
 * is under `lowest_deg`: too low to separate cloud from haze.
 */
export function clearSkyIndex_frac(
  global_Wm2: number,
  altitude_deg: number,
  extraterrestrial_Wm2: number,
  site_m: number,
  lowest_deg = LOW_SUN_DEG,
): number {
  if (altitude_deg < lowest_deg) return NaN
  const clear = ineichenPerez(altitude_deg, extraterrestrial_Wm2, site_m).global_Wm2
  return Math.min(1.2, Math.max(0, global_Wm2 / clear))
}
