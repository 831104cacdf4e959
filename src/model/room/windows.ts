import type { Facade, RoomGeometry } from '#model/room/geometry.ts'
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

/** The windows of one facade. */
export interface Glazing extends Pick<Facade, 'name' | 'azimuth_deg'> {
  /** Glass times its solar gain at normal incidence and what shading leaves, m². */
  readonly gain_m2: number
}

/** The facades that have windows. */
export function glazingOf(spec: RoomSpec, geometry: RoomGeometry): Glazing[] {
  return geometry.facades
    .map(({ name, azimuth_deg, window_m2 }) => ({
      name,
      azimuth_deg,
      gain_m2: window_m2 * spec.windowGain_frac * spec.shading_frac,
    }))
    .filter(({ gain_m2 }) => gain_m2 > 0)
}

/** Irradiance let in by all windows, W, per hour; `onFacade` gives that on a facade's plane. */
export function windowSun_W(
  glazing: readonly Glazing[],
  onFacade: (facade: Glazing) => PlaneIrradiance,
  hours: number,
): Float64Array {
  const sum_W = new Float64Array(hours)
  for (const facade of glazing) {
    const plane = onFacade(facade)
    const { gain_m2 } = facade
    for (let h = 0; h < hours; h++) {
      if (plane.total_Wm2[h]! <= 0) continue
      const beam = plane.beam_Wm2[h]! * beamFactor(plane.cosIncidence[h]!)
      sum_W[h]! += gain_m2 * (beam + DIFFUSE_FACTOR * plane.diffuse_Wm2[h]!)
    }
  }
  return sum_W
}
