import type { StoreModel } from '#model/building/store'
import { DeliveryHeat } from './delivery-heat.ts'
import {
  clamped,
  CLOSED,
  type Demand,
  fades,
  heldByDew,
  lawAfter,
  OPEN_TO_STORE,
  LEAST_FLOW,
  PARTLY_OPEN,
  RATED_DIFFERENCE_K,
  SAME_FAN,
  SAME_FLOW,
  THROTTLED,
} from './delivery-law.ts'
import type { HubSystem } from './hub-system.ts'
import { addByAir, OpenValve } from './open-valve.ts'
import type { PlanSpec } from './plan.ts'
import { shareUsed } from './pump-duty.ts'
import type { RoomPort } from './room-port.ts'
import { WetCoil } from './wet-coil.ts'

/**
 * Delivery from tank to room: a valve that opens in proportion to the room's excess over its setpoint, limited by
 * what the cooled surface can take up at the temperature it may have (never below indoor dew point + margin):
 *
 *   Q = max(0, min( UA ΔT, 2 UA (ΔT − least), UA · 10 K / band · (T_air − setpoint) )),  ΔT = T_air − max(T_store, T_dew + margin)
 *
 * Piecewise linear, so each stage solves it as one of six laws and checks that the law holds at its solution; where none does, it is settled. A fan coil
 * with a drip tray knows no dew limit: open, throttled or fading, it is dry or wet (`WetCoil`), which is checked likewise.
 */
