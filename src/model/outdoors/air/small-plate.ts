import { airConductivity_WmK, airDensity_kgm3, airPrandtl, airViscosity_Pas } from './air-properties.ts'

/**
 * Factors of Nu = factor · Re^½ Pr^⅓ for a small plate. Along the wind: Pohlhausen’s laminar plate, 0.664 (textbooks of
 * heat transfer; the worked leaf of Monteith & Unsworth, problem 10.1, has 0.60 Re^½). Turned to the wind by 25° to 90°:
 * 0.86, side 4 area/perimeter, measured in a wind tunnel at Re 2·10⁴–9·10⁴ (Sparrow, Ramsey & Mass 1979; factor from
 * memory). A level board lies along the wind, where 0.86 was not measured; so it has 0.664, and a tilted one 0.86.
 */
const ALONG = 0.664
const TURNED = 0.86
const TURNED_FROM_DEG = 25

/** Factor of Nu = factor · Re^½ Pr^⅓ at a tilt against a level wind, –: straight between level and 25°. */
function smallPlateFactor(tilt_deg: number): number {
  const turned = Math.min(1, Math.max(0, tilt_deg / TURNED_FROM_DEG))
  return ALONG + (TURNED - ALONG) * turned
}

/**
 * Forced convection on a plate of 0.05 to 0.5 m, mean over its face, W/m²K, by its Reynolds number. A roof’s straight
 * line in wind must not be used here: it has the thicker boundary layer of metres.
 * @param side_m  side of a square plate, else 4 × area over perimeter, m, > 0
 * @param wind_ms  at the plate, ≥ 0
 */
export function smallPlateConvection_Wm2K(
  side_m: number,
  wind_ms: number,
  tilt_deg: number,
  air_C: number,
  pressure_Pa: number,
): number {
  if (!(side_m > 0) || !(wind_ms >= 0))
    throw new RangeError(`side must be above 0 and wind at least 0, got ${side_m} m and ${wind_ms} m/s`)
  const reynolds = (airDensity_kgm3(air_C, pressure_Pa) * wind_ms * side_m) / airViscosity_Pas(air_C)
  const nusselt = smallPlateFactor(tilt_deg) * Math.sqrt(reynolds) * Math.cbrt(airPrandtl(air_C))
  return (nusselt * airConductivity_WmK(air_C)) / side_m
}
