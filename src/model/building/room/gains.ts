import { localHour } from '#model/basis/hours'
import type { WeatherRecord } from '#model/outdoors/weather'

/** Share of internal gains that goes to the air at once, the rest to all faces by area: ISO 52016-1:2017. */
export const CONVECTIVE_GAINS_frac = 0.4

/** Internal gains of each hour, W, from the 24 h profile by local standard time. */
export function gainHours_W(profile_W: readonly number[], weather: WeatherRecord): Float64Array {
  return new Float64Array(weather.hours).map(
    (_, h) => profile_W[Math.floor(localHour(weather, h) + 0.5) % 24]!,
  )
}
