import type { StoreModel } from '#model/building/store'
import {
  clamped,
  CLOSED,
  fades,
  FADING_AT_DEW_LIMIT,
  FADING_TO_STORE,
  heldByDew,
  OPEN_AT_DEW_LIMIT,
  OPEN_TO_STORE,
  THROTTLED,
} from './delivery-law.ts'
import type { HubSystem } from './hub-system.ts'
import { addByAir, OpenValve } from './open-valve.ts'
import type { PlanSpec } from './plan.ts'
import type { RoomPort } from './room-port.ts'
import { WetCoil } from './wet-coil.ts'

/** Temperature difference at which the valve's rated output is counted, K (common practice, no source). */
export const RATED_DIFFERENCE_K = 10
/** Keeps the delivery's share finite when store and room are at one temperature, K. */
export const DIFFERENCE_FLOOR_K = 0.1
/** A throttled flow is solved for again while it is this far from the one that was assumed, share of full flow. */
const SAME_SHARE = 0.003
/** A valve that throttles or blends lets at least this share of its flow through the tank's layers. */
const LEAST_FLOW = 0.05

/**
 * Delivery from tank to room: a valve that opens in proportion to the room's excess over its setpoint, limited by
 * what the cooled surface can take up at the temperature it may have (never below indoor dew point + margin):
 *
 *   Q = max(0, min( UA ΔT, 2 UA (ΔT − least), UA · 10 K / band · (T_air − setpoint) )),  ΔT = T_air − max(T_store, T_dew + margin)
 *
 * Piecewise linear, so each stage solves it as one of six laws and checks that the law holds at its solution. A fan coil
 * with a drip tray knows no dew limit: open or throttled, it is dry or wet; fading, dry (`WetCoil`), which is checked likewise.
 */
export class Delivery {
  private readonly open_WK: number
  private readonly open: OpenValve
  private readonly demand_WK: number
  private readonly setpoint_C: number
  private readonly margin_K: number
  private readonly power_W: number
  /** The coldest layer, the last; the top is layer 0. */
  private readonly bottom: number
  private law = CLOSED
  /** A fan coil with a drip tray, or null; and whether vapour condenses on it. */
  readonly coil: WetCoil | null
  private wet = false
  private lowest_C = 0
  private warmest_C = 0
  private spent = false
  private enabled = false
  /** Share of full output, 0…1, that fan, pump and a throttled flow are taken to run at in this step. */
  private share = 0
  /** Shares of the last two steps. */
  private latestShare = 0
  private earlierShare = 0
  /** The heat in each layer, or on a coil, hangs on the flow: it is solved for within the step. */
  private readonly flowCounts: boolean
  /** Heat from room to tank in the stage last entered, W. */
  delivered_W = 0
  /** Heat of the vapour that condensed in it, W, and the water, kg/s. */
  latent_W = 0
  condensate_kgs = 0
  private readonly port: RoomPort

  /** @param port  where it takes heat from the room; its numbers are those of the prepared step */
  constructor(store: StoreModel, plan: PlanSpec, port: RoomPort) {
    this.port = port
    this.open_WK = store.delivery_WK
    this.open = new OpenValve(port, store)
    this.demand_WK = (store.delivery_WK * RATED_DIFFERENCE_K) / plan.band_K
    this.setpoint_C = plan.setpoint_C
    this.margin_K = store.dewMargin_K
    this.power_W = store.deliveryPower_W
    this.bottom = store.layerCapacity_JK.length - 1
    this.flowCounts = store.layerCapacity_JK.length > 1 || store.drained
    this.coil = store.drained ? new WetCoil(store.delivery_WK) : null
  }

  /** The indoor dew point is what holds the delivery back. */
  get dewLimited(): boolean {
    return heldByDew(this.law)
  }

