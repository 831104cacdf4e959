import {
  blackbody_Wm2,
  WINDOW_EMISSION,
  AIR_SPECIFIC_HEAT_JKGK,
  LEWIS_FACTOR,
  vapourPressure_Pa,
  WATER_AIR_MOLAR_RATIO,
} from '#model/outdoors/air'
import { valueAt } from '#model/basis/numbers'
import type { PanelSetting } from './setting.ts'
import { windowFactor_frac, type SkyHours } from '#model/outdoors/sky'
import type { PlaneIrradiance } from '#model/outdoors/sun'
import type { WeatherRecord } from '#model/outdoors/weather'

/** What falls on and blows over the panel in one hour. */
export interface PanelHour {
  air_C: number
  pressure_Pa: number
  vapour_Pa: number
  /** Sky and surroundings on the panel's plane inside 8–13 µm and outside it, W/m². */
  window_Wm2: number
  offWindow_Wm2: number
  /** Irradiance on the plane, W/m². */
  sun_Wm2: number
  /** Forced convection on the exposed face, W/m²K. */
  forced_Wm2K: number
}

/** An hour to be filled by `readPanelHour`. */
export function emptyPanelHour(): PanelHour {
  return {
    air_C: 0,
    pressure_Pa: 0,
    vapour_Pa: 0,
    window_Wm2: 0,
    offWindow_Wm2: 0,
    sun_Wm2: 0,
    forced_Wm2K: 0,
  }
}

/**
 * One hour as the panel meets it: sky by band turned onto the plane, what hides the sky taken as black at air
 * temperature, wind at the panel's height.
 */
export function readPanelHour(
  setting: PanelSetting,
  weather: WeatherRecord,
  sky: SkyHours,
  sun: PlaneIrradiance,
  hour: number,
  into: PanelHour,
): void {
  const air = weather.airTemp_C[hour]!
  const black = blackbody_Wm2(air)
  const blackWindow = valueAt(WINDOW_EMISSION, air)
  const { skyOnPlane } = setting
  const hidden = 1 - skyOnPlane.uniform_frac
  const window = sky.window_Wm2[hour]!
  into.air_C = air
  into.pressure_Pa = weather.pressure_Pa[hour]!
  into.vapour_Pa = vapourPressure_Pa(weather.dewPoint_C[hour]!)
  into.window_Wm2 = window * windowFactor_frac(skyOnPlane, window / blackWindow) + hidden * blackWindow
  into.offWindow_Wm2 = sky.offWindow_Wm2[hour]! * skyOnPlane.uniform_frac + hidden * (black - blackWindow)
  into.sun_Wm2 = sun.total_Wm2[hour]!
  into.forced_Wm2K = setting.windSlope * Math.max(0, weather.wind_ms[hour]!)
}

/**
 * Mass transfer by the analogy with heat: evaporation per Pa of vapour-pressure difference and W/m²K of
 * convection, kg/s per (Pa W/K).
 *   m = h_c (0.622/(c_p P)) Le^(−2/3) (e_sat − e_air)
 * Source: Chilton & Colburn 1934; Incropera & DeWitt, eq. 6.60.
 */
export function massTransfer(pressure_Pa: number): number {
  return (WATER_AIR_MOLAR_RATIO * LEWIS_FACTOR) / (AIR_SPECIFIC_HEAT_JKGK * pressure_Pa)
}
