import { withRows, type OutsideHours, type RoomNetwork, type RoomParts } from '#model/building/room'
import { RoomStep } from './room-step.ts'

/** A step so long that every mass has come to rest, s. */
const FOR_EVER_S = 1e16

/** Air and masses of a room that has come to rest. */
export interface RoomState {
  readonly air_C: number
  readonly masses: Float64Array
}

/**
 * The room at rest under the mean of some hours of its record.
 * @param hours indices into the record, at least one
 */
export function restingRoom(room: RoomNetwork, hours: readonly number[]): RoomState {
  const step = new RoomStep(withRows(meanHour(room, hours)), FOR_EVER_S)
  step.prepare(0, 0)
  step.finish(step.airDrive_W / step.air_WK)
  return { air_C: step.air_C, masses: step.masses }
}

/** One hour in place of many: means, temperatures outside weighted by their films. */
function meanHour(room: RoomNetwork, hours: readonly number[]): RoomParts {
  const mean = (values: ArrayLike<number>): number =>
    hours.reduce((sum, h) => sum + values[h]!, 0) / hours.length
  const one = (values: ArrayLike<number>): Float64Array => Float64Array.of(mean(values))
  const weighted = (values: Float64Array, weights: Float64Array): Float64Array =>
    Float64Array.of(
      hours.reduce((sum, h) => sum + values[h]! * weights[h]!, 0) /
        hours.reduce((sum, h) => sum + weights[h]!, 0),
    )
  const outside = ({ temp_C, film_Wm2K }: OutsideHours): OutsideHours => ({
    temp_C: weighted(temp_C, film_Wm2K),
    film_Wm2K: one(film_Wm2K),
  })
  return {
    ...room,
    hours: 1,
    groups: room.groups.map((group) => ({
      ...group,
      outside: group.outside === null ? null : outside(group.outside),
    })),
    windows: room.windows === null ? null : { ...room.windows, outside: outside(room.windows.outside) },
    ventilation_WK: one(room.ventilation_WK),
    outdoor_C: weighted(room.outdoor_C, room.ventilation_WK),
    sun_W: one(room.sun_W),
    gains_W: one(room.gains_W),
  }
}
