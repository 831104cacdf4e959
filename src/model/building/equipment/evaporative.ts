import {
  AIR_SPECIFIC_HEAT_JKGK,
  airDensity_kgm3,
  humidityRatio_frac,
  vapourPressure_Pa,
  WATER_AIR_MOLAR_RATIO,
} from '#model/outdoors/air'
import { wetBulb_C } from './wet-bulb.ts'

/** An evaporative cooler: outdoor air drawn through wet pads (direct) or past wet channels (indirect) into the room. */
export interface EvaporativeSpec {
  readonly kind: 'direct' | 'indirect'
  /** Share of the wet-bulb depression that is reached, 0…1. */
  readonly effectiveness_frac: number
  /** Supply air, m³/h. */
  readonly flow_m3h: number
  /** Electric power of its fan, W for each m³/h. */
  readonly fan_Wm3h: number
  /** Cycles of concentration: make-up water is N/(N − 1) times what evaporates. */
  readonly cycles_count: number
}

/** Outdoor air in one hour. */
export interface OutdoorAir {
  readonly air_C: number
  readonly dewPoint_C: number
  readonly pressure_Pa: number
}

/** What a cooler blows into the room. */
export interface Supply {
  readonly temp_C: number
  /** Humidity ratio, kg of water per kg of dry air. */
  readonly humidity_frac: number
  /** Of dry air. */
  readonly flow_kgs: number
  /** Of the stream, W/K. */
  readonly stream_WK: number
  /** Evaporated, kg/h, without what is bled off. */
  readonly evaporated_kgh: number
}

/**
 * Supply of an evaporative cooler without the heat of its fan.
 *   t_s = t_o − ε (t_o − t_wb)
 * direct: along the wet bulb, so water m (w_s − w_o) evaporates; indirect: humidity unchanged, and the wet side
 * evaporates what the dry side loses, m c (t_o − t_s) / r.
 * Source: handbook text on evaporative coolers (probably CRC Handbook of Mechanical Engineering), eq. 9.8.6.
 */
export function evaporativeSupply(outdoor: OutdoorAir, spec: EvaporativeSpec): Supply {
  const { air_C, dewPoint_C, pressure_Pa } = outdoor
  const wet_C = wetBulb_C(air_C, dewPoint_C, pressure_Pa)
  const temp_C = air_C - spec.effectiveness_frac * (air_C - wet_C)
  const outside = humidityRatio_frac(vapourPressure_Pa(dewPoint_C), pressure_Pa)
  const direct = spec.kind === 'direct'
  // Constant enthalpy less that of the water added at the wet bulb.
  const added = direct
    ? ((1.006 + 1.86 * outside) * (air_C - temp_C)) / (2501 + 1.86 * temp_C - 4.186 * wet_C)
    : 0
  const humidity_frac = outside + added
  // Dry air in the moist volume that the fan moves.
  const dry_Pa = (pressure_Pa * WATER_AIR_MOLAR_RATIO) / (WATER_AIR_MOLAR_RATIO + humidity_frac)
  const flow_kgs = (airDensity_kgm3(temp_C, dry_Pa) * spec.flow_m3h) / 3600
  const stream_WK = flow_kgs * (AIR_SPECIFIC_HEAT_JKGK + VAPOUR_SPECIFIC_HEAT_JKGK * humidity_frac)
  const water_kgs = direct ? flow_kgs * added : (stream_WK * (air_C - temp_C)) / ROOM_EVAPORATION_JKG
  return { temp_C, humidity_frac, flow_kgs, stream_WK, evaporated_kgh: 3600 * water_kgs }
}

/** Heat of evaporation near 20 °C, J/kg. */
const ROOM_EVAPORATION_JKG = 2.454e6
/** Of water vapour, J/kg·K (ASHRAE Fundamentals, ch. 1). */
const VAPOUR_SPECIFIC_HEAT_JKGK = 1860
