import {
  clamped,
  type Demand,
  fades,
  FADING_AT_DEW_LIMIT,
  FADING_TO_STORE,
  OPEN_AT_DEW_LIMIT,
  OPEN_TO_STORE,
  PARTLY_OPEN,
  THROTTLED,
} from './delivery-law.ts'
import type { OpenValve } from './open-valve.ts'
import type { WetCoil } from './wet-coil.ts'

/** Heat from the room under each law of the delivery, at temperatures of air and coldest layer, W. */
export class DeliveryHeat {
  private readonly open: OpenValve
  private readonly coil: WetCoil | null
  private readonly demand: Demand

  constructor(open: OpenValve, coil: WetCoil | null, demand: Demand) {
    this.open = open
    this.coil = coil
    this.demand = demand
  }

  demanded_W(air_C: number): number {
    return this.demand.perKelvin_WK * (air_C - this.demand.setpoint_C)
  }

  /** What the open valve takes from the room, never colder than a limit. */
  reachable_W(wet: boolean, lowest_C: number, air_C: number, store_C: number): number {
    const dry_W = this.open.reaches_W(air_C, Math.max(store_C, lowest_C))
    return wet ? Math.min(dry_W, this.coil!.openSensible_W(air_C, store_C)) : dry_W
  }

  /** Latent heat under a law at a share of the air flow; not above 0 where nothing condenses. */
  latent_W(law: number, share: number, air_C: number, store_C: number): number {
    const { coil } = this
    if (coil === null) return 0
    if (law === OPEN_TO_STORE || law === PARTLY_OPEN) return coil.openLatent_W(air_C, store_C)
    const sensible_W = fades(law) ? this.open.heat_W(air_C, store_C, true) : this.demanded_W(air_C)
    return coil.throttledLatent_W(share, sensible_W, store_C)
  }

  /** Sensible heat under a law, partly open at a share of the flow. */
  carried_W(
    law: number,
    share: number,
    wet: boolean,
    lowest_C: number,
    air_C: number,
    store_C: number,
  ): number {
    switch (law) {
      case THROTTLED:
        return this.demanded_W(air_C)
      case OPEN_TO_STORE:
        return wet ? this.coil!.openSensible_W(air_C, store_C) : this.open.heat_W(air_C, store_C, false)
      case PARTLY_OPEN:
        return wet ? this.coil!.openSensible_W(air_C, store_C) : this.open.part_W(air_C, store_C, share)
      case FADING_TO_STORE:
        return this.open.heat_W(air_C, store_C, true)
      case FADING_AT_DEW_LIMIT:
        return this.open.heat_W(air_C, lowest_C, true)
      case OPEN_AT_DEW_LIMIT:
        return this.open.heat_W(air_C, lowest_C, false)
      default:
        return 0
    }
  }

  /** Share of full output that a sensible heat is, 0…1. */
  share(heat_W: number, wet: boolean, air_C: number, store_C: number): number {
    if (!wet) return this.open.share(heat_W, air_C, store_C)
    return clamped(heat_W / Math.max(this.open.least_W, this.coil!.openSensible_W(air_C, store_C)))
  }
}
