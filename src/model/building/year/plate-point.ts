import type { PanelPoint } from '#model/panels/plate'

export function newPoint(): PanelPoint {
  return { plate_C: 0, water_kgm2: 0, q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }
}

/** Field by field: a copy by spreading would be an object a step. */
export function copyPoint(from: Readonly<PanelPoint>, to: PanelPoint): void {
  to.plate_C = from.plate_C
  to.water_kgm2 = from.water_kgm2
  to.q_Wm2 = from.q_Wm2
  to.slope_Wm2K = from.slope_Wm2K
  to.water_kgm2s = from.water_kgm2s
}
