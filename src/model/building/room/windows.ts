import type { Facade, RoomGeometry } from './geometry.ts'
import type { RoomSpec } from './spec.ts'
import type { PlaneIrradiance } from '#model/outdoors/sun'
import { diffuseShares, litShare_frac, type WindowShade } from './window-shade.ts'

/** Panes of glass in a window: what decides how much less it lets in at a slant. */
export type Panes = 1 | 2

/**
 * Solar gain at an incidence angle over that at normal incidence, clear glass of 4 mm: every 10° from 0 to 90°, and for sky
 * and ground light. Fresnel's equations polarisation by polarisation, index 1.526, extinction 18 /m; what a pane absorbs goes
 * inward by the share of the window's resistance that lies outside it (films 0.13 and 0.04 m²K/W, gap 0.17).
 * Source: Duffie & Beckman, Solar Engineering of Thermal Processes, ch. 5.
 */
const ANGLE_FACTORS: Readonly<Record<Panes, { readonly beam: readonly number[]; readonly diffuse: number }>> =
  {
    1: { beam: [1, 1, 0.998, 0.994, 0.985, 0.962, 0.908, 0.778, 0.486, 0], diffuse: 0.915 },
    2: { beam: [1, 0.999, 0.997, 0.992, 0.98, 0.951, 0.879, 0.699, 0.353, 0], diffuse: 0.891 },
  }
/** A window with a U-value above this has one pane, W/m²K (single glass 5 to 6, double at most 3: EN 673, from memory). */
const ONE_PANE_Wm2K = 4

export function panesOf(windowU_Wm2K: number): Panes {
  return windowU_Wm2K > ONE_PANE_Wm2K ? 1 : 2
}

/** Share of the normal solar gain that sky and ground light keeps. */
export function diffuseFactor(panes: Panes): number {
  return ANGLE_FACTORS[panes].diffuse
}

/** Share of the normal solar gain that beam light keeps at an incidence with cosine `cosine` (0…1). */
export function beamFactor(cosine: number, panes: Panes): number {
  const { beam } = ANGLE_FACTORS[panes]
  const tens = (Math.acos(Math.min(1, Math.max(0, cosine))) * 18) / Math.PI
  const left = Math.min(8, Math.floor(tens))
  return beam[left]! + (tens - left) * (beam[left + 1]! - beam[left]!)
}

/** The windows of one facade. */
export interface Glazing extends Pick<Facade, 'name' | 'azimuth_deg'> {
  /** Glass times its solar gain at normal incidence and what shading leaves, m². */
  readonly gain_m2: number
  readonly shade: WindowShade
}

/** The sun's height and the light from the ground on an upright plane, per hour: what shades need beside the plane. */
export interface ShadeHours {
  readonly altitude_deg: Float64Array
  readonly ground_Wm2: Float64Array
}

/** The facades that have windows. */
export function glazingOf(spec: RoomSpec, geometry: RoomGeometry): Glazing[] {
  return geometry.facades
    .map(({ name, azimuth_deg, window_m2 }) => ({
      name,
      azimuth_deg,
      gain_m2: window_m2 * spec.windowGain_frac * spec.shading_frac,
      shade: {
        overhang_m: spec.overhang_m,
        overhangAbove_m: spec.overhangAbove_m,
        reveal_m: spec.reveal_m,
        height_m: Math.min(spec.windowHeight_m, spec.height_m),
        width_m: window_m2 / Math.min(spec.windowHeight_m, spec.height_m),
      },
    }))
    .filter(({ gain_m2 }) => gain_m2 > 0)
}

const DEGREE = Math.PI / 180

/** Irradiance let in by all windows, W, per hour; `onFacade` gives that on a facade's plane. */
export function windowSun_W(
  glazing: readonly Glazing[],
  onFacade: (facade: Glazing) => PlaneIrradiance,
  { altitude_deg, ground_Wm2 }: ShadeHours,
  panes: Panes,
): Float64Array {
  const hours = altitude_deg.length
  const sum_W = new Float64Array(hours)
  for (const facade of glazing) {
    const plane = onFacade(facade)
    const { gain_m2, shade } = facade
    const kept = diffuseShares(shade)
    for (let h = 0; h < hours; h++) {
      if (plane.total_Wm2[h]! <= 0) continue
      const cosine = plane.cosIncidence[h]!
      const lit = cosine > 0 ? litShare_frac(shade, Math.sin(altitude_deg[h]! * DEGREE), cosine) : 0
      const beam_Wm2 = plane.beam_Wm2[h]! * lit * beamFactor(cosine, panes)
      const diffuse_Wm2 =
        kept.sky_frac * plane.diffuse_Wm2[h]! + (kept.ground_frac - kept.sky_frac) * ground_Wm2[h]!
      sum_W[h]! += gain_m2 * (beam_Wm2 + diffuseFactor(panes) * diffuse_Wm2)
    }
  }
  return sum_W
}
