import { saturationPressure_Pa } from './moist-air.ts'

/**
 * Saturation pressure for the hour loop: straight lines between values 0.1 K apart from −100 to 120 °C (ice below
 * 0 °C). Off by less than 0.0001 K of temperature; outside the table its end segments go on.
 */
export const LOWEST_C = -100
export const STEPS_PER_K = 10
export const SEGMENTS = 220 * STEPS_PER_K
export const SATURATION_PA = new Float64Array(SEGMENTS + 1)
for (let i = 0; i <= SEGMENTS; i++) SATURATION_PA[i] = saturationPressure_Pa(LOWEST_C + i / STEPS_PER_K)
