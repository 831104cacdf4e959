import type { LoopDuty } from '#model/loop/spec.ts'
import type { Nodes } from '#model/year/nodes.ts'

/**
 * The running loop as affine relations between plate, charged node and outdoor air, worked out once for each
 * change of the exchange. With a the share of the air's difference that half the pipe run lets in and g = K/ṁc:
 *
 *   T_in   = (1−a) T_top + a T_out                         into the panel
 *   T_ret  = (1−g) T_in + g T_plate                        out of the panel
 *   T_back = (1−a) T_ret + a T_out + P/ṁc                  back at the store, pump heat P included
 *   T_top  = s T_sink + (1−s) T_back                       leaving the store (s = 1 for a tank)
 */
export class LoopFlow {
  rate_WK = 0
  exchange_WK = 0
  pipeShare = 0
  pump_W = 0
  /** T_top = topSink T_sink + topPlate T_plate + topConst */
  topSink = 1
  topPlate = 0
  topConst_C = 0
  /** T_back = backTop T_top + backPlate T_plate + backConst */
  backTop = 0
  backPlate = 0
  backConst_C = 0
  private outdoor_C = 0

  /** Sets the relations for one hour's outdoor air and one exchange conductance K (W/K). */
  set(duty: LoopDuty, nodes: Nodes, exchange_WK: number, outdoor_C: number): void {
    const rate = duty.capacityRate_WK
    const a = 1 - Math.exp((-0.5 * duty.pipeGain_WK) / rate)
    const g = exchange_WK / rate
    this.rate_WK = rate
    this.exchange_WK = exchange_WK
    this.pipeShare = a
    this.pump_W = duty.pumpPower_W
    this.outdoor_C = outdoor_C
    this.backTop = (1 - a) * (1 - a) * (1 - g)
    this.backPlate = (1 - a) * g
    this.backConst_C = (1 - a) * (1 - g) * a * outdoor_C + a * outdoor_C + duty.pumpPower_W / rate
    const s = nodes.sinkShare
    const own = 1 / (1 - (1 - s) * this.backTop)
    this.topSink = s * own
    this.topPlate = (1 - s) * this.backPlate * own
    this.topConst_C = (1 - s) * this.backConst_C * own
  }

  top_C(sink_C: number, plate_C: number): number {
    return this.topSink * sink_C + this.topPlate * plate_C + this.topConst_C
  }
  into_C(top_C: number): number {
    return (1 - this.pipeShare) * top_C + this.pipeShare * this.outdoor_C
  }
  return_C(into_C: number, plate_C: number): number {
    const g = this.exchange_WK / this.rate_WK
    return (1 - g) * into_C + g * plate_C
  }
  back_C(top_C: number, plate_C: number): number {
    return this.backTop * top_C + this.backPlate * plate_C + this.backConst_C
  }
  /** Heat that both halves of the pipe run pick up, W. */
  pipes_W(top_C: number, return_C: number): number {
    return this.rate_WK * this.pipeShare * (this.outdoor_C - top_C + (this.outdoor_C - return_C))
  }
}
