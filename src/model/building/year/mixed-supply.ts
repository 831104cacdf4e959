import type { LoopFlow } from './loop-flow.ts'

/**
 * The loop of pipes in a slab or ceiling while a mixing valve holds their supply at its lowest, T_s: as much return water
 * is blended in as brings it up to that, and the rest of the flow goes to the panel.
 *
 *   out of the mass:  T_top = s T_sink + (1 − s) T_s,  Q = ṁc s (T_sink − T_s)
 *   to the panel:     Q + pump + pipes,  pipes = ṁc a (2 T_out − T_top − T_s)
 */
export class MixedSupply {
  supply_C = 0
  private readonly flow: LoopFlow

  constructor(flow: LoopFlow) {
    this.flow = flow
  }

  /** Heat into the mass: charging_W − charging_WK T_sink. */
  get charging_WK(): number {
    return this.flow.rate_WK * this.flow.sinkShare
  }
  get charging_W(): number {
    return this.charging_WK * this.supply_C
  }

  /** Heat to the panel: toPanel_WK T_sink + toPanel_W. */
  get toPanel_WK(): number {
    return this.charging_WK * (1 - this.flow.pipeShare)
  }
  get toPanel_W(): number {
    const { rate_WK, pipeShare, outdoor_C, sinkShare, pump_W } = this.flow
    return pump_W - this.charging_W + rate_WK * pipeShare * (2 * outdoor_C - (2 - sinkShare) * this.supply_C)
  }

  /** Water that leaves the mass, °C. */
  top_C(sink_C: number): number {
    return this.flow.sinkShare * sink_C + (1 - this.flow.sinkShare) * this.supply_C
  }
}
