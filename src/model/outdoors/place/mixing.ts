import { within } from './within.ts'

/**
 * Mixing length of the weather, km: air comes from so far away, so that a day departs by its length times the gradient of the
 * mean (Schneider, Bischoff & Płotka 2015, J. Climate 28, 2312–2331). Median over the interior of the United States of the
 * regression below over the gradient, 30–48° N: 470 km in the three warmest months, 370 km in the three coldest.
 */
const MIXING_km = { warm: 470, cold: 370 }
/** The steepest summer gradient of that interior, K/km: what is steeper is a coast, whose air is not mixed across. */
const WARM_GRADIENT_Kkm = 0.0075
/** Mixing is not trusted further from the regression than this. */
const MIXED_OVER_REGRESSED = [0.5, 2] as const

/** Standard deviation of daily means by mixing along a gradient, K; `warm` 1 in the warm season, 0 in the cold one. */
export function byMixing_K(gradient_Kkm: number, warm: number, regressed_K: number): number {
  const length_km = warm * MIXING_km.warm + (1 - warm) * MIXING_km.cold
  const mixed_K = length_km * (warm > 0 ? Math.min(gradient_Kkm, WARM_GRADIENT_Kkm / warm) : gradient_Kkm)
  return within(mixed_K, MIXED_OVER_REGRESSED[0] * regressed_K, MIXED_OVER_REGRESSED[1] * regressed_K)
}

/** True within the United States and their islands, where the 190 stations are: there the regression is at home. */
export function ofTheStations(latitude_deg: number, longitude_deg: number): boolean {
  const box = (south: number, north: number, west: number, east: number): boolean =>
    latitude_deg >= south && latitude_deg <= north && longitude_deg >= west && longitude_deg <= east
  return box(24, 49.5, -125, -66) || box(17, 23, -161, -154) || box(17, 19, -68, -64) || box(13, 14, 144, 146)
}
