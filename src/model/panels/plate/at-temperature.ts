import { HOUR_S } from '#model/basis/hours'
import type { PanelHours, PanelTangent } from './hours.ts'
import { waterUnderSky_kgm2s } from './night-dew.ts'
import { panelTangent } from './tangent.ts'
import { waterAfter_kgm2 } from './water.ts'

/** A panel whose plate is held at one temperature through the record, per hour. */
export interface HeldPanel {
  /** Net heat leaving the plate, W/m². */
  readonly heat_Wm2: Float64Array
  /** Temperature of the exposed surface (plate, or film), °C. */
  readonly surface_C: Float64Array
  /** Dew or frost on the surface at the hour's end, kg/m². */
  readonly water_kgm2: Float64Array
  /** Dew or frost formed in the hour, kg/m²: what the air brings and the sky carries the heat away of (`waterUnderSky_kgm2s`). */
  readonly formed_kgm2: Float64Array
}

const SUB_STEPS = 4

/** Heat, surface temperature and dew of a plate held at `plate_C` (°C), stepped a quarter hour at a time. */
export function panelAtTemperature(panel: PanelHours, plate_C: number): HeldPanel {
  const column = (): Float64Array => new Float64Array(panel.hours)
  const held = { heat_Wm2: column(), surface_C: column(), water_kgm2: column(), formed_kgm2: column() }
  const tangent: PanelTangent = { q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }
  const step_s = HOUR_S / SUB_STEPS
  let water_kgm2 = 0
  for (let h = 0; h < panel.hours; h++) {
    for (let k = 0; k < SUB_STEPS; k++) {
      panelTangent(panel, h, plate_C, water_kgm2, tangent)
      held.heat_Wm2[h]! += tangent.q_Wm2 / SUB_STEPS
      const gained_kgm2s = waterUnderSky_kgm2s(panel, h, plate_C, water_kgm2, tangent)
      held.formed_kgm2[h]! += Math.max(0, gained_kgm2s) * step_s
      water_kgm2 = waterAfter_kgm2(water_kgm2, gained_kgm2s, step_s, plate_C, panel.waterLimit_kgm2)
    }
    held.water_kgm2[h] = water_kgm2
    held.surface_C[h] = panel.surface_C[h]! + panel.surfaceSlope[h]! * (plate_C - panel.equilibrium_C[h]!)
  }
  return held
}
