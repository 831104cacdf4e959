import type { StoreModel } from '#model/building/store'
import { clamped } from './delivery-law.ts'
import type { HubSystem } from './hub-system.ts'
import type { RoomPort } from './room-port.ts'
import type { WetCoil } from './wet-coil.ts'

/** Hardly warmer than store or dew limit, a room gets nothing: at least up to this, K (common practice, no source). */
const FADED_K = 0.5
/** All that UA carries is let in at this times the difference at which nothing is. */
const FULL_TIMES = 2
/** A fading delivery is one of this times UA that begins at that difference. */
const FADING_TIMES = FULL_TIMES / (FULL_TIMES - 1)

/** Keeps the delivery's share finite when store and room are at one temperature, K. */
export const DIFFERENCE_FLOOR_K = 0.1

/** Difference up to which nothing is let in, K: where the fan's own heat would eat the gain, or `FADED_K`. */
export function fadedAt_K(store: Pick<StoreModel, 'delivery_WK' | 'deliveryPower_W'>): number {
  return store.delivery_WK > 0 ? Math.max(FADED_K, store.deliveryPower_W / store.delivery_WK) : FADED_K
}

/** Difference from which all of UA is let in, K. */
export function openAt_K(store: Pick<StoreModel, 'delivery_WK' | 'deliveryPower_W'>): number {
  return FULL_TIMES * fadedAt_K(store)
}

/** The valve of a delivery quite open: between room and an end (store or dew limit) all of UA, fading where they are nearly alike. */
export class OpenValve {
  private readonly port: RoomPort
  private readonly open_WK: number
  private readonly faded_K: number
  /** Heat of the least difference that a share is counted by, W. */
  readonly least_W: number

  constructor(port: RoomPort, store: StoreModel) {
    this.port = port
    this.open_WK = store.delivery_WK
    this.faded_K = fadedAt_K(store)
    this.least_W = store.delivery_WK * DIFFERENCE_FLOOR_K
  }

  /** Heat from the room to an end at some temperature, full or fading, W. */
  heat_W(air_C: number, end_C: number, fading: boolean): number {
    return this.seen_WK(fading) * (this.port.free_C(air_C) - end_C - (fading ? this.faded_K : 0))
  }

  /** The same, fading where it does: the lesser of the two. */
  reaches_W(air_C: number, end_C: number): number {
    const full_W = this.heat_W(air_C, end_C, false)
    return this.isFaded(full_W) ? this.heat_W(air_C, end_C, true) : full_W
  }

  /** Share of full output that a heat is: of what UA would carry between port and store as they are, 0…1. */
  share(heat_W: number, air_C: number, store_C: number): number {
    const full_W = this.open_WK * (this.port.at_C(air_C, -heat_W) - store_C)
    return this.least_W > 0 ? clamped(heat_W / Math.max(this.least_W, full_W)) : 0
  }

  /** Heat of what moves air and water, W: of a coil's fan to the air; of a pump alone to its water, which comes back at the top. */
  addFan(system: HubSystem, heat_W: number): void {
    if (this.port.kind === 'air') system.airDrive_W += heat_W
    else system.tankDrive_W[0]! += heat_W
  }

  isFaded(heat_W: number): boolean {
    return heat_W < this.open_WK * FULL_TIMES * this.faded_K
  }

  /** Joins room and tank: cold drawn at the bottom, warm water back at the top. */
  addToStore(system: HubSystem, bottom: number, fading: boolean): void {
    this.join(system, bottom, this.seen_WK(fading), fading ? this.faded_K : 0)
  }

  /** The same with a share of the flow, which comes back as warm as the port. */
  addPart(system: HubSystem, bottom: number, flow_frac: number): void {
    this.join(system, bottom, this.port.seen_WK(flow_frac * this.open_WK), 0)
  }

  /** Heat of that share, W. */
  part_W(air_C: number, store_C: number, flow_frac: number): number {
    return this.port.seen_WK(flow_frac * this.open_WK) * (this.port.free_C(air_C) - store_C)
  }

  /** A wet coil, fading, which meets the air itself. */
  addFading(system: HubSystem, bottom: number, share: number, coil: WetCoil): void {
    coil.addFading(system, bottom, share, this.seen_WK(true), this.faded_K)
  }

  private join(system: HubSystem, bottom: number, seen_WK: number, lost_K: number): void {
    const { share, base_C } = this.port
    const above_C = lost_K - base_C
    system.air_WK += seen_WK * share * share
    system.airDrive_W += seen_WK * share * above_C
    system.airTank_WK[bottom]! -= seen_WK * share
    system.tankAir_WK[0]! -= seen_WK * share
    system.tank!.atTop_WK += seen_WK
    system.tankDrive_W[0]! -= seen_WK * above_C
  }

  /** The same with the end held at a temperature by return water. */
  addHeldAt(system: HubSystem, end_C: number, fading: boolean): void {
    const { share, base_C } = this.port
    const seen_WK = this.seen_WK(fading)
    addByAir(system, share, seen_WK * share, seen_WK * (end_C + (fading ? this.faded_K : 0) - base_C))
  }

  private seen_WK(fading: boolean): number {
    return this.port.seen_WK(fading ? FADING_TIMES * this.open_WK : this.open_WK)
  }
}

/** Heat to the tank's top that follows the air alone: perAir_WK T_air − rest_W, felt by the air in its port's share. */
export function addByAir(system: HubSystem, share: number, perAir_WK: number, rest_W: number): void {
  system.air_WK += share * perAir_WK
  system.airDrive_W += share * rest_W
  system.tankAir_WK[0]! -= perAir_WK
  system.tankDrive_W[0]! -= rest_W
}
