import { blackbody_Wm2 } from '#model/air/blackbody.ts'
import { windFactor_frac } from '#model/air/wind.ts'
import { outsideConvection_Wm2K } from '#model/room/films.ts'
import { solAir, type SurfaceWeather } from '#model/room/sol-air.ts'
import type { SkyHours } from '#model/sky/hours.ts'
import type { WeatherRecord } from '#model/weather/record.ts'

/** What of an outside surface decides its sol-air temperature, beside the way it faces. */
export interface Finish {
  readonly absorptance_frac: number
  readonly emittance_frac: number
  /** Share of its view that is sky; the rest is black and as warm as the air. */
  readonly skyView_frac: number
}

/** An outside surface each hour: sol-air temperature, °C, and the film to it, W/m²K (`solAir`). */
export interface OutsideHours {
  readonly temp_C: Float64Array
  readonly film_Wm2K: Float64Array
}

/**
 * Sol-air temperature and film of a surface, hour by hour.
 * @param sun_Wm2   irradiance on its plane, W/m², one entry an hour
 * @param height_m  of the eaves, where the wind is taken, m
 */
export function outsideHours(
  finish: Finish,
  sun_Wm2: Float64Array,
  height_m: number,
  weather: WeatherRecord,
  sky: SkyHours,
): OutsideHours {
  const temp_C = new Float64Array(weather.hours)
  const film_Wm2K = new Float64Array(weather.hours)
  const atEaves = windFactor_frac('open', height_m)
  const view = finish.skyView_frac
  const now: { -readonly [K in keyof SurfaceWeather]: number } = {
    air_C: 0,
    absorbedSun_Wm2: 0,
    longwave_Wm2: 0,
    emittance_frac: finish.emittance_frac,
    convection_Wm2K: 0,
  }
  for (let h = 0; h < weather.hours; h++) {
    now.air_C = weather.airTemp_C[h]!
    now.absorbedSun_Wm2 = finish.absorptance_frac * sun_Wm2[h]!
    now.longwave_Wm2 = view * sky.total_Wm2[h]! + (1 - view) * blackbody_Wm2(now.air_C)
    now.convection_Wm2K = outsideConvection_Wm2K(weather.wind_ms[h]! * atEaves)
    const surface = solAir(now)
    temp_C[h] = surface.temp_C
    film_Wm2K[h] = surface.film_Wm2K
  }
  return { temp_C, film_Wm2K }
}
