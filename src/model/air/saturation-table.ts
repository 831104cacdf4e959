import { saturationPressure_Pa } from '#model/air/moist-air.ts'

/**
 * Saturation pressure for the hour loop: straight lines between values 0.1 K apart from −100 to 120 °C (ice below
 * 0 °C). Off by less than 0.0001 K of temperature; outside the table its end segments go on.
 */
const LOWEST_C = -100
const STEPS_PER_K = 10
const SEGMENTS = 220 * STEPS_PER_K
const values = new Float64Array(SEGMENTS + 1)
for (let i = 0; i <= SEGMENTS; i++) values[i] = saturationPressure_Pa(LOWEST_C + i / STEPS_PER_K)

function segment(temp_C: number): number {
  const i = Math.floor((temp_C - LOWEST_C) * STEPS_PER_K)
  return i < 0 ? 0 : i >= SEGMENTS ? SEGMENTS - 1 : i
}

/** Saturation pressure from the table, Pa. */
export function saturationFast_Pa(temp_C: number): number {
  const i = segment(temp_C)
  const low = values[i]!
  return low + (values[i + 1]! - low) * ((temp_C - LOWEST_C) * STEPS_PER_K - i)
}

/** Slope of the table at a temperature, Pa/K. */
export function saturationFastSlope_PaK(temp_C: number): number {
  const i = segment(temp_C)
  return (values[i + 1]! - values[i]!) * STEPS_PER_K
}
