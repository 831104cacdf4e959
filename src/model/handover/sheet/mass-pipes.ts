/** Pipe that is laid in slabs: 16 × 2.0 mm of cross-linked polyethylene, so far apart, m (common practice, no source). */
const PIPE = { outer_m: 0.016, inner_m: 0.012, wall_WmK: 0.38, spacing_m: 0.15 } as const
/** Concrete, W/mK, and water in the pipe at some tenths of a metre a second, W/m²K (handbook values, from memory). */
const CONCRETE_WmK = 1.6
const WATER_Wm2K = 1000
/** A circuit is no longer than this, m (common practice, no source). */
const CIRCUIT_m = 80

export interface MassPipes {
  readonly length_m: number
  readonly circuits: number
  readonly inner_m: number
  readonly spacing_m: number
}

/**
 * Pipe in a slab or ceiling that has a conductance to the concrete around it.
 *   1/k = 1/(π d_i h) + ln(d_o/d_i)/(2π λ_w) + ln(s/(π d_o))/(2π λ)
 * per metre of pipe, the last term the shape of many pipes in a plane (Koschenz & Lehmann 2000, from memory).
 * @param conductance_WK  between fluid and mass, W/K
 */
export function massPipes(conductance_WK: number): MassPipes {
  const { outer_m, inner_m, wall_WmK, spacing_m } = PIPE
  const resistance_mKW =
    1 / (Math.PI * inner_m * WATER_Wm2K) +
    Math.log(outer_m / inner_m) / (2 * Math.PI * wall_WmK) +
    Math.log(spacing_m / (Math.PI * outer_m)) / (2 * Math.PI * CONCRETE_WmK)
  const length_m = conductance_WK * resistance_mKW
  return { length_m, circuits: Math.max(1, Math.ceil(length_m / CIRCUIT_m)), inner_m, spacing_m }
}
