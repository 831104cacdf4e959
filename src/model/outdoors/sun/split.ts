const RADIANS = Math.PI / 180
/** Below this altitude a direct-normal value would be a small number over a small number, degrees (87° zenith). */
export const LOW_SUN_DEG = 3

/**
 * Diffuse share of global horizontal irradiance from the clearness index, 0…1.
 * Source: Erbs, Klein & Duffie 1982, Solar Energy 28, 293 (hourly).
 */
export function erbsDiffuse_frac(clearness_frac: number): number {
  const k = clearness_frac
  if (k <= 0.22) return 1 - 0.09 * k
  if (k <= 0.8) return 0.9511 + k * (-0.1604 + k * (4.388 + k * (-16.638 + k * 12.336)))
  return 0.165
}

/** Direct normal and diffuse horizontal, W/m². */
export interface BeamAndDiffuse {
  readonly directNormal_Wm2: number
  readonly diffuseHorizontal_Wm2: number
}

/**
 * Splits global horizontal irradiance into beam and diffuse (Erbs 1982). With the sun below 3° all of it is
 * diffuse. The parts close: global = direct · sin(altitude) + diffuse.
 */
export function splitGlobal(
  global_Wm2: number,
  altitude_deg: number,
  extraterrestrial_Wm2: number,
): BeamAndDiffuse {
  if (!(global_Wm2 > 0)) return { directNormal_Wm2: 0, diffuseHorizontal_Wm2: 0 }
  if (altitude_deg < LOW_SUN_DEG) return { directNormal_Wm2: 0, diffuseHorizontal_Wm2: global_Wm2 }
  const sine = Math.sin(altitude_deg * RADIANS)
  const diffuse = global_Wm2 * erbsDiffuse_frac(global_Wm2 / (extraterrestrial_Wm2 * sine))
  return { directNormal_Wm2: (global_Wm2 - diffuse) / sine, diffuseHorizontal_Wm2: diffuse }
}
