import type { RoomModel } from '#model/room/spec.ts'
import type { Ledger } from '#model/year/result.ts'

/**
 * Adds up what flows, as sums over the hour that are closed into the year's sums at its end. The flows of room,
 * windows and ground are linear in the temperatures, so their hour sums follow from the temperatures' own.
 */
export class Books {
  /** Seconds-weighted temperatures of the current hour, °C s. */
  air_Cs = 0
  fabric_Cs = 0
  slab_Cs = 0
  /** Seconds with windows open at night, and the air temperature over them, °C s. */
  vented_s = 0
  ventedAir_Cs = 0
  /** Flows of the current hour, J. */
  shed_J = 0
  taken_J = 0
  pipes_J = 0
  pump_J = 0
  fan_J = 0
  gain_J = 0
  delivered_J = 0
  /** Seconds the pump ran, and the return temperature over them, °C s. */
  run_s = 0
  return_Cs = 0
  private readonly year = {
    envelope_J: 0,
    gains_J: 0,
    ground_J: 0,
    nightVent_J: 0,
    panelOut_J: 0,
    pipes_J: 0,
    pumpHeat_J: 0,
    storeGain_J: 0,
    storeGainFromOutside_J: 0,
    delivered_J: 0,
  }

  clearHour(): void {
    this.air_Cs = this.fabric_Cs = this.slab_Cs = this.vented_s = this.ventedAir_Cs = 0
    this.shed_J = this.taken_J = this.pipes_J = this.pump_J = this.fan_J = 0
    this.gain_J = this.delivered_J = this.run_s = this.return_Cs = 0
  }

  /** Operative temperature of the hour, °C. */
  room_C(room: RoomModel, hour_s: number): number {
    const [wAir, wFabric, wSlab] = room.operativeWeights
    return (wAir * this.air_Cs + wFabric * this.fabric_Cs + wSlab * this.slab_Cs) / hour_s
  }

  /** Enters the hour's sums in the year's. */
  closeHour(room: RoomModel, hour: number, hour_s: number, tankOutside: boolean): void {
    const { year } = this
    const { sun_W, gains_W, toSlab_W } = room.sunAndGains
    const inside_J = (sun_W[hour]! + gains_W[hour]!) * hour_s
    const toSlab_J = toSlab_W[hour]! * hour_s
    const slab_J = room.slabDrive_W[hour]! * hour_s - room.slabLoss_WK * this.slab_Cs
    const air_J = room.airDrive_W[hour]! * hour_s - room.airLoss_WK[hour]! * this.air_Cs
    const fabric_J = room.fabricDrive_W[hour]! * hour_s - room.fabricLoss_WK[hour]! * this.fabric_Cs
    year.gains_J += inside_J
    year.ground_J += slab_J - toSlab_J
    year.envelope_J += air_J + fabric_J - (inside_J - toSlab_J)
    year.nightVent_J += room.nightVent_WK * (room.outdoor_C[hour]! * this.vented_s - this.ventedAir_Cs)
    year.panelOut_J += this.shed_J
    year.pipes_J += this.pipes_J
    year.pumpHeat_J += this.pump_J + this.fan_J
    year.storeGain_J += this.gain_J
    if (tankOutside) year.storeGainFromOutside_J += this.gain_J
    year.delivered_J += this.delivered_J
  }

  /** The closed books, given the energy in all nodes at the beginning and the end, J. */
  ledger(storedBefore_J: number, storedAfter_J: number): Ledger {
    const { year } = this
    const stored_J = storedAfter_J - storedBefore_J
    const inflows = [
      year.envelope_J,
      year.gains_J,
      year.ground_J,
      year.nightVent_J,
      year.pipes_J,
      year.pumpHeat_J,
      year.storeGainFromOutside_J,
    ]
    const in_J = inflows.reduce((sum, flow) => sum + flow, 0)
    return {
      ...year,
      stored_J,
      residual_J: in_J - year.panelOut_J - stored_J,
      throughput_J: inflows.reduce((sum, flow) => sum + Math.abs(flow), Math.abs(year.panelOut_J)),
    }
  }
}

/** The ledger of a run that kept no books. */
export const UNKEPT: Ledger = {
  envelope_J: NaN,
  gains_J: NaN,
  ground_J: NaN,
  nightVent_J: NaN,
  panelOut_J: NaN,
  pipes_J: NaN,
  pumpHeat_J: NaN,
  storeGain_J: NaN,
  storeGainFromOutside_J: NaN,
  delivered_J: NaN,
  stored_J: NaN,
  residual_J: NaN,
  throughput_J: NaN,
}
