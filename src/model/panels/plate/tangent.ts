import { Face } from './face.ts'
import { filmPart } from './film-tangent.ts'
import type { PanelHours, PanelPoint, PanelTangent } from './hours.ts'
import { evaporationLimit_kgm2s, wetness_frac } from './water.ts'

const anyFace = new Face()

/** Heat leaving the plate, its slope and the water gained, at one plate temperature in one hour. @param out overwritten */
export function panelTangent(
  panel: PanelHours,
  hour: number,
  plate_C: number,
  water_kgm2: number,
  out: PanelTangent,
): void {
  const point: PanelPoint = { plate_C, water_kgm2, q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }
  anyFace.set(panel, hour)
  tangentAt(anyFace, point)
  out.q_Wm2 = point.q_Wm2
  out.slope_Wm2K = point.slope_Wm2K
  out.water_kgm2s = point.water_kgm2s
}

/** The same at a point of a face that is set, which is filled in. The hour loop's innermost call: arithmetic, a square root and a table, no allocation. */
export function tangentAt(face: Face, point: PanelPoint): void {
  if (face.panel!.gap === null) bareTangent(face, point)
  else filmTangent(face, point)
}

function filmTangent(face: Face, point: PanelPoint): void {
  const { plate_C, water_kgm2 } = point
  const wet = wetness_frac(water_kgm2)
  const back = face.backLoss_Wm2K
  point.q_Wm2 = back * (plate_C - face.air_C)
  point.slope_Wm2K = back
  point.water_kgm2s = 0
  if (wet < 1) filmPart(face, plate_C, false, 1 - wet, 0, point)
  if (wet > 0) filmPart(face, plate_C, true, wet, evaporationLimit_kgm2s(water_kgm2), point)
}

/**
 * The same of a bare plate. Its dry and wet share have one temperature, so convection, saturation and vapour are
 * found once for both: dew gathers on the whole face, water dries from the wet share.
 */
export function bareTangent(face: Face, point: PanelPoint): void {
  face.expose(point)
  face.convect()
  face.evaporate()
  face.radiate()
  const y = face.temp_C - face.air_C
  const through = face.backLoss_Wm2K + face.h_Wm2K
  const share = face.evaporation_kgm2s < 0 ? 1 : face.wet_frac
  const heat_Jkg = share * face.changeHeat_Jkg
  point.q_Wm2 = through * y + face.radiated_Wm2 + heat_Jkg * face.evaporation_kgm2s
  point.slope_Wm2K =
    through + y * face.rise_Wm2K2 + face.radiatedSlope_Wm2K + heat_Jkg * face.evaporationSlope_kgm2sK
  point.water_kgm2s = -share * face.evaporation_kgm2s
}
