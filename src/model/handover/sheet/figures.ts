import type { Plant } from './plant.ts'
import { figure, type Figure } from '#model/basis/words'

/** Conductivity of foam boards, W/mK, and the still air behind them, m²K/W (common practice, no source). */
export const FOAM_WmK = 0.035
const BACK_AIR_m2KW = 0.1

/** Foam that gives a back loss, m; 0 where the air alone does. */
export function backInsulation_m(backLoss_Wm2K: number): number {
  if (backLoss_Wm2K <= 0) return Infinity
  return Math.max(0, FOAM_WmK * (1 / backLoss_Wm2K - BACK_AIR_m2KW))
}

/** The smallest pumps and fans that are sold draw about this much, W (common practice, no source). */
export const SMALLEST_MOVER_W = 5

/** A flow meter shows the flow in the middle of its range: so much of it. */
export const METER_RANGE = [0.4, 2] as const
/** Between two clips of a pipe, m (common practice, no source). */
export const CLIPS_m = 1.2

/** The loop's flow in the unit its pump or fan is bought by. */
export function flowFigure({ loopSpec, flow_m3s }: Plant, share = 1): Figure {
  return figure(flow_m3s * share, loopSpec.fluid === 'air' ? 'airFlow' : 'liquidFlow', 2)
}

/** A pressure as pumps and fans state it. */
export function headFigure({ loopSpec }: Plant, pressure_Pa: number): Figure {
  return figure(pressure_Pa, loopSpec.fluid === 'air' ? 'fanPressure' : 'head', 3)
}
