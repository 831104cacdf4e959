import { deliveryDuty, deliveryPower_W, ROOM_HEAD_Pa, type DeliveryDuty } from '#model/building/store'
import { standardBore_m, WATER_RULE } from '#model/panels/loop'
import type { Plant } from './plant.ts'

/** Pipe of the room's loop: speed asked for, m/s, and the length reckoned with, there and back, m (common practice, no source). */
const SPEED_ms = 0.6
export const ROOM_PIPE_m = 10
/** Nominal bore of its drain valve, m. */
export const ROOM_TEE_m = 0.015
/** Mixing valves are sold by these flows at 1 bar, m³/h, with threads of about these nominal bores, m (common practice, no source). */
const VALVES = [
  [0.63, 0.015],
  [1, 0.015],
  [1.6, 0.015],
  [2.5, 0.015],
  [4, 0.02],
  [6.3, 0.02],
  [10, 0.025],
  [16, 0.032],
  [25, 0.04],
  [40, 0.05],
] as const
const BAR_Pa = 100_000

/** The cooler of the room as it is bought, from the conductance that the year was reckoned with. */
export interface RoomCoil extends DeliveryDuty {
  readonly bore_m: number
  /** Flow of the mixing valve at 1 bar, m³/s. */
  readonly kvs_m3s: number
  /** Nominal bore of its threads, m. */
  readonly mixingBore_m: number
  /** What pump and fan draw together at full flow, as the year counts them, W. */
  readonly counted_W: number
  /** Most that was delivered in an hour of the simulated year, W. */
  readonly most_W: number
  /** Store water to the room, less the room, in that hour, K. */
  readonly mostBelow_K: number
}

export function roomCoil(plant: Plant): RoomCoil {
  const { store } = plant.answer.scenario
  const duty = deliveryDuty(store)
  const share = Math.sqrt(ROOM_HEAD_Pa.mixing / BAR_Pa)
  const [kvs_m3h, mixingBore_m] =
    VALVES.find(([kvs]) => (3600 * duty.water_m3s) / kvs <= share) ?? VALVES.at(-1)!
  return {
    ...duty,
    bore_m: standardBore_m(WATER_RULE, Math.sqrt((4 * duty.water_m3s) / (Math.PI * SPEED_ms))),
    kvs_m3s: kvs_m3h / 3600,
    mixingBore_m,
    counted_W: deliveryPower_W(store),
    ...mostDelivered(plant),
  }
}

function mostDelivered({ answer }: Plant): Pick<RoomCoil, 'most_W' | 'mostBelow_K'> {
  const { delivered_W, storeBottom_C, air_C } = answer.year
  let at = 0
  for (let h = 1; h < delivered_W.length; h++) if (delivered_W[h]! > delivered_W[at]!) at = h
  return { most_W: delivered_W[at] ?? 0, mostBelow_K: (air_C[at] ?? 0) - (storeBottom_C[at] ?? 0) }
}
