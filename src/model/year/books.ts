import type { RoomModel } from '#model/room/spec.ts'
import type { Ledger } from '#model/year/result.ts'

/**
 * Adds up what flows. Kept as plain sums of the very flows of each stage, so that in − out − stored vanishes to
 * rounding. Hour sums are cleared by the caller at each hour's beginning.
 */
export class Books {
  envelope_J = 0
  gains_J = 0
  ground_J = 0
  nightVent_J = 0
  panelOut_J = 0
  pipes_J = 0
  pumpHeat_J = 0
  storeGain_J = 0
  storeGainFromOutside_J = 0
  delivered_J = 0
  /** Sums over the current hour. */
  hourRoom_Cs = 0
  hourAir_Cs = 0
  hourTaken_J = 0
  hourDelivered_J = 0
  hourElectric_J = 0
  hourReturn_Cs = 0
  hourRun_s = 0
  private readonly lean: boolean

  constructor(lean: boolean) {
    this.lean = lean
  }

  clearHour(): void {
    this.hourRoom_Cs = this.hourAir_Cs = this.hourTaken_J = this.hourDelivered_J = 0
    this.hourElectric_J = this.hourReturn_Cs = this.hourRun_s = 0
  }

  clearAll(): void {
    this.envelope_J = this.gains_J = this.ground_J = this.nightVent_J = this.panelOut_J = 0
    this.pipes_J = this.pumpHeat_J = this.storeGain_J = this.storeGainFromOutside_J = this.delivered_J = 0
    this.clearHour()
  }

  room(
    room: RoomModel,
    hour: number,
    air_C: number,
    fabric_C: number,
    slab_C: number,
    venting: boolean,
    weight_s: number,
  ): void {
    const [wAir, wFabric, wSlab] = room.operativeWeights
    this.hourRoom_Cs += weight_s * (wAir * air_C + wFabric * fabric_C + wSlab * slab_C)
    if (this.lean) return
    this.hourAir_Cs += weight_s * air_C
    const { sun_W, gains_W, toSlab_W } = room.sunAndGains
    const inside_W = sun_W[hour]! + gains_W[hour]!
    const slabNet_W = room.slabDrive_W[hour]! - room.slabLoss_WK * slab_C
    const airNet_W = room.airDrive_W[hour]! - room.airLoss_WK[hour]! * air_C
    const fabricNet_W = room.fabricDrive_W[hour]! - room.fabricLoss_WK[hour]! * fabric_C
    this.gains_J += weight_s * inside_W
    this.ground_J += weight_s * (slabNet_W - toSlab_W[hour]!)
    this.envelope_J += weight_s * (airNet_W + fabricNet_W - (inside_W - toSlab_W[hour]!))
    if (venting) this.nightVent_J += weight_s * room.nightVent_WK * (room.outdoor_C[hour]! - air_C)
  }

  loop(
    shed_W: number,
    taken_W: number,
    pipes_W: number,
    pump_W: number,
    return_C: number,
    weight_s: number,
  ): void {
    this.panelOut_J += weight_s * shed_W
    this.pipes_J += weight_s * pipes_W
    this.pumpHeat_J += weight_s * pump_W
    this.hourTaken_J += weight_s * taken_W
    this.hourElectric_J += weight_s * pump_W
    if (Number.isNaN(return_C)) return
    this.hourReturn_Cs += weight_s * return_C
    this.hourRun_s += weight_s
  }

  tank(gain_W: number, fromOutside: boolean, delivered_W: number, fan_W: number, weight_s: number): void {
    this.storeGain_J += weight_s * gain_W
    if (fromOutside) this.storeGainFromOutside_J += weight_s * gain_W
    this.delivered_J += weight_s * delivered_W
    this.pumpHeat_J += weight_s * fan_W
    this.hourDelivered_J += weight_s * delivered_W
    this.hourElectric_J += weight_s * fan_W
  }

  /** The closed books, given the energy in all nodes at the beginning and the end, J. */
  ledger(storedBefore_J: number, storedAfter_J: number): Ledger {
    const stored_J = storedAfter_J - storedBefore_J
    const inflows = [
      this.envelope_J,
      this.gains_J,
      this.ground_J,
      this.nightVent_J,
      this.pipes_J,
      this.pumpHeat_J,
      this.storeGainFromOutside_J,
    ]
    const in_J = inflows.reduce((sum, flow) => sum + flow, 0)
    return {
      envelope_J: this.envelope_J,
      gains_J: this.gains_J,
      ground_J: this.ground_J,
      nightVent_J: this.nightVent_J,
      panelOut_J: this.panelOut_J,
      pipes_J: this.pipes_J,
      pumpHeat_J: this.pumpHeat_J,
      storeGain_J: this.storeGain_J,
      storeGainFromOutside_J: this.storeGainFromOutside_J,
      delivered_J: this.delivered_J,
      stored_J,
      residual_J: in_J - this.panelOut_J - stored_J,
      throughput_J: inflows.reduce((sum, flow) => sum + Math.abs(flow), Math.abs(this.panelOut_J)),
    }
  }
}
