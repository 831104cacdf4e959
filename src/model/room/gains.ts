import { localHour } from '#model/room/day.ts'
import type { WeatherRecord } from '#model/weather/record.ts'

/** Share of a gain that goes to the air at once: ISO 52016-1:2017, internal gains 0.40, sunlight 0.10. */
export const CONVECTIVE_GAINS_frac = 0.4
export const CONVECTIVE_SUN_frac = 0.1

/** Internal gains of each hour, W, from the 24 h profile by local standard time. */
export function gainHours_W(profile_W: readonly number[], weather: WeatherRecord): Float64Array {
  return new Float64Array(weather.hours).map(
    (_, h) => profile_W[Math.floor(localHour(weather, h) + 0.5) % 24]!,
  )
}

/** Sunlight and gains shared out, W per hour. What does not go to the air falls on walls, roof and floor by area. */
export interface SharedGains {
  readonly air_W: Float64Array
  readonly fabric_W: Float64Array
  readonly slab_W: Float64Array
}

export function shareGains(sun_W: Float64Array, gains_W: Float64Array, floorShare_frac: number): SharedGains {
  const toAir = (h: number) => CONVECTIVE_SUN_frac * sun_W[h]! + CONVECTIVE_GAINS_frac * gains_W[h]!
  const air_W = sun_W.map((_, h) => toAir(h))
  const slab_W = sun_W.map((sun, h) => floorShare_frac * (sun + gains_W[h]! - air_W[h]!))
  const fabric_W = sun_W.map((sun, h) => sun + gains_W[h]! - air_W[h]! - slab_W[h]!)
  return { air_W, fabric_W, slab_W }
}
