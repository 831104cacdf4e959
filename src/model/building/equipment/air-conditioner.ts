/** A small room air conditioner with its condenser outdoors. */
export interface AirConditionerSpec {
  /** Sensible output at 35 °C outdoors, W. */
  readonly rated_W: number
  /** Total cooling over electricity at 35 °C outdoors, –. */
  readonly ratedCop_frac: number
  /** Share of its cooling that is sensible, 0…1. */
  readonly sensible_frac: number
}

/** Fall of output and efficiency for each kelvin over 35 °C outdoors (from memory: 0.6–1.2 and 2–3 %). */
const CAPACITY_FALL_1K = 0.009
const COP_FALL_1K = 0.025
const RATED_C = 35
/** No better than this at mild outdoor temperatures, over the rated efficiency (common practice, no source). */
const BEST_TIMES = 1.5
const LEAST_SHARE = 0.3

/** Sensible output that can be had, W. */
export function availableCooling_W({ rated_W }: AirConditionerSpec, outdoor_C: number): number {
  return rated_W * Math.max(LEAST_SHARE, 1 - CAPACITY_FALL_1K * Math.max(0, outdoor_C - RATED_C))
}

/** Total cooling over electricity at an outdoor temperature, –. */
export function cop_frac({ ratedCop_frac }: AirConditionerSpec, outdoor_C: number): number {
  const times = 1 - COP_FALL_1K * (outdoor_C - RATED_C)
  return ratedCop_frac * Math.min(BEST_TIMES, Math.max(LEAST_SHARE, times))
}

/** Electricity for a sensible cooling, W: P = Q / (SHR · COP). */
export function airConditionerPower_W(
  spec: AirConditionerSpec,
  cooling_W: number,
  outdoor_C: number,
): number {
  return cooling_W / (spec.sensible_frac * cop_frac(spec, outdoor_C))
}
