import { slopeAt, valueAt } from '#model/air/polynomial.ts'
import { saturationFast_Pa } from '#model/air/saturation-table.ts'
import { faceConvection_Wm2K, faceConvectionRise_Wm2K2, faceRoot } from '#model/panel/face-convection.ts'
import { faceEvaporation_kgm2s, vapourSlope_Wm2K } from '#model/panel/face-vapour.ts'
import { filmPart } from '#model/panel/film-tangent.ts'
import type { PanelHours, PanelPoint, PanelTangent } from '#model/panel/hours.ts'
import { changeHeat_Jkg, evaporationLimit_kgm2s, wetness_frac } from '#model/panel/water.ts'

/** Heat leaving the plate, its slope and the water gained, at one plate temperature in one hour. @param out overwritten */
export function panelTangent(
  panel: PanelHours,
  hour: number,
  plate_C: number,
  water_kgm2: number,
  out: PanelTangent,
): void {
  const point: PanelPoint = { plate_C, water_kgm2, q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }
  tangentAt(panel, hour, point)
  out.q_Wm2 = point.q_Wm2
  out.slope_Wm2K = point.slope_Wm2K
  out.water_kgm2s = point.water_kgm2s
}

/** The same at a point, which is filled in. The hour loop's innermost call: arithmetic, a square root and a table, no allocation. */
export function tangentAt(panel: PanelHours, hour: number, point: PanelPoint): void {
  if (panel.gap === null) bareTangent(panel, hour, point)
  else filmTangent(panel, hour, point)
}

function filmTangent(panel: PanelHours, hour: number, point: PanelPoint): void {
  const { plate_C, water_kgm2 } = point
  const wet = wetness_frac(water_kgm2)
  const back = panel.backLoss_Wm2K
  point.q_Wm2 = back * (plate_C - panel.air_C[hour]!)
  point.slope_Wm2K = back
  point.water_kgm2s = 0
  if (wet < 1) filmPart(panel, hour, plate_C, false, 1 - wet, 0, point)
  if (wet > 0) filmPart(panel, hour, plate_C, true, wet, evaporationLimit_kgm2s(water_kgm2), point)
}

/**
 * The same of a bare plate. Its dry and wet share have one temperature, so convection, saturation and vapour are
 * found once for both: dew gathers on the whole face, water dries from the wet share (half wet: 88 to 67 ns).
 */
export function bareTangent(panel: PanelHours, hour: number, point: PanelPoint): void {
  const { plate_C } = point
  const wet = wetness_frac(point.water_kgm2)
  const y = plate_C - panel.air_C[hour]!
  const root = faceRoot(panel, y)
  const h = faceConvection_Wm2K(panel, hour, y, root)
  const rise = faceConvectionRise_Wm2K2(panel, hour, y, root)
  const back = panel.backLoss_Wm2K
  let q_Wm2 = (back + h) * y
  let slope_Wm2K = back + h + y * rise
  if (wet < 1) {
    const { plateEmission } = panel.dryExchange
    q_Wm2 += (1 - wet) * (valueAt(plateEmission, plate_C) - panel.dryGain.plate_Wm2[hour]!)
    slope_Wm2K += (1 - wet) * slopeAt(plateEmission, plate_C)
  }
  if (wet > 0) {
    const { plateEmission } = panel.wetExchange
    q_Wm2 += wet * (valueAt(plateEmission, plate_C) - panel.wetGain.plate_Wm2[hour]!)
    slope_Wm2K += wet * slopeAt(plateEmission, plate_C)
  }
  const excess_Pa = saturationFast_Pa(plate_C) - panel.vapour_Pa[hour]!
  const share = excess_Pa < 0 ? 1 : wet
  let evaporation = 0
  if (share > 0) {
    const limit_kgm2s = wet > 0 ? evaporationLimit_kgm2s(point.water_kgm2) : 0
    evaporation = faceEvaporation_kgm2s(panel, hour, h, excess_Pa, limit_kgm2s)
    q_Wm2 += share * changeHeat_Jkg(plate_C) * evaporation
    slope_Wm2K += share * vapourSlope_Wm2K(panel, hour, plate_C, h, rise, excess_Pa, evaporation, limit_kgm2s)
  }
  point.q_Wm2 = q_Wm2
  point.slope_Wm2K = slope_Wm2K
  point.water_kgm2s = -share * evaporation
}
