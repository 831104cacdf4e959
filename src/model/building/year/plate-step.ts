import { decay } from '#model/basis/numbers'
import { FULL_COVER_KGM2, type PanelPoint } from '#model/panels/plate'
import type { LoopFlow } from './loop-flow.ts'

/** Below this many time constants in a step the exponential is taken as its series. */
const SHORT_STEP = 1e-4
const SHORT_RAMP = 1e-2

/** Parts of a step that a plate drying off is stepped in: when it bares more than this share in it, under so little water, kg/m². */
const DRYING_PARTS = 4
const BARED_SHARE = 0.05
const LITTLE_WATER_KGM2 = 2 * FULL_COVER_KGM2

/** Parts that a step is taken in: several while a resting plate dries off, which takes minutes. */
export function dryingParts(water_kgm2: number, condensing_kgm2s: number, step_s: number): number {
  if (water_kgm2 === 0 || water_kgm2 >= LITTLE_WATER_KGM2) return 1
  return -condensing_kgm2s * step_s > BARED_SHARE * FULL_COVER_KGM2 ? DRYING_PARTS : 1
}

/**
 * The plate over one step, exactly: with fluid in at a steady temperature it relaxes exponentially,
 *
 *   C dT/dt = (u T_sink + v − k T) − (H T − r),   λ = (H + k)/C
 *   T_mean = T₀ + ψ Δt (u T_sink + v + r − (H + k) T₀)/C,   T_end likewise with φ
 *   φ = (1 − e^{−λΔt})/λΔt,   ψ = (1 − φ)/λΔt
 *
 * and, while the sink drifts by ṡ about the step's middle, T_mean + u ṡ Δt² (φ/2 − ψ)/(λΔt C) and
 * T_end + u ṡ Δt² (ψ − φ/2)/C: the exact answers to a constant and to a ramp, so that the system of room and store sees a plate without stiffness: T_mean = slope · T_sink + offset.
 * H T − r is the panel's tangent (heat given off); u, v, k are the loop's affine relations (all 0 at rest).
 */
export class PlateStep {
  /** Plate temperature at the step's beginning, °C. */
  start_C = 0
  step_s = 0
  /** How fast the sink's temperature changes, K/s. */
  drift_Ks = 0
  /** Heat given off: H T − r. */
  shed_WK = 0
  rest_W = 0
  /** Heat from the fluid: u T_sink + v − k T. */
  fromSink_WK = 0
  fromConst_W = 0
  fromPlate_WK = 0
  /** T_mean = meanSlope T_sink + meanOffset */
  meanSlope = 0
  meanOffset_C = 0
  private endWeight_K_W = 0
  private endRamp_C = 0
  private readonly perCapacity_K_J: number
  private readonly shed_m2: number

  /** @param shed_m2  area that sheds heat: of all panels, times their field factor */
  constructor(capacity_JK: number, shed_m2: number) {
    this.perCapacity_K_J = 1 / capacity_JK
    this.shed_m2 = shed_m2
  }

  /** Sets the loop's part: running with `flow` for a share of the step, or at rest with null. */
  setLoop(flow: LoopFlow | null, share = 1): void {
    if (flow === null) {
      this.fromSink_WK = this.fromConst_W = this.fromPlate_WK = 0
      return
    }
    const exchange_WK = share * flow.exchange_WK
    const toInlet = exchange_WK * (1 - flow.pipeShare)
    this.fromSink_WK = toInlet * flow.topSink
    this.fromConst_W = toInlet * flow.topConst_C + exchange_WK * flow.pipeShare * flow.outdoor_C
    this.fromPlate_WK = exchange_WK - toInlet * flow.topPlate
  }

  /** Sets a loop that brings the plate a heat of its own: sink_WK T_sink + constant_W, whatever the plate’s temperature. */
  setHeat(sink_WK: number, constant_W: number): void {
    this.fromSink_WK = sink_WK
    this.fromConst_W = constant_W
    this.fromPlate_WK = 0
  }

  /** Sets the tangent H T − r from the panel's at a point, times the area that sheds. */
  setTangent(point: PanelPoint): void {
    this.shed_WK = this.shed_m2 * point.slope_Wm2K
    this.rest_W = this.shed_WK * point.plate_C - this.shed_m2 * point.q_Wm2
  }

  /** Works out the weights for one step of `step_s` from `start_C`, with the sink drifting by `drift_Ks`. */
  prepare(): void {
    const { start_C, drift_Ks, step_s } = this
    const pace_K_W = step_s * this.perCapacity_K_J
    const back_WK = this.shed_WK + this.fromPlate_WK
    const z = back_WK * pace_K_W
    const perZ = 1 / z
    const end = z > SHORT_STEP ? (1 - decay(z)) * perZ : 1 - z / 2
    const mean = z > SHORT_STEP ? (1 - end) * perZ : 0.5 - z / 6
    const perWatt = mean * pace_K_W
    this.meanSlope = perWatt * this.fromSink_WK
    this.meanOffset_C = start_C + perWatt * (this.fromConst_W + this.rest_W - back_WK * start_C)
    this.endWeight_K_W = end * pace_K_W
    const ramp_C = this.fromSink_WK * drift_Ks * step_s * pace_K_W
    const short = z < SHORT_RAMP
    this.meanOffset_C += ramp_C * (short ? z / 24 - 1 / 12 : (end / 2 - mean) * perZ)
    this.endRamp_C = ramp_C * (short ? z / 12 : mean - end / 2)
  }

  /** Sets a mean that is known, with no fluid in the plate. */
  setMean(mean_C: number): void {
    this.meanSlope = 0
    this.meanOffset_C = mean_C
  }

  /** Mean plate temperature of the step for a mean sink temperature, °C. */
  mean_C(sink_C: number): number {
    return this.meanSlope * sink_C + this.meanOffset_C
  }

  /** Plate temperature at the step's end, °C. */
  end_C(sink_C: number): number {
    const back_WK = this.shed_WK + this.fromPlate_WK
    const net_W = this.fromSink_WK * sink_C + this.fromConst_W + this.rest_W - back_WK * this.start_C
    return this.start_C + this.endWeight_K_W * net_W + this.endRamp_C
  }
}
