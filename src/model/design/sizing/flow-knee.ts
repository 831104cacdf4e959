import { loopDuty, type LoopSpec } from '#model/panels/loop'
import type { SizingResult } from './result.ts'

/** Flows offered to the knee, kg/s per m². */
const WATER_FLOWS_kgsm2 = [
  0.0005, 0.0007, 0.001, 0.0014, 0.002, 0.003, 0.004, 0.006, 0.008, 0.01, 0.013, 0.017, 0.022, 0.03, 0.04,
]
const AIR_FLOWS_kgsm2 = [0.0015, 0.0025, 0.004, 0.006, 0.009, 0.013, 0.018, 0.025, 0.035, 0.05]
/** Heat a good night gives at full flow, and the surface conductance that goes with it (references: 40–100 W/m², 8 W/m²K). */
const NIGHT_HEAT_Wm2 = 60
const NIGHT_SLOPE_Wm2K = 8
/** A watt more at the pump must bring at least this much more heat, W/W (common practice, no source). */
const WORTH_PER_PUMP_WATT = 20

export type FlowRows = SizingResult['flowKnee']

/** Heat as a share of that at unlimited flow, and pump power, at each of the flows offered, for `area_m2` of panel. */
export function flowRows(spec: LoopSpec, area_m2: number): FlowRows {
  const flows = spec.fluid === 'air' ? AIR_FLOWS_kgsm2 : WATER_FLOWS_kgsm2
  return flows.map((flow_kgsm2) => {
    const duty = loopDuty({ ...spec, flow_kgsm2 }, area_m2)
    const panelFactor = 1 / (1 + NIGHT_SLOPE_Wm2K / duty.fluidToPlate_Wm2K)
    const surface_WK = NIGHT_SLOPE_Wm2K * area_m2
    const ratio = duty.capacityRate_WK / surface_WK
    const heat_frac = ratio * (1 - Math.exp(-panelFactor / ratio))
    return { flow_kgsm2, heat_frac, pump_W: duty.pumpPower_W }
  })
}

/** Part of the start difference at which the panel must still take the stop difference from the fluid, and the share of any difference asked of it at most (common practice, no source). */
const STILL_RUNNING_frac = 0.5
const ASKED_MOST_frac = 0.5

/**
 * Flow per m² that is chosen for `area_m2`, kg/s m²: at the knee of heat against pump power, where heat − 20 × pump power is highest, but
 * no more than lets the panel take the stop difference from the fluid at half the start difference.
 * @param stop_frac  stop over start difference, 0…1
 */
export function chosenFlow(spec: LoopSpec, area_m2: number, stop_frac: number): number {
  const knee_kgsm2 = flowKnee(spec, area_m2)
  const duty = loopDuty({ ...spec, flow_kgsm2: knee_kgsm2 }, area_m2)
  const panel_Wm2K = 1 / (1 / NIGHT_SLOPE_Wm2K + 1 / duty.fluidToPlate_Wm2K)
  const perFlow_JkgK = duty.capacityRate_WK / (knee_kgsm2 * area_m2)
  const asked_frac = Math.min(ASKED_MOST_frac, stop_frac / STILL_RUNNING_frac)
  return Math.min(knee_kgsm2, panel_Wm2K / (-Math.log1p(-asked_frac) * perFlow_JkgK))
}

/** Flow per m² at the knee, kg/s m². */
function flowKnee(spec: LoopSpec, area_m2: number): number {
  const rows = flowRows(spec, area_m2)
  const worth = rows.map((row) => row.heat_frac * NIGHT_HEAT_Wm2 * area_m2 - WORTH_PER_PUMP_WATT * row.pump_W)
  const best = worth.indexOf(Math.max(...worth))
  const at = (k: number): number => Math.log(rows[k]!.flow_kgsm2)
  if (best === 0 || best === rows.length - 1) return rows[best]!.flow_kgsm2
  // The top of the parabola through the best and its neighbours, on the logarithm of the flow.
  const [left, right] = [at(best) - at(best - 1), at(best + 1) - at(best)]
  const fall = (worth[best]! - worth[best - 1]!) / left
  const rise = (worth[best + 1]! - worth[best]!) / right
  if (!(fall > rise)) return rows[best]!.flow_kgsm2
  const top = at(best) + (fall * right + rise * left) / (2 * (fall - rise))
  return Math.exp(Math.min(at(best + 1), Math.max(at(best - 1), top)))
}
