import type { Ledger } from './result.ts'

/** Adds up what flows, as sums over the hour that are closed into the year's sums at its end. */
export class Books {
  /** Seconds-weighted temperatures of the current hour, °C s. */
  air_Cs = 0
  radiant_Cs = 0
  /** Heat into the room, J: walls, roof, windows and air change; sunlight kept and internal gains; ground; opened windows. */
  envelope_J = 0
  gains_J = 0
  ground_J = 0
  nightVent_J = 0
  /** Flows of the current hour, J. */
  shed_J = 0
  taken_J = 0
  pipes_J = 0
  pump_J = 0
  fan_J = 0
  gain_J = 0
  delivered_J = 0
  /** Heat of vapour condensed in the delivery, J, and the water, kg. */
  latent_J = 0
  condensate_kg = 0
  /** Seconds the pump ran, and the return temperature over them, °C s. */
  run_s = 0
  return_Cs = 0
  /** Seconds that windows were open at night, since the first hour that is kept. */
  vented_s = 0
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
    latent_J: 0,
  }

  clearHour(): void {
    this.air_Cs = this.radiant_Cs = 0
    this.envelope_J = this.gains_J = this.ground_J = this.nightVent_J = 0
    this.shed_J = this.taken_J = this.pipes_J = this.pump_J = this.fan_J = 0
    this.latent_J = this.condensate_kg = 0
    this.gain_J = this.delivered_J = this.run_s = this.return_Cs = 0
  }

  /** Operative temperature of the hour, °C: half air, half radiant (ISO 7726 at low air speed). */
  room_C(hour_s: number): number {
    return (0.5 * (this.air_Cs + this.radiant_Cs)) / hour_s
  }

  /** Enters the hour's sums in the year's. */
  closeHour(tankOutside: boolean): void {
    const { year } = this
    year.gains_J += this.gains_J
    year.ground_J += this.ground_J
    year.envelope_J += this.envelope_J
    year.nightVent_J += this.nightVent_J
    year.panelOut_J += this.shed_J
    year.pipes_J += this.pipes_J
    year.pumpHeat_J += this.pump_J + this.fan_J
    year.storeGain_J += this.gain_J
    if (tankOutside) year.storeGainFromOutside_J += this.gain_J
    year.delivered_J += this.delivered_J
    year.latent_J += this.latent_J
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
      year.latent_J,
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
  latent_J: NaN,
  stored_J: NaN,
  residual_J: NaN,
  throughput_J: NaN,
}
