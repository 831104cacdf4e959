import { fluidProperties, LOOP_TEMP_C } from '#model/panels/loop'
import type { StoreSpec } from './spec.ts'

/** Air and water that fan coils are rated at, °C: EN 1397 (27 °C dry, 19 °C wet; water 7 to 12 °C; from memory). */
export const RATED = { air_C: 27, waterIn_C: 7, waterOut_C: 12 } as const
/** Share of a coil's rated heat that is sensible, and of the water's coldness that the air takes on (common practice, no source). */
const SENSIBLE_frac = 0.75
const AIR_frac = 0.6
/** Heat capacity of a cubic metre of room air, J/m³K. */
const AIR_Jm3K = 1206
/** Water that cools a ceiling or floor warms by this share of its distance to the room (common practice, no source). */
const SURFACE_WARMS_frac = 0.25
/** Power of a fan coil's fan for its air, W per m³/s (common practice, no source). */
const FAN_Wm3s = 150
/** Electric to hydraulic, of a small circulator with a speed that can be set (common practice, no source). */
const PUMP_frac = 0.25
/** Head of the room's pump: the coil or its circuits, a mixing valve where there is one, and pipe there and back, Pa (common practice, no source). */
export const ROOM_HEAD_Pa = { coil: 20_000, mixing: 10_000, pipe: 6000 } as const

/** What carries the cold from tank to room, at full flow. */
export interface DeliveryDuty {
  /** Sensible and total heat at the catalogue's rating point, W; for fan coils. */
  readonly ratedSensible_W: number
  readonly ratedTotal_W: number
  /** 0 without a fan. */
  readonly air_m3s: number
  readonly water_m3s: number
  /** Head of the room's pump, Pa. */
  readonly head_Pa: number
  /** Electric power of pump and fan, W. */
  readonly pump_W: number
  readonly fan_W: number
}

/** Fan coil or cooled surface of a conductance between store water and room, with its pump: smooth in the conductance. */
export function deliveryDuty({
  delivery_WK,
  deliveryKind,
}: Pick<StoreSpec, 'delivery_WK' | 'deliveryKind'>): DeliveryDuty {
  const water = fluidProperties('water', 0, LOOP_TEMP_C)
  const byFan = deliveryKind === 'drained' || deliveryKind === 'surface'
  const ratedSensible_W = delivery_WK * (RATED.air_C - RATED.waterIn_C)
  const ratedTotal_W = ratedSensible_W / SENSIBLE_frac
  const capacity_WK = byFan
    ? ratedTotal_W / (RATED.waterOut_C - RATED.waterIn_C)
    : delivery_WK / SURFACE_WARMS_frac
  const water_m3s = capacity_WK / water.specificHeat_JkgK / water.density_kgm3
  const { coil, mixing, pipe } = ROOM_HEAD_Pa
  const head_Pa = coil + pipe + (deliveryKind === 'drained' ? 0 : mixing)
  const air_m3s = byFan ? delivery_WK / AIR_frac / AIR_Jm3K : 0
  return {
    ratedSensible_W,
    ratedTotal_W,
    air_m3s,
    water_m3s,
    head_Pa,
    pump_W: (water_m3s * head_Pa) / PUMP_frac,
    fan_W: FAN_Wm3s * air_m3s,
  }
}

/** Power of pump and fan of the delivery at full flow, W: as given, else what they draw by their duty. */
export function deliveryPower_W(
  store: Pick<StoreSpec, 'delivery_WK' | 'deliveryKind' | 'deliveryPower_W'>,
): number {
  if (store.deliveryPower_W > 0) return store.deliveryPower_W
  const { pump_W, fan_W } = deliveryDuty(store)
  return pump_W + fan_W
}
