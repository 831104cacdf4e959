import type { Construction } from '#model/building/construction'

/** Air itself, J/m³K, at 20 °C; light things that follow it at once (paper, cloth) hold about as much again. */
const AIR_JM3K = 1207
const WITH_LIGHT_THINGS = 2
/** What a square metre of face of furniture holds, J/m²K: 20 mm of softwood from one side (ISO 10456). */
const FURNITURE_JM2K = 16_000
const TIMBER = { conductivity_WmK: 0.13, density_kgm3: 500, specificHeat_JkgK: 1600 }
/** Faces of furniture and goods per m² of floor, at least and at most. */
const FEWEST = 0.2
const MOST = 4

/** Air, and furniture and goods, from one heat capacity per m² of floor. */
export interface Contents {
  readonly airCapacity_JK: number
  /** Null when the air and light things are all there is. */
  readonly furniture: { readonly area_m2: number; readonly layers: Construction } | null
}

/** Splits what a room contains: what the air holds follows it at once, the rest is timber-like faces. */
export function contentsOf(contents_Jm2K: number, floor_m2: number, volume_m3: number): Contents {
  const all_JK = contents_Jm2K * floor_m2
  const airCapacity_JK = Math.min(all_JK, WITH_LIGHT_THINGS * AIR_JM3K * volume_m3)
  const rest_JK = all_JK - airCapacity_JK
  if (rest_JK < 1e-6 * all_JK) return { airCapacity_JK, furniture: null }
  const area_m2 = floor_m2 * Math.min(MOST, Math.max(FEWEST, rest_JK / FURNITURE_JM2K / floor_m2))
  const thickness_m = rest_JK / area_m2 / (TIMBER.density_kgm3 * TIMBER.specificHeat_JkgK)
  return { airCapacity_JK, furniture: { area_m2, layers: [{ thickness_m, ...TIMBER }] } }
}
