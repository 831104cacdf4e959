import { blackbody_Wm2 } from '#model/outdoors/air'
import { outsideConvection_Wm2K } from './films.ts'
import { solAir, type SurfaceWeather } from './sol-air.ts'
import type { OutsideHours } from './spec.ts'
import type { SkyHours } from '#model/outdoors/sky'
import type { WeatherRecord } from '#model/outdoors/weather'

/** What of an outside surface decides its sol-air temperature, beside the way it faces. */
export interface Finish {
  readonly absorptance_frac: number
  readonly emittance_frac: number
  /** Share of its view that is sky; the rest is black and as warm as the air. */
  readonly skyView_frac: number
}

/**
 * Sol-air temperature and film of a surface, hour by hour.
 * @param sun_Wm2   irradiance on its plane, W/m², one entry an hour
 * @param windFactor_frac  wind at the eaves over that of the record, –
 */
export function outsideHours(
  finish: Finish,
  sun_Wm2: Float64Array,
  windFactor_frac: number,
  weather: WeatherRecord,
  sky: SkyHours,
): OutsideHours {
  const temp_C = new Float64Array(weather.hours)
  const film_Wm2K = new Float64Array(weather.hours)
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
    now.convection_Wm2K = outsideConvection_Wm2K(weather.wind_ms[h]! * windFactor_frac)
    const surface = solAir(now)
    temp_C[h] = surface.temp_C
    film_Wm2K[h] = surface.film_Wm2K
  }
  return { temp_C, film_Wm2K }
}

/**
 * Faces of the same layers as one: films by area, temperatures by area and film. They differ only in what they see, and
 * heat that crosses them adds up.
 */
export function merged(
  parts: readonly { readonly area_m2: number; readonly outside: OutsideHours }[],
): OutsideHours {
  const hours = parts[0]!.outside.temp_C.length
  const area_m2 = parts.reduce((sum, part) => sum + part.area_m2, 0)
  const temp_C = new Float64Array(hours)
  const film_Wm2K = new Float64Array(hours)
  for (let h = 0; h < hours; h++) {
    let film_WK = 0
    let drive_W = 0
    for (const part of parts) {
      const own_WK = part.area_m2 * part.outside.film_Wm2K[h]!
      film_WK += own_WK
      drive_W += own_WK * part.outside.temp_C[h]!
    }
    film_Wm2K[h] = area_m2 > 0 ? film_WK / area_m2 : parts[0]!.outside.film_Wm2K[h]!
    temp_C[h] = film_WK > 0 ? drive_W / film_WK : parts[0]!.outside.temp_C[h]!
  }
  return { temp_C, film_Wm2K }
}
