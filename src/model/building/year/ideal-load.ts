import { HOUR_S } from '#model/basis/hours'
import type { RoomNetwork } from '#model/building/room'
import { pastRoom } from './room-start.ts'
import { RoomStep } from './room-step.ts'

/** What holds a room between two temperatures. */
export interface HeldRange {
  /** Temperature it is heated to and cooled to, °C; null: not at all. */
  readonly heat_C: number | null
  readonly cool_C: number | null
  /** What is held: the operative temperature, or the air's. */
  readonly by: 'operative' | 'air'
  readonly stepsPerHour: number
  /** Hours run from the record's end before its first. */
  readonly warmUp_h: number
}

/** Heat that an ideal plant gives the room's air, W, mean over each hour; cooling is negative. */
export interface IdealLoad {
  readonly load_W: Float64Array
  /** Air and operative temperature, °C, means over each hour. */
  readonly air_C: Float64Array
  readonly operative_C: Float64Array
  readonly heating_J: number
  readonly cooling_J: number
}

/**
 * Load of a room held at an operative (or air) temperature by an ideal plant: exactly what is needed in every step, given to
 * the air. With both limits null the room left alone.
 * @throws RangeError when the room would be cooled below what it is heated to
 */
export function idealLoad(room: RoomNetwork, held: HeldRange): IdealLoad {
  const { heat_C, cool_C } = held
  if (heat_C !== null && cool_C !== null && heat_C > cool_C)
    throw new RangeError(`idealLoad: heated to ${heat_C} °C but cooled to ${cool_C} °C`)
  const step_s = HOUR_S / held.stepsPerHour
  const step = new RoomStep(room, step_s)
  const begin = -(held.warmUp_h % room.hours)
  const start = pastRoom(
    room,
    Array.from({ length: room.hours }, (_, k) => (k + begin + room.hours) % room.hours),
  )
  step.begin(start.air_C, start.masses)
  const column = () => new Float64Array(room.hours)
  const [load_W, air_C, operative_C] = [column(), column(), column()]
  let heating_J = 0
  let cooling_J = 0
  for (let run = -held.warmUp_h; run < room.hours; run++) {
    const h = ((run % room.hours) + room.hours) % room.hours
    load_W[h] = air_C[h] = operative_C[h] = 0
    for (let k = 0; k < held.stepsPerHour; k++) {
      step.prepare(h, 0)
      const Q = needed_W(step, held)
      const air = (step.airDrive_W + Q) / step.air_WK
      step.finish(air)
      load_W[h] += Q / held.stepsPerHour
      air_C[h] += air / held.stepsPerHour
      operative_C[h] += (0.5 * (air + step.radiantMean_C)) / held.stepsPerHour
      if (run >= 0) {
        heating_J += Math.max(0, Q) * step_s
        cooling_J += Math.max(0, -Q) * step_s
      }
    }
  }
  return { load_W, air_C, operative_C, heating_J, cooling_J }
}

/** Heat to the air that brings what is held to the nearer limit, W; 0 between them. */
function needed_W(step: RoomStep, { by, heat_C, cool_C }: HeldRange): number {
  const heldAt = (Q: number): number => {
    const air_C = (step.airDrive_W + Q) / step.air_WK
    return by === 'air' ? air_C : 0.5 * (air_C + step.radiantAt_C(air_C))
  }
  const free_C = heldAt(0)
  const perWatt_KW = heldAt(1) - free_C
  if (cool_C !== null && free_C > cool_C) return (cool_C - free_C) / perWatt_KW
  if (heat_C !== null && free_C < heat_C) return (heat_C - free_C) / perWatt_KW
  return 0
}
