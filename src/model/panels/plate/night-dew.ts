import type { PanelHours, PanelTangent } from './hours.ts'
import { panelTangent } from './tangent.ts'

/** The search for the plate that takes in nothing ends within this, W/m²: a ten-thousandth of a gram of water an hour and m². */
const CLOSED_Wm2 = 0.05
const MOST_STEPS = 30
const LONGEST_STEP_K = 10

const found: PanelTangent = { q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }

/**
 * Water that a plate held at a temperature gains under the sky, kg/m² s (negative: it dries). What forms is carried to the face by
 * the air (heat and mass alike, Chilton & Colburn 1934), and its heat must be carried off by the sky. While the plate gives
 * heat off both hold by themselves. A plate colder than the sky alone would make it takes heat in: what the night allows is then
 * what forms at the temperature at which it takes in nothing, wet as it is; more would be the dew of a refrigerated plate.
 * @param held  the tangent at that temperature
 */
export function waterUnderSky_kgm2s(
  panel: PanelHours,
  hour: number,
  plate_C: number,
  water_kgm2: number,
  held: PanelTangent,
): number {
  if (held.water_kgm2s <= 0 || held.q_Wm2 >= -CLOSED_Wm2) return held.water_kgm2s
  let rest_C = plate_C
  let { q_Wm2, slope_Wm2K } = held
  for (let i = 0; i < MOST_STEPS && Math.abs(q_Wm2) > CLOSED_Wm2; i++) {
    rest_C += Math.max(-LONGEST_STEP_K, Math.min(LONGEST_STEP_K, -q_Wm2 / slope_Wm2K))
    panelTangent(panel, hour, rest_C, water_kgm2, found)
    q_Wm2 = found.q_Wm2
    slope_Wm2K = found.slope_Wm2K
  }
  return Math.max(0, Math.min(held.water_kgm2s, found.water_kgm2s))
}
