import { loopDuty, type LoopSpec } from '#model/panels/loop'
import type { SizingResult } from './result.ts'

/** Flows offered to the knee, kg/s per m². */
const WATER_FLOWS_kgsm2 = [0.002, 0.003, 0.004, 0.006, 0.008, 0.01, 0.013, 0.017, 0.022, 0.03, 0.04]
const AIR_FLOWS_kgsm2 = [0.004, 0.006, 0.009, 0.013, 0.018, 0.025, 0.035, 0.05]
/** Heat a good night gives at full flow, and the surface conductance that goes with it (references: 40–100 W/m², 8 W/m²K). */
const NIGHT_HEAT_Wm2 = 60
const NIGHT_SLOPE_Wm2K = 8
/** A watt more at the pump must bring at least this much more heat, W/W (common practice, no source). */
const WORTH_PER_PUMP_WATT = 20

/**
 * Flow per m² at the knee of heat against pump power: the one with the highest heat − 20 × pump power.
 * @returns the rows tried (heat as a share of that at unlimited flow; pump power for `area_m2`) and the chosen flow
 */
export function flowKnee(
  spec: LoopSpec,
  area_m2: number,
): { flow_kgsm2: number; rows: SizingResult['flowKnee'] } {
  const flows = spec.fluid === 'air' ? AIR_FLOWS_kgsm2 : WATER_FLOWS_kgsm2
  const rows = flows.map((flow_kgsm2) => {
    const duty = loopDuty({ ...spec, flow_kgsm2 }, area_m2)
    const panelFactor = 1 / (1 + NIGHT_SLOPE_Wm2K / duty.fluidToPlate_Wm2K)
    const surface_WK = NIGHT_SLOPE_Wm2K * area_m2
    const ratio = duty.capacityRate_WK / surface_WK
    const heat_frac = ratio * (1 - Math.exp(-panelFactor / ratio))
    return { flow_kgsm2, heat_frac, pump_W: duty.pumpPower_W }
  })
  const worth = (row: (typeof rows)[number]): number =>
    row.heat_frac * NIGHT_HEAT_Wm2 * area_m2 - WORTH_PER_PUMP_WATT * row.pump_W
  const best = rows.reduce((chosen, row) => (worth(row) > worth(chosen) ? row : chosen))
  return { flow_kgsm2: best.flow_kgsm2, rows }
}
