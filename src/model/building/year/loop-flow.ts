import type { LoopDuty } from '#model/panels/loop'
import { panelEffectiveness, panelExchange_WK } from './panel-exchange.ts'

/**
 * The running loop as affine relations between plate, charged node and outdoor air. With a the share of the air's
 * difference that half the pipe run lets in and g = K/ṁc:
 *
 *   T_in   = (1−a) T_top + a T_out                         into the panel
 *   T_ret  = (1−g) T_in + g T_plate                        out of the panel
 *   T_back = (1−a) T_ret + a T_out + P/ṁc                  back at the store, pump heat P included
 *   T_top  = s T_sink + (1−s) T_back                       leaving the store (s = 1 for a tank)
 */
export class LoopFlow {
  readonly rate_WK: number
  readonly pump_W: number
  /** a, the same for supply and return. */
  readonly pipeShare: number
  exchange_WK = 0
  outdoor_C = 0
  /** T_top = topSink T_sink + topPlate T_plate + topConst */
  topSink = 1
  topPlate = 0
  topConst_C = 0
  /** T_back = backTop T_top + backPlate T_plate + backConst */
  backTop = 0
  backPlate = 0
  backConst_C = 0
  private readonly duty: LoopDuty
  readonly sinkShare: number

  constructor(duty: LoopDuty, sinkShare: number) {
    this.duty = duty
    this.rate_WK = duty.capacityRate_WK
    this.pump_W = duty.pumpPower_W
    this.pipeShare = pipeShareOf(duty)
    this.sinkShare = sinkShare
  }

  /** Sets the relations for the plate's slope U (W/m²K) and the outdoor air. */
  set(slope_Wm2K: number, outdoor_C: number): void {
    const rate = this.rate_WK
    const a = this.pipeShare
    this.exchange_WK = panelExchange_WK(this.duty, slope_Wm2K)
    const g = this.exchange_WK / rate
    this.outdoor_C = outdoor_C
    this.backTop = (1 - a) * (1 - a) * (1 - g)
    this.backPlate = (1 - a) * g
    this.backConst_C = (1 - a) * (1 - g) * a * outdoor_C + a * outdoor_C + this.pump_W / rate
    if (this.sinkShare === 1) return
    const s = this.sinkShare
    const own = 1 / (1 - (1 - s) * this.backTop)
    this.topSink = s * own
    this.topPlate = (1 - s) * this.backPlate * own
    this.topConst_C = (1 - s) * this.backConst_C * own
  }

  /**
   * The charged node from which a loop pays, the plate in balance: its panel takes `drop_K` from the fluid (of a mass: against
   * that), and no less than pump and pipes bring, °C. Steadily
   *
   *   panel:  T_sink = T_eq + drop (1 − (1−E) (1−s))/E
   *   loop:   T_sink = T_back = q/(1 − p), as in `steadyParts`
   *
   * @param slope_Wm2K  of the plate in balance, at `balance_C`
   */
  paysFrom_C(slope_Wm2K: number, balance_C: number, outdoor_C: number, drop_K: number): number {
    const { taken, p, q_C } = steadyParts(this.duty, slope_Wm2K, balance_C, outdoor_C)
    const panel_C = balance_C + (drop_K * (1 - (1 - taken) * (1 - this.sinkShare))) / taken
    return Math.max(panel_C, q_C / (1 - p))
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

function pipeShareOf({ capacityRate_WK, pipeGain_WK }: LoopDuty): number {
  return capacityRate_WK > 0 ? 1 - Math.exp((-0.5 * pipeGain_WK) / capacityRate_WK) : 0
}

/**
 * The steady loop over a plate in balance, T_ret = (1 − E) T_in + E T_eq:
 *
 *   T_back = p T_top + q,  p = (1−a)² (1−E),  q = (1−a) E T_eq + a (1 + (1−a) (1−E)) T_out + P/ṁc
 */
function steadyParts(
  duty: LoopDuty,
  slope_Wm2K: number,
  balance_C: number,
  outdoor_C: number,
): { readonly taken: number; readonly p: number; readonly q_C: number } {
  const a = pipeShareOf(duty)
  const taken = panelEffectiveness(duty, slope_Wm2K)
  const p = (1 - a) * (1 - a) * (1 - taken)
  const rise_K = duty.pumpPower_W / duty.capacityRate_WK
  const q_C = (1 - a) * taken * balance_C + a * (1 + (1 - a) * (1 - taken)) * outdoor_C + rise_K
  return { taken, p, q_C }
}

/** What comes back steadily to a store at 0 °C, or to a mass at 0 °C that gives the fluid a share of its difference, °C. */
export function steadyBack_C(
  duty: LoopDuty,
  sinkShare: number,
  slope_Wm2K: number,
  balance_C: number,
  outdoor_C: number,
): number {
  const { p, q_C } = steadyParts(duty, slope_Wm2K, balance_C, outdoor_C)
  return q_C / (1 - p * (1 - sinkShare))
}