export class Delivery {
  private readonly open_WK: number
  private readonly open: OpenValve
  private readonly demand: Demand
  private readonly heat: DeliveryHeat
  private readonly margin_K: number
  private readonly power_W: number
  /** The coldest layer, the last; the top is layer 0. */
  private readonly bottom: number
  law = CLOSED
  /** A fan coil with a drip tray; and whether vapour condenses on it. */
  readonly coil: WetCoil | null
  private wet = false
  private lowest_C = 0
  private warmest_C = 0
  private spent = false
  private enabled = false
  /** Share of full output, 0…1, of fan, pump and a throttled flow in this step. */
  private share = 0
  private latestShare = 0
  private earlierShare = 0
  /** Share at which the step before was settled, 0 where it was not; whether the dew limit held it there. */
  private settled = 0
  dewHolds = false
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
    this.margin_K = store.dewMargin_K
    this.power_W = store.deliveryPower_W
    this.bottom = store.layerCapacity_JK.length - 1
    this.flowCounts = store.layerCapacity_JK.length > 1 || store.drained
    this.coil = store.drained ? new WetCoil(store.delivery_WK) : null
    this.demand = {
      perKelvin_WK: (store.delivery_WK * RATED_DIFFERENCE_K) / plan.band_K,
      setpoint_C: plan.setpoint_C,
    }
    this.heat = new DeliveryHeat(this.open, this.coil, this.demand)
  }

  /** The indoor dew point is what holds the delivery back. */
  get dewLimited(): boolean {
    return this.law === PARTLY_OPEN ? this.dewHolds : heldByDew(this.law)
  }

  /** Sets what holds for a whole step. @param top_C  the tank's top layer at its beginning */
  beginStep(indoorDewPoint_C: number, enabled: boolean, top_C: number): void {
    this.warmest_C = top_C
    this.spent = false
    this.enabled = enabled
    if (!enabled || this.law === PARTLY_OPEN) this.law = CLOSED
    this.lowest_C = this.coil === null ? indoorDewPoint_C + this.margin_K : -Infinity
    this.share = clamped(2 * this.latestShare - this.earlierShare)
  }

  /** Sets what a coil with a drip tray meets in a step in which it is enabled, worked out once anything asks: a dew point not above the air, and ṁc of the air change while shut. */
  beginCoil(
    air_C: number,
    water_C: number,
    indoorDewPoint_C: number,
    airChange_WK: number,
    pressure_Pa: number,
  ): void {
    this.coil!.meet(air_C, water_C, this.airShare(), indoorDewPoint_C, airChange_WK, pressure_Pa)
    if (this.law === CLOSED) this.wet = false
    else this.coil!.ready()
  }

  /**
   * Takes the law that holds at the system's solution; true when it is another one. A small tank that a law asked more of
   * than it holds was warmed past the room, which no water coming back from it can do: the step is settled.
   */
  changeLaw(system: HubSystem): boolean {
    const { air_C } = system
    // Shut, and nothing asked of it: most steps.
    if (!this.enabled || (this.law === CLOSED && air_C <= this.demand.setpoint_C)) {
      this.settled = 0
      this.wet = false
      return this.takeShare(0, this.share > SAME_FAN)
    }
    this.coil?.ready()
    if (this.mustSettle) return true
    const store_C = system.tank_C[this.bottom]!
    if (this.law === THROTTLED || heldByDew(this.law)) {
      const tank_C = system.tankMean_C()
      this.spent = tank_C > this.warmest_C && tank_C > this.port.at_C(air_C, -this.carried_W(air_C, store_C))
    }
    return this.spent || this.takeLaw(this.lawOf(system), system) || this.followShare(system)
  }

  /** What a law asked of a tank that holds less of it must be found with its flow. */
  get mustSettle(): boolean {
    return this.spent || this.settled > 0
  }

  /** True when a law is another one than before. */
  private takeLaw(law: number, { air_C, tank_C }: HubSystem): boolean {
    const wet = law !== CLOSED && this.heat.latent_W(law, this.airShare(), air_C, tank_C[this.bottom]!) > 0
    if (law === this.law && wet === this.wet) return false
    this.law = law
    this.wet = wet
    return true
  }

  /**
   * Where laws and flows, each taken from the solution before, come to no end: the largest share of the flow at which no
   * more is carried than is asked for and let in. What a share carries it takes from the port: no water comes back warmer.
   */
  settle(system: HubSystem, solve: () => void): void {
    this.settled = shareUsed((share) => this.slackAt_K(share, system, solve), this.settled)
  }

  /** Heat that is asked for and let in less that carried at a share, in terms of UA, K. */
  private slackAt_K(share: number, system: HubSystem, solve: () => void): number {
    this.share = share
    this.law = share > 0 ? PARTLY_OPEN : CLOSED
    this.wet &&= share > 0
    this.coil?.setOpen(share)
    solve()
    if (share > 0 && this.takeLaw(PARTLY_OPEN, system)) solve()
    const { air_C } = system
    const store_C = system.tank_C[this.bottom]!
    const asked_W = this.heat.demanded_W(air_C)
    const letIn_W = this.heat.reachable_W(false, this.lowest_C, air_C, store_C)
    this.dewHolds = store_C < this.lowest_C && letIn_W < asked_W
    return (Math.min(letIn_W, asked_W) - this.carried_W(air_C, store_C)) / this.open_WK
  }

  /** Takes the flow of the system's solution, and the fan's heat; true when they are not those assumed. */
  private followShare(system: HubSystem): boolean {
    const found = this.shareOf(system)
    if (!this.flowCounts || this.law === CLOSED || this.law === OPEN_TO_STORE)
      return this.takeShare(found, Math.abs(found - this.share) > SAME_FAN)
    return this.takeShare(found, Math.abs(Math.max(found, LEAST_FLOW) - this.airShare()) >= SAME_FLOW)
  }

  private takeShare(found: number, differs: boolean): boolean {
    if (differs) this.share = found
    return differs
  }

  /** The law that holds at a solution. */
  private lawOf({ air_C, tank_C }: HubSystem): number {
    const { law, port, lowest_C } = this
    const store_C = tank_C[this.bottom]!
    const demanded_W = this.heat.demanded_W(air_C)
    const reachable_W = this.heat.reachable_W(this.wet, this.lowest_C, air_C, store_C)
    const fading = this.open.isFaded(this.open.reaches_W(air_C, Math.max(store_C, lowest_C)))
    return lawAfter(law, demanded_W, reachable_W, fading, store_C >= lowest_C, port.free_C(air_C) > lowest_C)
  }

  /** Adds the present law to the system: warm water back at the top, cold drawn at the bottom; what moves it warms what it moves. */
  add(system: HubSystem): void {
    const { bottom, demand } = this
    this.open.addFan(system, this.fan_W())
    if (this.law === CLOSED) return
    if (this.wet && (this.law === OPEN_TO_STORE || this.law === PARTLY_OPEN))
      return this.coil!.addOpen(system, bottom)
    const share = this.airShare()
    if (this.wet && fades(this.law)) return this.open.addFading(system, bottom, share, this.coil!)
    if (this.wet) return this.coil!.addThrottled(system, share, demand)
    if (this.law === THROTTLED)
      return addByAir(system, this.port.share, demand.perKelvin_WK, demand.perKelvin_WK * demand.setpoint_C)
    if (this.law === PARTLY_OPEN) return this.open.addPart(system, bottom, this.share)
    if (heldByDew(this.law)) this.open.addHeldAt(system, this.lowest_C, fades(this.law))
    else this.open.addToStore(system, bottom, fades(this.law))
  }

  /** Share of the air flow in this step; the fan never quite stops. */
  private airShare(): number {
    return this.law === PARTLY_OPEN ? this.share : Math.max(this.share, LEAST_FLOW)
  }

  /** Fan and pump of the delivery, W, all of it heat: of a coil to the room's air, of a pump alone to its water. */
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
    this.delivered_W = this.carried_W(system.air_C, store_C)
    this.latestShare = this.shareOf(system)
    this.latent_W = this.wet ? this.heat.latent_W(this.law, this.airShare(), system.air_C, store_C) : 0
    this.condensate_kgs = this.wet ? this.latent_W / this.coil!.evaporation_Jkg : 0
  }

  /** Share of full output at the system's solution, 0…1: of what UA would carry between port and store as they are. */
  private shareOf(system: HubSystem): number {
    if (this.law === CLOSED) return 0
    if (this.law === PARTLY_OPEN) return this.share
    const { air_C } = system
    const store_C = system.tank_C[this.bottom]!
    return this.heat.share(this.carried_W(air_C, store_C), this.wet, air_C, store_C)
  }

  private carried_W(air_C: number, store_C: number): number {
    return this.heat.carried_W(this.law, this.share, this.wet, this.lowest_C, air_C, store_C)
  }
}
