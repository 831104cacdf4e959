import type { RoomNetwork } from '#model/building/room'
import { shareUsed } from './pump-duty.ts'
import type { RoomStep } from './room-step.ts'

/** Night windows begin to open when the outdoor air is this much cooler than the room, and are wide open at as much more as the next, K (common practice, no source: about 1 K). */
export const OPENS_FROM_K = 0.5
export const OPENS_OVER_K = 1
/** They are wide open while the room is this much above the temperature at which they are shut, K (common practice, no source). */
export const SHUTS_OVER_K = 0.5

/**
 * Windows that are opened at night as far as it pays: the share of the opening, 0…1, that agrees with the mean which the air
 * comes to with it in the step, the plant left aside. Windows that were open or shut by the temperature where a step begins
 * would leave the cooler of two rooms shut and, an hour later, the warmer. The share falls as it is opened more, so there is
 * one answer; the air with it rises with every temperature that it begins from.
 */
export class NightWindows {
  /** Opening in the prepared step, 0…1. */
  share = 0
  private readonly network: RoomNetwork
  private readonly stop_C: number
  private readonly room: RoomStep
  private hour = 0

  /** @param stop_C  air temperature at which they are shut, °C */
  constructor(network: RoomNetwork, stop_C: number, room: RoomStep) {
    this.network = network
    this.stop_C = stop_C
    this.room = room
  }

  /** What they let through in the prepared step, W/K. */
  get vent_WK(): number {
    return this.share * this.network.nightVent_WK
  }

  /** Finds the opening, prepares the room's step with it, and returns it. */
  prepare(hour: number): number {
    this.hour = hour
    const { nightVent_WK, ventAllowed } = this.network
    if (nightVent_WK > 0 && ventAllowed[hour] === 1) this.share = shareUsed(this.slackAt_K, this.share)
    else {
      this.share = 0
      this.room.prepare(hour, 0)
    }
    return this.share
  }

  /** What is left of the differences that a share asks for, in terms of K. */
  private readonly slackAt_K = (share: number): number => {
    const { room, network, hour } = this
    room.prepare(hour, share * network.nightVent_WK)
    const air_C = room.airDrive_W / room.air_WK
    const cooler_K = air_C - network.outdoor_C[hour]!
    return Math.min((cooler_K - OPENS_FROM_K) / OPENS_OVER_K, (air_C - this.stop_C) / SHUTS_OVER_K) - share
  }
}
