import { decay } from '#model/basis/numbers'
import type { LoopDuty } from '#model/panels/loop'

/** Below this slope a plate exchanges next to nothing and the series form of the exchange is used, W/m²K. */
export const SMALL_SLOPE_Wm2K = 1e-3

/**
 * Conductance between the fluid entering the panel and the mean plate, W/K, such that a plate in balance gives
 * exactly the heat of Hottel, Whillier and Bliss:
 *
 *   Q = ṁc E (T_in − T_eq),  E = 1 − exp(−F′ U A / ṁc),  F′ = 1 / (1 + U / G_fp)
 *   Q = K (T_in − T_plate),  A U (T_plate − T_eq) = Q   ⇒   K = ṁc E / (1 − ṁc E / (A U))
 *
 * so that the plate can be a node with its own heat capacity and still meet the steady formula.
 * @param slope_Wm2K  U, slope of the plate's heat loss at its temperature, W/m²K, > 0
 * Source: Duffie & Beckman, Solar Engineering of Thermal Processes, ch. 6 (F′, F_R); the node form is our own algebra.
 */
export function panelExchange_WK(duty: LoopDuty, slope_Wm2K: number): number {
  const rate_WK = duty.capacityRate_WK
  if (rate_WK <= 0 || duty.area_m2 <= 0) return 0
  if (slope_Wm2K < SMALL_SLOPE_Wm2K) {
    return duty.area_m2 / (1 / duty.fluidToPlate_Wm2K + duty.area_m2 / (2 * rate_WK))
  }
  const taken_WK = rate_WK * panelEffectiveness(duty, slope_Wm2K)
  return taken_WK / (1 - taken_WK / (slope_Wm2K * duty.area_m2))
}

/**
 * Share of the difference between fluid entering and plate in balance by which the fluid is cooled, E above, 0…1.
 * @param slope_Wm2K  U, W/m²K, > 0
 */
export function panelEffectiveness(duty: LoopDuty, slope_Wm2K: number): number {
  if (duty.capacityRate_WK <= 0 || slope_Wm2K <= 0) return 0
  const panelFactor = 1 / (1 + slope_Wm2K / duty.fluidToPlate_Wm2K)
  const surface_WK = slope_Wm2K * duty.area_m2
  return 1 - decay((panelFactor * surface_WK) / duty.capacityRate_WK)
}