  /** Sets what holds for a whole step. @param top_C  the tank's top layer at its beginning */
  beginStep(indoorDewPoint_C: number, enabled: boolean, top_C: number): void {
    this.warmest_C = top_C
    this.spent = false
    this.enabled = enabled
    if (!enabled) this.law = CLOSED
    this.lowest_C = this.coil === null ? indoorDewPoint_C + this.margin_K : -Infinity
    this.share = this.flowCounts ? clamped(2 * this.latestShare - this.earlierShare) : this.latestShare
  }

  /**
   * Sets what a coil with a drip tray meets in a step in which it is enabled.
   * @param indoorDewPoint_C  not above the air
   * @param airChange_WK      ṁc of the air change while shut
   */
  beginCoil(
    air_C: number,
    water_C: number,
    indoorDewPoint_C: number,
    airChange_WK: number,
    pressure_Pa: number,
  ): void {
    const coil = this.coil!
    coil.prepare({ air_C, water_C, share: this.airShare() }, indoorDewPoint_C, airChange_WK, pressure_Pa)
    coil.setOpen()
    if (this.law === CLOSED) this.wet = false
  }

  /**
   * Takes the law that holds at the system's solution; true when it is another one. A small tank that a law asked more of
   * than it holds was warmed past the room, which no water coming back from it can do: for the rest of this step it is
   * asked with its temperature in the law. (For a stage alone will not do: the second starts far along the way of the first.)
   */
  changeLaw(system: HubSystem): boolean {
    if (this.spent) return this.fadeSpent(system)
    const { air_C } = system
    // Shut, and nothing asked of it: most steps.
    if (!this.enabled || (this.law === CLOSED && air_C <= this.setpoint_C)) return (this.wet = false)
    const store_C = system.tank_C[this.bottom]!
    if (this.law === THROTTLED || heldByDew(this.law)) {
      const tank_C = system.tankMean_C()
      this.spent = tank_C > this.warmest_C && tank_C > this.port.at_C(air_C, -this.under(air_C, store_C))
    }
    const law = this.spent ? OPEN_TO_STORE : this.lawAt(air_C, store_C)
    const wet = law !== CLOSED && this.latentUnder(law, air_C, store_C) > 0
    if (law === this.law && wet === this.wet) return this.followShare(system)
    this.law = law
    this.wet = wet
    return true
  }

  private fadeSpent({ air_C, tank_C }: HubSystem): boolean {
    if (this.law !== OPEN_TO_STORE) return false
    if (!this.open.isFaded(this.open.heat_W(air_C, tank_C[this.bottom]!, false))) return false
    this.law = FADING_TO_STORE
    return true
  }

  /** Takes the throttled flow of the system's solution; true when it is not the one assumed. */
  private followShare(system: HubSystem): boolean {
    if (!this.flowCounts || this.law === CLOSED || this.law === OPEN_TO_STORE) return false
    const found = this.shareOf(system)
    if (Math.abs(Math.max(found, LEAST_FLOW) - this.airShare()) < SAME_SHARE) return false
    this.share = found
    return true
  }

  /** The law that holds at a solution. A store that the open valve has brought to the room's temperature stays joined to it through the step. */
  private lawAt(air_C: number, store_C: number): number {
    const demanded_W = this.demand_WK * (air_C - this.setpoint_C)
    // An open valve that brings the air under its setpoint is one to throttle; shut, it would be asked for again.
    if (demanded_W <= 0) return this.law >= OPEN_TO_STORE ? THROTTLED : CLOSED
    const reachable_W = this.reachable_W(air_C, store_C)
    const fading = this.open.isFaded(this.open.reaches_W(air_C, Math.max(store_C, this.lowest_C)))
    if (reachable_W <= 0 && (this.law !== OPEN_TO_STORE || this.port.free_C(air_C) <= this.lowest_C))
      return CLOSED
    if (reachable_W > 0 && demanded_W < reachable_W) return THROTTLED
    if (store_C >= this.lowest_C) return fading ? FADING_TO_STORE : OPEN_TO_STORE
    return fading ? FADING_AT_DEW_LIMIT : OPEN_AT_DEW_LIMIT
  }

