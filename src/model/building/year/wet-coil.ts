import {
  AIR_SPECIFIC_HEAT_JKGK,
  evaporationHeat_Jkg,
  humidityRatio_frac,
  vapourPressure_Pa,
} from '#model/outdoors/air'
import type { Demand } from './delivery-law.ts'
import type { HubSystem } from './hub-system.ts'

/** Share of a fan coil's resistance on the side of the air (common practice, no source: its surface is some 3 K over the water at 10 K). */
const AIR_SIDE_SHARE = 0.7
/** Two temperatures nearer than this have one slope of saturation between them, K. */
const NEAR_K = 0.01
/** Rounds in which the surface's temperature at the beginning of a step is found; each leaves under a tenth of the error. */
const ROUNDS = 3

/**
 * A fan coil with a drip tray: its surface may be colder than the room's dew point, and the vapour that condenses there
 * is heat that the store has to take. With a the conductance from air to surface and w from surface to water,
 *
 *   sensible = a (T_air − T_s),  latent = ℓ (T_dew − T_s),  sensible + latent = w (T_s − T_water)
 *   ℓ = 1/(1/V + 1/a) · h_fg/c_p · (W_dew − W_sat(T_s))/(T_dew − T_s)
 *
 * V is the air change of the shut room as heat, W/K, for which the indoor dew point holds (opened windows bring none of its vapour): what condenses dries the room until air change and coil carry as much vapour, which
 * is taken as steady in the step. Vapour held by furniture and plaster is left out; the drained water's own heat too.
 * Contact factor (the share of the air that takes the surface's state) times air flow is the same for heat and vapour.
 * Source: bypass-factor method, as in ASHRAE Handbook, HVAC Systems and Equipment, air-cooling coils (from memory).
 */
export class WetCoil {
  /** a and w, W/K, at full air flow. */
  private readonly toAir_WK: number
  private readonly toWater_WK: number
  dew_C = NaN
  /** Humidity of the air at its dew point, and just below it, kg/kg. */
  private held_frac = 0
  private near_frac = 0
  /** h_fg/c_p · ΔW/ΔT of this step, –. */
  private latentRatio = 0
  private airChange_WK = 0
  /** Heat of evaporation at the dew point, J/kg. */
  evaporation_Jkg = 0

  constructor(delivery_WK: number) {
    this.toAir_WK = delivery_WK / AIR_SIDE_SHARE
    this.toWater_WK = delivery_WK / (1 - AIR_SIDE_SHARE)
  }

  /** What it meets in a step, as `prepare` has it: most steps ask nothing of a coil, and leave it at that. */
  private readonly met = { air_C: 0, water_C: 0, share: 0, dew_C: 0, airChange_WK: 0, pressure_Pa: 0 }
  private isReady = true
  meet(
    air_C: number,
    water_C: number,
    share: number,
    dew_C: number,
    airChange_WK: number,
    pressure_Pa: number,
  ): void {
    const { met } = this
    met.air_C = air_C
    met.water_C = water_C
    met.share = share
    met.dew_C = dew_C
    met.airChange_WK = airChange_WK
    met.pressure_Pa = pressure_Pa
    this.isReady = false
  }

  /** Prepares it for what it meets, open. */
  ready(): void {
    if (this.isReady) return
    const { met } = this
    this.prepare(met, met.dew_C, met.airChange_WK, met.pressure_Pa)
    this.setOpen()
    this.isReady = true
  }

  /**
   * Sets what holds for a step, its vapour by the chord from the dew point to the surface as it is at the beginning.
   * @param share         of full air flow, 0…1, in the step before
   * @param airChange_WK  ṁc of the air change
   */
  prepare(
    at: { readonly air_C: number; readonly water_C: number; readonly share: number },
    dew_C: number,
    airChange_WK: number,
    pressure_Pa: number,
  ): void {
    if (dew_C !== this.dew_C) this.setDew(dew_C, pressure_Pa)
    this.airChange_WK = airChange_WK
    let surface_C = dew_C
    for (let round = 0; round < ROUNDS; round++) {
      const to_C = Math.min(surface_C, dew_C - NEAR_K)
      const isNear = to_C === dew_C - NEAR_K
      const there = isNear ? this.near_frac : humidityRatio_frac(vapourPressure_Pa(to_C), pressure_Pa)
      const dried = (this.evaporation_Jkg / AIR_SPECIFIC_HEAT_JKGK) * (this.held_frac - there)
      this.latentRatio = dried / (dew_C - to_C)
      const air_WK = at.share * this.toAir_WK
      const l = this.latent_WK(at.share)
      surface_C =
        (air_WK * at.air_C + l * dew_C + this.toWater_WK * at.water_C) / (air_WK + l + this.toWater_WK)
    }
  }

