import { saturationFastSlope_PaK } from '#model/air/saturation-table.ts'
import type { PanelHours } from '#model/panel/hours.ts'
import { changeHeat_Jkg } from '#model/panel/water.ts'

/**
 * Evaporation from the wet or dry share of a face (negative: dew or frost), kg/m² s. The dry share only gathers dew.
 * @param h            convection of the face, W/m²K
 * @param excess_Pa    saturation at the face over the air's vapour pressure
 * @param limit_kgm2s  fastest evaporation (0 on the dry share)
 */
export function faceEvaporation_kgm2s(
  panel: PanelHours,
  hour: number,
  h: number,
  excess_Pa: number,
  limit_kgm2s: number,
): number {
  if (excess_Pa >= 0 && limit_kgm2s === 0) return 0
  const wish = panel.massTransfer[hour]! * h * excess_Pa
  return wish < limit_kgm2s ? wish : limit_kgm2s
}

/**
 * What evaporation and dew add to the slope of a face's heat, W/m²K. Both factors of h (e_sat − e_air) move; held at
 * zero where still air would make it negative, so that a step taken with it stays stable.
 * @param rise         ∂h/∂T, W/m²K²
 * @param evaporation  from `faceEvaporation_kgm2s`; at its limit it does not change
 */
export function vapourSlope_Wm2K(
  panel: PanelHours,
  hour: number,
  face_C: number,
  h: number,
  rise: number,
  excess_Pa: number,
  evaporation: number,
  limit_kgm2s: number,
): number {
  if (evaporation >= limit_kgm2s) return 0
  const slope = h * saturationFastSlope_PaK(face_C) + rise * excess_Pa
  return slope > 0 ? changeHeat_Jkg(face_C) * panel.massTransfer[hour]! * slope : 0
}