  /** Adds the present law to the system: warm water back at the top, cold drawn at the bottom; the fan's heat to the air. */
  add(system: HubSystem): void {
    const { bottom } = this
    system.airDrive_W += this.fan_W()
    if (this.law === CLOSED) return
    if (this.wet && this.law === OPEN_TO_STORE) return this.coil!.addOpen(system, bottom)
    if (this.wet)
      return this.coil!.addThrottled(system, bottom, this.airShare(), this.demand_WK, this.setpoint_C)
    if (this.law === THROTTLED)
      return addByAir(system, this.port.share, this.demand_WK, this.demand_WK * this.setpoint_C)
    if (heldByDew(this.law)) this.open.addHeldAt(system, this.lowest_C, fades(this.law))
    else this.open.addToStore(system, bottom, fades(this.law))
  }

  /** Share of the air flow in this step; the fan never quite stops. */
  private airShare(): number {
    return Math.max(this.share, LEAST_FLOW)
  }

  /** What the open valve takes from the room, W. */
  private reachable_W(air_C: number, store_C: number): number {
    const dry_W = this.open.reaches_W(air_C, Math.max(store_C, this.lowest_C))
    return this.wet ? Math.min(dry_W, this.coil!.openSensible_W(air_C, store_C)) : dry_W
  }

  /** Latent heat under a law, W; not above 0 where nothing condenses. */
  private latentUnder(law: number, air_C: number, store_C: number): number {
    const { coil } = this
    if (coil === null || fades(law)) return 0
    if (law === OPEN_TO_STORE) return coil.openLatent_W(air_C, store_C)
    return coil.throttledLatent_W(this.airShare(), this.demand_WK * (air_C - this.setpoint_C), store_C)
  }

  /** Fan and pump of the delivery, W, all of it heat to the room. */
  fan_W = (): number => this.share * this.power_W

  /** ṁc through a layered tank: one transfer unit when open (ṁc = UA), in proportion when throttled or blended at the dew limit, W/K. */
  flow_WK(): number {
    if (this.law === CLOSED) return 0
    return this.open_WK * (this.law === OPEN_TO_STORE ? 1 : this.airShare())
  }

  /** Notes the heat from room to tank under the present law at the system's solution, and the share of full output. */
  enter(system: HubSystem): void {
    this.earlierShare = this.latestShare
    this.delivered_W = this.latent_W = this.condensate_kgs = this.latestShare = 0
    if (this.law === CLOSED) return
    const store_C = system.tank_C[this.bottom]!
    this.delivered_W = this.under(system.air_C, store_C)
    this.latestShare = this.shareOf(system)
    this.latent_W = this.wet ? this.latentUnder(this.law, system.air_C, store_C) : 0
    this.condensate_kgs = this.wet ? this.latent_W / this.coil!.evaporation_Jkg : 0
  }

  /** Share of full output at the system's solution, 0…1: of what UA would carry between port and store as they are. */
  private shareOf(system: HubSystem): number {
    const { air_C } = system
    const store_C = system.tank_C[this.bottom]!
    const heat_W = this.under(air_C, store_C)
    const full_W = this.wet
      ? this.reachable_W(air_C, store_C)
      : this.open_WK * (this.port.at_C(air_C, -heat_W) - store_C)
    const least_W = this.open_WK * DIFFERENCE_FLOOR_K
    return least_W > 0 ? clamped(heat_W / Math.max(least_W, full_W)) : 0
  }

  private under(air_C: number, store_C: number): number {
    switch (this.law) {
      case THROTTLED:
        return this.demand_WK * (air_C - this.setpoint_C)
      case OPEN_TO_STORE:
        return this.wet ? this.coil!.openSensible_W(air_C, store_C) : this.open.heat_W(air_C, store_C, false)
      case FADING_TO_STORE:
        return this.open.heat_W(air_C, store_C, true)
      case FADING_AT_DEW_LIMIT:
        return this.open.heat_W(air_C, this.lowest_C, true)
      case OPEN_AT_DEW_LIMIT:
        return this.open.heat_W(air_C, this.lowest_C, false)
      default:
        return 0
    }
  }
}
