import { fluidProperties, LOOP_TEMP_C, pressureGradient_Pam, WATER_RULE } from '#model/panels/loop'

/** Pipe that is laid in slabs: 16 × 2.0 mm of cross-linked polyethylene, so far apart, m (common practice, no source). */
const PIPE = { outer_m: 0.016, inner_m: 0.012, wall_WmK: 0.38, spacing_m: 0.15 } as const
/** Concrete, W/mK, and water in the pipe at some tenths of a metre a second, W/m²K (handbook values, from memory). */
const CONCRETE_WmK = 1.6
const WATER_Wm2K = 1000
/** A circuit is no longer than this, m (common practice, no source). */
const CIRCUIT_m = 80
/** Fittings and bends over the loss of the straight pipe, as in the panel loop (common practice, no source). */
const BENDS = 1.4
const MOST_CIRCUITS = 40

export interface MassPipes {
  readonly length_m: number
  readonly circuits: number
  readonly inner_m: number
  readonly spacing_m: number
  /** Loss of one circuit at its share of the flow, Pa. */
  readonly loss_Pa: number
  /** Water in all circuits, m³. */
  readonly volume_m3: number
}

/**
 * Pipe in a slab or ceiling that has a conductance to the concrete around it.
 *   1/k = 1/(π d_i h) + ln(d_o/d_i)/(2π λ_w) + ln(s/(π d_o))/(2π λ)
 * per metre of pipe, the last term the shape of many pipes in a plane (Koschenz & Lehmann 2000, from memory); in as many equal
 * circuits as keep the loss of one under a limit.
 * @param conductance_WK  between fluid and mass, W/K
 * @param flow_m3s  of all circuits together, m³/s
 * @param most_Pa  a circuit loses no more than this, where so many circuits do it, Pa
 */
export function massPipes(conductance_WK: number, flow_m3s: number, most_Pa: number): MassPipes {
  const { outer_m, inner_m, wall_WmK, spacing_m } = PIPE
  const resistance_mKW =
    1 / (Math.PI * inner_m * WATER_Wm2K) +
    Math.log(outer_m / inner_m) / (2 * Math.PI * wall_WmK) +
    Math.log(spacing_m / (Math.PI * outer_m)) / (2 * Math.PI * CONCRETE_WmK)
  const length_m = conductance_WK * resistance_mKW
  const fluid = fluidProperties('water', 0, LOOP_TEMP_C)
  const lossOf = (circuits: number): number =>
    (BENDS *
      pressureGradient_Pam({
        flow_kgs: (flow_m3s * fluid.density_kgm3) / circuits,
        bore_m: inner_m,
        roughness_m: WATER_RULE.roughness_m,
        fluid,
      }) *
      length_m) /
    circuits
  let circuits = Math.max(1, Math.ceil(length_m / CIRCUIT_m))
  while (lossOf(circuits) > most_Pa && circuits < MOST_CIRCUITS) circuits++
  return {
    length_m,
    circuits,
    inner_m,
    spacing_m,
    loss_Pa: lossOf(circuits),
    volume_m3: 0.25 * Math.PI * inner_m * inner_m * length_m,
  }
}