  /** What hangs on the dew point alone: the same through most of an hour. */
  private setDew(dew_C: number, pressure_Pa: number): void {
    this.dew_C = dew_C
    this.evaporation_Jkg = evaporationHeat_Jkg(dew_C)
    this.held_frac = humidityRatio_frac(vapourPressure_Pa(dew_C), pressure_Pa)
    this.near_frac = humidityRatio_frac(vapourPressure_Pa(dew_C - NEAR_K), pressure_Pa)
  }

  /** ℓ at a share of the air flow, W/K. */
  latent_WK(share: number): number {
    const coil_WK = share * this.toAir_WK
    if (coil_WK <= 0 || this.airChange_WK <= 0) return 0
    return (this.latentRatio * this.airChange_WK * coil_WK) / (this.airChange_WK + coil_WK)
  }

  /** With the air at full flow, or a share of it: sensible = air_WK T_air − dew_WK T_dew − water_WK T_water. */
  readonly open = { air_WK: 0, dew_WK: 0, water_WK: 0, latentDew_WK: 0, latentWater_WK: 0 }
  setOpen(share = 1): void {
    const { toWater_WK: w, open } = this
    const a = share * this.toAir_WK
    const l = this.latent_WK(share)
    const sum = a + l + w
    open.air_WK = (a * (l + w)) / sum
    open.dew_WK = (a * l) / sum
    open.water_WK = (a * w) / sum
    open.latentDew_WK = (l * (a + w)) / sum
    open.latentWater_WK = (l * w) / sum
  }

  /** Sensible and latent heat at full flow, W; the latent is below 0 where nothing condenses. */
  openSensible_W(air_C: number, water_C: number): number {
    const { open } = this
    return open.air_WK * air_C - open.dew_WK * this.dew_C - open.water_WK * water_C
  }
  openLatent_W(air_C: number, water_C: number): number {
    const { open } = this
    return open.latentDew_WK * this.dew_C - open.dew_WK * air_C - open.latentWater_WK * water_C
  }

  /** Share of the surface's heat that reaches the water at a throttled flow: latent = (1 − it) (w (T_dew − T_water) − sensible). */
  waterShare(share: number): number {
    return this.toWater_WK / (this.toWater_WK + this.latent_WK(share))
  }
  throttledLatent_W(share: number, sensible_W: number, water_C: number): number {
    return (1 - this.waterShare(share)) * (this.toWater_WK * (this.dew_C - water_C) - sensible_W)
  }
  /** Latent heat that the water takes for each K it is below the dew point, at a throttled flow: ℓ w/(w + ℓ), W/K. */
  throttledWater_WK(share: number): number {
    return this.latent_WK(share) * this.waterShare(share)
  }

  /** Adds the open wet coil: sensible heat from the air, and that with the latent to the tank's top for what is drawn at `bottom`. */
  addOpen(system: HubSystem, bottom: number): void {
    const { air_WK, dew_WK, water_WK, latentDew_WK, latentWater_WK } = this.open
    system.air_WK += air_WK
    system.airTank_WK[bottom]! -= water_WK
    system.airDrive_W += dew_WK * this.dew_C
    system.tankAir_WK[0]! -= air_WK - dew_WK
    system.tank!.atTop_WK += water_WK + latentWater_WK
    system.tankDrive_W[0]! += (latentDew_WK - dew_WK) * this.dew_C
  }

  /** Adds the throttled wet coil, whose sensible heat is the demand. */
  addThrottled(system: HubSystem, share: number, { perKelvin_WK: demand_WK, setpoint_C }: Demand): void {
    const toWater = this.addWater(system, share)
    system.air_WK += demand_WK
    system.airDrive_W += demand_WK * setpoint_C
    system.tankAir_WK[0]! -= demand_WK * toWater
    system.tankDrive_W[0]! -= demand_WK * toWater * setpoint_C
  }

  /** The same where its sensible heat fades, from air to water: fading_WK (T_air − T_water − lost_K). */
  addFading(system: HubSystem, bottom: number, share: number, fading_WK: number, lost_K: number): void {
    const toWater = this.addWater(system, share)
    system.air_WK += fading_WK
    system.airTank_WK[bottom]! -= fading_WK
    system.airDrive_W += fading_WK * lost_K
    system.tankAir_WK[0]! -= fading_WK * toWater
    system.tank!.atTop_WK += fading_WK * toWater
    system.tankDrive_W[0]! -= fading_WK * toWater * lost_K
  }

  /** What the water takes of the vapour at a share of the air flow. @returns the share of the sensible heat that reaches it */
  private addWater(system: HubSystem, share: number): number {
    const condensing_WK = this.throttledWater_WK(share)
    system.tank!.atTop_WK += condensing_WK
    system.tankDrive_W[0]! += condensing_WK * this.dew_C
    return this.waterShare(share)
  }
}
