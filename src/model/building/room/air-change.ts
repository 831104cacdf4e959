import {
  AIR_SPECIFIC_HEAT_JKGK,
  airDensity_kgm3,
  dewPoint_C,
  humidityRatio_frac,
  vapourPressure_Pa,
  WATER_AIR_MOLAR_RATIO,
} from '#model/outdoors/air'
import type { RoomSpec } from './spec.ts'
import type { WeatherRecord } from '#model/outdoors/weather'

/** Air the room exchanges with outdoors while shut. */
export interface AirChange {
  /** W/K per hour. */
  readonly conductance_WK: Float64Array
  /** Indoor dew point, °C per hour. */
  readonly dewPoint_C: Float64Array
}

/** What of a room's description its air change depends on, beside its volume. */
type Leaks = Pick<RoomSpec, 'airChange_1h' | 'airChangeWind_1hms' | 'moisture_kgh'>

/** Wetter than this a room drips by itself: the dew point is held here, °C. */
const WETTEST_C = 50

/**
 * Air change n = n₀ + n_w v and what it carries. Moisture is steady in each hour: w_in = w_out + G/(ρ V n). Windows
 * opened at night are left out: they would only dry the air of a room that gives off moisture.
 */
export function airChange(spec: Leaks, volume_m3: number, weather: WeatherRecord): AirChange {
  const conductance_WK = new Float64Array(weather.hours)
  const indoor_C = new Float64Array(weather.hours)
  for (let h = 0; h < weather.hours; h++) {
    const changes_1h = spec.airChange_1h + spec.airChangeWind_1hms * weather.wind_ms[h]!
    const pressure_Pa = weather.pressure_Pa[h]!
    const flow_kgs = airFlow_kgs(changes_1h, volume_m3, weather.airTemp_C[h]!, pressure_Pa)
    conductance_WK[h] = flow_kgs * AIR_SPECIFIC_HEAT_JKGK
    indoor_C[h] = indoorDewPoint_C(weather.dewPoint_C[h]!, pressure_Pa, spec.moisture_kgh / 3600 / flow_kgs)
  }
  return { conductance_WK, dewPoint_C: indoor_C }
}

/** Air that passes at a number of changes per hour, kg/s. */
function airFlow_kgs(changes_1h: number, volume_m3: number, air_C: number, pressure_Pa: number): number {
  return (airDensity_kgm3(air_C, pressure_Pa) * volume_m3 * changes_1h) / 3600
}

/** Dew point after `added` kg of water per kg of dry air, °C. */
function indoorDewPoint_C(outdoorDew_C: number, pressure_Pa: number, added: number): number {
  if (added === 0) return outdoorDew_C
  const ratio = humidityRatio_frac(vapourPressure_Pa(outdoorDew_C), pressure_Pa) + added
  const vapour_Pa = (pressure_Pa * ratio) / (WATER_AIR_MOLAR_RATIO + ratio)
  return Math.min(WETTEST_C, dewPoint_C(vapour_Pa))
}

/** Conductance added while the windows are open at night, W/K: air at 20 °C and the record's mean pressure. */
export function nightVent_WK(spec: RoomSpec, volume_m3: number, weather: WeatherRecord): number {
  if (!spec.nightVent) return 0
  const mean_Pa = weather.pressure_Pa.reduce((sum, value) => sum + value, 0) / weather.hours
  return airFlow_kgs(spec.nightAirChange_1h, volume_m3, 20, mean_Pa) * AIR_SPECIFIC_HEAT_JKGK
}
