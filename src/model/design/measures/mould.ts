import { meansByMonth } from '#model/basis/hours'
import { saturationPressure_Pa, vapourPressure_Pa } from '#model/outdoors/air'
import type { WeatherRecord } from '#model/outdoors/weather'
import { describedRoom, type Scenario } from '#model/design/scenario'
import { volume_m3 } from './geometry.ts'

/** Inner surface resistance for mould in corners and behind furniture, and that of panes, m²K/W (ISO 13788). */
const CORNER_M2KW = 0.25
const PANE_M2KW = 0.13
/** Inner surface resistance that U-values count with, m²K/W (ISO 6946). */
const USUAL_M2KW = 0.13
/** Mould grows above this mean relative humidity of a surface (ISO 13788). */
const MOULD_frac = 0.8
/** Gas constant of water vapour, J/kg·K. */
const VAPOUR_JKGK = 461.5

/** What winter does to the inner surfaces of a heated room. */
export interface WinterDamp {
  /** Months whose mean humidity at the coldest wall or roof corner is over 80 %. */
  readonly mouldMonths: number
  /** Months in which the panes are wet in the mean. */
  readonly wetPaneMonths: number
  /** Highest monthly mean of the relative humidity at that corner, 0…1 and more where it is wet. */
  readonly mostHumidCorner_frac: number
}

/**
 * Temperature factor of an inner surface: (surface − outdoors) / (indoors − outdoors).
 *   f = 1 − R_si / (1/U − 0.13 + R_si)
 * Source: EN ISO 13788 (equations from memory).
 */
export function surfaceFactor_frac(U_Wm2K: number, inner_m2KW: number): number {
  return 1 - inner_m2KW / (1 / U_Wm2K - USUAL_M2KW + inner_m2KW)
}

/**
 * Mould and wet panes, month by month, in a room heated to a temperature, its vapour given off inside and carried out by
 * its air changes: p_i = p_e + G R T / (n V); a corner's humidity is p_i over saturation at
 * t_e + f (t_i − t_e). Months warmer than the heating are left out.
 * Source: EN ISO 13788, monthly method (from memory). Thermal bridges worse than the plain U-value are not in it.
 */
export function winterDamp(scenario: Scenario, weather: WeatherRecord, heatedTo_C: number): WinterDamp {
  const room = describedRoom(scenario.room)
  const air_C = meansByMonth(weather, weather.airTemp_C)
  const vapour_Pa = meansByMonth(weather, weather.dewPoint_C.map(vapourPressure_Pa)).mean
  const wind_ms = meansByMonth(weather, weather.wind_ms).mean
  const corner = surfaceFactor_frac(Math.max(room.wallU_Wm2K, room.roofU_Wm2K), CORNER_M2KW)
  const pane = surfaceFactor_frac(room.windowU_Wm2K, PANE_M2KW)
  let [mouldMonths, wetPaneMonths, mostHumidCorner_frac] = [0, 0, 0]
  for (let month = 0; month < 12; month++) {
    const outdoor_C = air_C.mean[month]!
    if (air_C.count[month] === 0 || outdoor_C >= heatedTo_C) continue
    const changes_1h = room.airChange_1h + room.airChangeWind_1hms * wind_ms[month]!
    const flow_m3h = Math.max(MOST_STILL_1H, changes_1h) * volume_m3(scenario)
    const inside_Pa = vapour_Pa[month]! + (room.moisture_kgh / flow_m3h) * VAPOUR_JKGK * (heatedTo_C + 273.15)
    const at_C = (factor: number): number => outdoor_C + factor * (heatedTo_C - outdoor_C)
    const humid_frac = inside_Pa / saturationPressure_Pa(at_C(corner))
    mostHumidCorner_frac = Math.max(mostHumidCorner_frac, humid_frac)
    if (humid_frac > MOULD_frac) mouldMonths++
    if (inside_Pa >= saturationPressure_Pa(at_C(pane))) wetPaneMonths++
  }
  return { mouldMonths, wetPaneMonths, mostHumidCorner_frac }
}

/** No room is tighter than this (common practice, no source), 1/h. */
const MOST_STILL_1H = 0.02
