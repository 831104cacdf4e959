import { slopeAt, valueAt } from '#model/air/polynomial.ts'
import { saturationFast_Pa } from '#model/air/saturation-table.ts'
import { faceConvection_Wm2K, faceConvectionRise_Wm2K2, faceRoot } from '#model/panel/face-convection.ts'
import { faceEvaporation_kgm2s, vapourSlope_Wm2K } from '#model/panel/face-vapour.ts'
import { filmPart } from '#model/panel/film-tangent.ts'
import type { PanelHours, PanelTangent } from '#model/panel/hours.ts'
import { changeHeat_Jkg, evaporationLimit_kgm2s, wetness_frac } from '#model/panel/water.ts'

/**
 * Heat leaving the plate, its slope and the water gained, at one plate temperature in one hour. The hour loop's
 * innermost call: arithmetic, a square root and a table, no allocation.
 * @param water_kgm2  water or frost on the exposed face
 * @param out         overwritten
 */
export function panelTangent(
  panel: PanelHours,
  hour: number,
  plate_C: number,
  water_kgm2: number,
  out: PanelTangent,
): void {
  const back = panel.backLoss_Wm2K
  out.q_Wm2 = back * (plate_C - panel.air_C[hour]!)
  out.slope_Wm2K = back
  out.water_kgm2s = 0
  const wet = wetness_frac(water_kgm2)
  const part = panel.gap === null ? barePart : filmPart
  if (wet < 1) part(panel, hour, plate_C, false, 1 - wet, 0, out)
  if (wet > 0) part(panel, hour, plate_C, true, wet, evaporationLimit_kgm2s(water_kgm2), out)
}

/** Adds the dry or wet share of a bare plate, weighted. */
export function barePart(
  panel: PanelHours,
  hour: number,
  plate_C: number,
  isWet: boolean,
  weight: number,
  limit_kgm2s: number,
  out: PanelTangent,
): void {
  const emission = (isWet ? panel.wetExchange : panel.dryExchange).plateEmission
  const gain = (isWet ? panel.wetGain : panel.dryGain).plate_Wm2[hour]!
  const y = plate_C - panel.air_C[hour]!
  const root = faceRoot(panel, y)
  const h = faceConvection_Wm2K(panel, hour, y, root)
  const rise = faceConvectionRise_Wm2K2(panel, hour, y, root)
  out.q_Wm2 += weight * (valueAt(emission, plate_C) - gain + h * y)
  out.slope_Wm2K += weight * (slopeAt(emission, plate_C) + h + y * rise)
  const excess_Pa = saturationFast_Pa(plate_C) - panel.vapour_Pa[hour]!
  if (!isWet && excess_Pa >= 0) return
  const evaporation = faceEvaporation_kgm2s(panel, hour, h, excess_Pa, limit_kgm2s)
  out.q_Wm2 += weight * changeHeat_Jkg(plate_C) * evaporation
  out.slope_Wm2K +=
    weight * vapourSlope_Wm2K(panel, hour, plate_C, h, rise, excess_Pa, evaporation, limit_kgm2s)
  out.water_kgm2s -= weight * evaporation
}
