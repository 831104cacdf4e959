import type { RoomGeometry } from '#model/room/geometry.ts'
import type { RoomSpec } from '#model/room/spec.ts'
import type { PlaneIrradiance } from '#model/sun/hours.ts'

/**
 * Solar gain at an incidence angle over that at normal incidence, clear glazing: every 10° from 0 to 90°. From memory:
 * ASHRAE Handbook of Fundamentals, ch. 15, double clear glass.
 */
const ANGLE_FACTORS = [1, 1, 1, 1, 1, 0.97, 0.91, 0.78, 0.5, 0] as const
/** The same for sky and ground light, 0.87–0.90 (from memory, ASHRAE Fundamentals, ch. 15; ISO 13790 takes 0.9). */
const DIFFUSE_FACTOR = 0.88

/** Share of the normal solar gain that beam light keeps at an incidence with cosine `cosine` (0…1). */
export function beamFactor(cosine: number): number {
  const tens = (Math.acos(Math.min(1, Math.max(0, cosine))) * 18) / Math.PI
  const left = Math.min(8, Math.floor(tens))
  return ANGLE_FACTORS[left]! + (tens - left) * (ANGLE_FACTORS[left + 1]! - ANGLE_FACTORS[left]!)
}

/** Sunshine let in by all windows, W, per hour. `facades` follows the order of the geometry's facades. */
export function windowSun_W(
  spec: RoomSpec,
  geometry: RoomGeometry,
  facades: readonly PlaneIrradiance[],
): Float64Array {
  const sum_W = new Float64Array(facades[0]!.total_Wm2.length)
  geometry.facades.forEach((facade, side) => {
    if (facade.window_m2 === 0) return
    const plane = facades[side]!
    const glass_m2 = facade.window_m2 * spec.windowGain_frac * spec.shading_frac
    for (let h = 0; h < sum_W.length; h++) {
      const total = plane.total_Wm2[h]!
      if (total <= 0) continue
      const beam = plane.beam_Wm2[h]! * beamFactor(plane.cosIncidence[h]!)
      sum_W[h]! += glass_m2 * (beam + DIFFUSE_FACTOR * plane.diffuse_Wm2[h]!)
    }
  })
  return sum_W
}
