import type { PlaneIrradiance, SunHours } from './hours.ts'
import { skyView_frac } from './sky-view.ts'
import { LOW_SUN_DEG } from './split.ts'

const RADIANS = Math.PI / 180

/** The irradiance columns of a weather record, W/m². */
export interface HorizontalIrradiance {
  readonly directNormal_Wm2: Float64Array
  readonly diffuseHorizontal_Wm2: Float64Array
  readonly globalHorizontal_Wm2: Float64Array
}

/** Cosine of the angle between the sun and a plane's normal; negative when the sun is behind it. */
export function incidenceCosine(
  altitude_deg: number,
  azimuth_deg: number,
  tilt_deg: number,
  planeAzimuth_deg: number,
): number {
  const h = altitude_deg * RADIANS
  const tilt = tilt_deg * RADIANS
  return (
    Math.sin(h) * Math.cos(tilt) +
    Math.cos(h) * Math.sin(tilt) * Math.cos((azimuth_deg - planeAzimuth_deg) * RADIANS)
  )
}

/**
 * Irradiance on a tilted plane, W/m² per hour.
 *   beam = DNI cos θ;  circumsolar = DHI A R_b;  sky = DHI (1 − A) F_sky;  ground = GHI ρ (1 − cos β)/2
 * A = DNI/E₀ is the anisotropy index, R_b = cos θ/sin h with the sun held above 3°. The horizon, equally high all
 * round, hides the beam and circumsolar light below it and lowers F_sky.
 * @param azimuth_deg  the way the plane faces, clockwise from north
 * @throws RangeError when the columns differ in length from the sun
 * Source: Hay & Davies 1980; isotropic parts Liu & Jordan 1963; as in Duffie & Beckman, §§2.15–2.16.
 */
export function planeIrradiance(
  sun: SunHours,
  weather: HorizontalIrradiance,
  tilt_deg: number,
  azimuth_deg: number,
  albedo_frac: number,
  horizon_deg = 0,
): PlaneIrradiance {
  const { hours } = sun
  if (weather.globalHorizontal_Wm2.length !== hours) {
    throw new RangeError(`irradiance has ${weather.globalHorizontal_Wm2.length} hours, the sun ${hours}`)
  }
  const beam_Wm2 = new Float64Array(hours)
  const diffuse_Wm2 = new Float64Array(hours)
  const total_Wm2 = new Float64Array(hours)
  const cosIncidence = new Float64Array(hours)
  const skyView = skyView_frac(tilt_deg, horizon_deg)
  const groundShare = albedo_frac * 0.5 * (1 - Math.cos(tilt_deg * RADIANS))
  const lowestSine = Math.sin(LOW_SUN_DEG * RADIANS)
  for (let i = 0; i < hours; i++) {
    const global = weather.globalHorizontal_Wm2[i]!
    const diffuse = weather.diffuseHorizontal_Wm2[i]!
    if (!(global > 0 || diffuse > 0)) continue
    const altitude = sun.altitude_deg[i]!
    const up = altitude > horizon_deg && altitude > 0
    const cosine = Math.max(0, incidenceCosine(altitude, sun.azimuth_deg[i]!, tilt_deg, azimuth_deg))
    const direct = up ? weather.directNormal_Wm2[i]! : 0
    const anisotropy = Math.min(1, Math.max(0, weather.directNormal_Wm2[i]! / sun.extraterrestrial_Wm2[i]!))
    const ratio = up ? cosine / Math.max(Math.sin(altitude * RADIANS), lowestSine) : 0
    cosIncidence[i] = cosine
    beam_Wm2[i] = direct * cosine + diffuse * anisotropy * ratio
    diffuse_Wm2[i] = diffuse * (1 - anisotropy) * skyView + Math.max(0, global) * groundShare
    total_Wm2[i] = beam_Wm2[i]! + diffuse_Wm2[i]!
  }
  return { beam_Wm2, diffuse_Wm2, total_Wm2, cosIncidence }
}
