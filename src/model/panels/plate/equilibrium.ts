import type { Face } from './face.ts'
import { filmPart } from './film-tangent.ts'
import type { PanelHours, PanelPoint } from './hours.ts'
import { bareTangent } from './tangent.ts'

/** The search ends with a step smaller than this, which is still taken, K: what is left is its square. */
const LAST_STEP_K = 0.03
const MOST_STEPS = 40
/** Longest step of the search, K. */
const LONGEST_STEP_K = 40
/** The film's slope is taken over this rise of the plate, K. */
const SLOPE_SPAN_K = 6
/** First guess of the film's slope where there is no hour before. */
const USUAL_FILM_SLOPE = 0.3

/**
 * Finds and writes one hour's equilibrium: plate temperature, slope, face temperature and its slope. The hour's
 * other columns must be set, but for its vapour pressure, which must still be zero: at equilibrium no dew counts. `face` and `scratch` (dry) are worked with.
 * Starts from the hour before, moved along with the air. Heat leaving rises with temperature, so Newton's rule
 * with its step held is safe.
 */
export function settleEquilibrium(panel: PanelHours, hour: number, face: Face, scratch: PanelPoint): void {
  face.set(panel, hour)
  const before = hour - 1
  const shift = hour === 0 ? 0 : panel.air_C[hour]! - panel.air_C[before]!
  let plate = hour === 0 ? panel.air_C[0]! : panel.equilibrium_C[before]! + shift
  panel.surface_C[hour] = hour === 0 ? panel.air_C[0]! : panel.surface_C[before]! + shift
  panel.surfaceSlope[hour] = hour === 0 ? USUAL_FILM_SLOPE : panel.surfaceSlope[before]!
  panel.equilibrium_C[hour] = plate
  for (let i = 0; i < MOST_STEPS; i++) {
    panel.surface_C[hour] = dryFace_C(face, plate, scratch)
    panel.equilibrium_C[hour] = plate
    const wish = -scratch.q_Wm2 / scratch.slope_Wm2K
    plate += Math.max(-LONGEST_STEP_K, Math.min(LONGEST_STEP_K, wish))
    if (Math.abs(wish) < LAST_STEP_K) break
  }
  panel.surface_C[hour] += panel.surfaceSlope[hour] * (plate - panel.equilibrium_C[hour])
  panel.equilibrium_C[hour] = plate
  panel.conductance_Wm2K[hour] = scratch.slope_Wm2K
  const warmer = dryFace_C(face, panel.equilibrium_C[hour] + SLOPE_SPAN_K, scratch)
  panel.surfaceSlope[hour] = (warmer - panel.surface_C[hour]) / SLOPE_SPAN_K
}

/** Dry heat and slope into `out`; returns the temperature of the exposed face, °C. */
function dryFace_C(face: Face, plate_C: number, out: PanelPoint): number {
  if (face.panel!.gap === null) {
    out.plate_C = plate_C
    bareTangent(face, out)
    return plate_C
  }
  out.q_Wm2 = face.backLoss_Wm2K * (plate_C - face.air_C)
  out.slope_Wm2K = face.backLoss_Wm2K
  return filmPart(face, plate_C, false, 1, 0, out)
}
