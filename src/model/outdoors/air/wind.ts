/**
 * Wind boundary layer by terrain: exponent and thickness, m. The weather record's wind is at 10 m in open country.
 * Source: ASHRAE Handbook of Fundamentals, airflow around buildings, table 1 (from memory).
 */
export const WIND_TERRAINS = {
  open: { exponent: 0.14, thickness_m: 270 },
  suburb: { exponent: 0.22, thickness_m: 370 },
  city: { exponent: 0.33, thickness_m: 460 },
} as const

/** Height of the weather record's wind, m. */
const MET_HEIGHT_M = 10

/**
 * Wind at a height over a terrain divided by the wind at 10 m in open country, –.
 *   v/v_met = (d_met/10)^a_met (z/d)^a
 * @param height_m  above ground, > 0
 */
export function windFactor_frac(terrain: keyof typeof WIND_TERRAINS, height_m: number): number {
  const met = WIND_TERRAINS.open
  const here = WIND_TERRAINS[terrain]
  return (met.thickness_m / MET_HEIGHT_M) ** met.exponent * (height_m / here.thickness_m) ** here.exponent
}
