import {
  fluidProperties,
  LOOP_TEMP_C,
  pressureGradient_Pam,
  standardBore_m,
  WATER_RULE,
} from '#model/panels/loop'
import type { Plant } from './plant.ts'

/** Air and water that fan coils are rated at, °C: EN 1397 (27 °C dry, 19 °C wet; water 7 to 12 °C; from memory). */
export const RATED = { air_C: 27, waterIn_C: 7, waterOut_C: 12 } as const
/** Share of a coil's rated heat that is sensible, and of the water's coldness that the air takes on (common practice, no source). */
const SENSIBLE_frac = 0.75
const AIR_frac = 0.6
/** Heat capacity of a cubic metre of room air, J/m³K. */
const AIR_Jm3K = 1206
/** Pipe of the room's loop: speed asked for, m/s, and the length reckoned with, there and back, m (common practice, no source). */
const SPEED_ms = 0.8
export const ROOM_PIPE_m = 10
/** Pressure allowed in a coil or in the circuits of a ceiling or floor, Pa (common practice, no source). */
export const COIL_Pa = 20_000
/** Water that cools a ceiling or floor warms by this share of its distance to the room (common practice, no source). */
const SURFACE_WARMS_frac = 0.25
/** Mixing valves are sold by these flows at 1 bar, m³/h; the loss wanted in one, at most, Pa (common practice, no source). */
const KVS_m3h = [0.63, 1, 1.6, 2.5, 4, 6.3, 10, 16, 25, 40] as const
const MIXING_Pa = 10_000
const BAR_Pa = 100_000

/** Power of a fan coil's fan for its air, W per m³/s (common practice, no source). */
const FAN_Wm3s = 150

/** The cooler of the room as it is bought, from the conductance that the year was reckoned with. */
export interface RoomCoil {
  /** Sensible and total heat at the catalogue's rating point, W; for fan coils. */
  readonly ratedSensible_W: number
  readonly ratedTotal_W: number
  readonly air_m3s: number
  readonly water_m3s: number
  readonly bore_m: number
  readonly kvs_m3h: number
  readonly mixing_Pa: number
  /** Head of P2, Pa. */
  readonly head_Pa: number
  /** What P2, at the efficiency of the loop's pump, and the fan draw at full flow, W. */
  readonly pump_W: number
  readonly fan_W: number
  /** Hours of the year in which the room is cooled. */
  readonly cools_h: number
  /** Most that was delivered in an hour of the simulated year, W. */
  readonly most_W: number
  /** Store water to the room, less the room, in that hour, K. */
  readonly mostBelow_K: number
}

export function roomCoil(plant: Plant): RoomCoil {
  const { answer } = plant
  const { delivery_WK, deliveryKind } = answer.scenario.store
  const fluid = fluidProperties('water', 0, LOOP_TEMP_C)
  const surface = deliveryKind !== 'drained' && deliveryKind !== 'surface'
  const ratedSensible_W = delivery_WK * (RATED.air_C - RATED.waterIn_C)
  const ratedTotal_W = ratedSensible_W / SENSIBLE_frac
  const capacity_WK = surface
    ? delivery_WK / SURFACE_WARMS_frac
    : ratedTotal_W / (RATED.waterOut_C - RATED.waterIn_C)
  const flow_kgs = capacity_WK / fluid.specificHeat_JkgK
  const water_m3s = flow_kgs / fluid.density_kgm3
  const bore_m = standardBore_m(WATER_RULE, Math.sqrt((4 * water_m3s) / (Math.PI * SPEED_ms)))
  const kvs_m3h =
    KVS_m3h.find((kvs) => (3600 * water_m3s) / kvs <= Math.sqrt(MIXING_Pa / BAR_Pa)) ?? KVS_m3h.at(-1)!
  const mixing_Pa = BAR_Pa * ((3600 * water_m3s) / kvs_m3h) ** 2
  const pipe_Pa = ROOM_PIPE_m * pressureGradient_Pam({ flow_kgs, bore_m, roughness_m: 0, fluid })
  const most = mostDelivered(plant)
  const head_Pa = COIL_Pa + 1.4 * pipe_Pa + (deliveryKind === 'drained' ? 0 : mixing_Pa)
  const air_m3s = delivery_WK / AIR_frac / AIR_Jm3K
  return {
    ratedSensible_W,
    ratedTotal_W,
    air_m3s,
    water_m3s,
    bore_m,
    kvs_m3h,
    mixing_Pa,
    head_Pa,
    pump_W: (water_m3s * head_Pa) / plant.loopSpec.pumpEfficiency_frac,
    fan_W: surface ? 0 : FAN_Wm3s * air_m3s,
    cools_h: answer.year.delivered_W.reduce((n, heat_W) => n + (heat_W > 0 ? 1 : 0), 0),
    ...most,
  }
}

function mostDelivered({ answer }: Plant): Pick<RoomCoil, 'most_W' | 'mostBelow_K'> {
  const { delivered_W, storeBottom_C, air_C } = answer.year
  let at = 0
  for (let h = 1; h < delivered_W.length; h++) if (delivered_W[h]! > delivered_W[at]!) at = h
  return { most_W: delivered_W[at] ?? 0, mostBelow_K: (air_C[at] ?? 0) - (storeBottom_C[at] ?? 0) }
}
