import { dewPointFromHumidity_C, standardPressure_Pa } from '#model/outdoors/air'
import { sunHours, type SunHours } from '#model/outdoors/sun'
import type { WeatherRecord } from '#model/outdoors/weather'

/** An invented record and its sun, for tests: seasons, days, calm hours, dry and soaking nights, frost. */
export interface InventedWeather {
  readonly weather: WeatherRecord
  readonly sun: SunHours
}

const LATITUDE_DEG = 36
const LONGITUDE_DEG = -80
const ALTITUDE_M = 270

/** Lehmer's generator (Park & Miller 1988): the same numbers for the same seed. */
function random(seed: number): () => number {
  let state = seed
  return () => (state = (state * 16807) % 2147483647) / 2147483647
}

/** Rough, not real: made to reach every corner of the panel's balance, not to look like a place. */
export function inventedWeather(hours: number, seed = 1): InventedWeather {
  const next = random(seed)
  const start_utcMs = Date.UTC(2023, 0, 1, 5)
  const sun = sunHours(start_utcMs, hours, 0.5, LATITUDE_DEG, LONGITUDE_DEG)
  const column = () => new Float64Array(hours)
  const weather = {
    site: {
      name: 'Invented',
      latitude_deg: LATITUDE_DEG,
      longitude_deg: LONGITUDE_DEG,
      altitude_m: ALTITUDE_M,
      utcOffset_h: -5,
    },
    start_utcMs,
    hours,
    radiationMiddle_h: 0.5,
    airTemp_C: column(),
    dewPoint_C: column(),
    pressure_Pa: column().fill(standardPressure_Pa(ALTITUDE_M)),
    wind_ms: column(),
    globalHorizontal_Wm2: column(),
    directNormal_Wm2: column(),
    diffuseHorizontal_Wm2: column(),
    cloud_frac: column(),
    origins: {},
    basis: 'Invented for tests.',
  }
  for (let i = 0; i < hours; i++) {
    const season = -12 * Math.cos((2 * Math.PI * (i / 24 - 20)) / 365)
    weather.airTemp_C[i] =
      15 + season - 5 * Math.cos((2 * Math.PI * ((i % 24) - 15 + 12)) / 24) + 4 * (next() - 0.5)
    weather.dewPoint_C[i] = dewPointFromHumidity_C(weather.airTemp_C[i]!, Math.min(1, 0.35 + 0.7 * next()))
    weather.wind_ms[i] = next() < 0.15 ? 0 : 8 * next() * next()
    weather.cloud_frac[i] = next() < 0.5 ? 0 : next()
    const sine = Math.sin((sun.altitude_deg[i]! * Math.PI) / 180)
    if (sine <= 0) continue
    weather.globalHorizontal_Wm2[i] = 1000 * sine * (1 - 0.7 * weather.cloud_frac[i]!)
    weather.diffuseHorizontal_Wm2[i] = 0.3 * weather.globalHorizontal_Wm2[i]!
    weather.directNormal_Wm2[i] = sine > 0.05 ? (0.7 * weather.globalHorizontal_Wm2[i]!) / sine : 0
  }
  return { weather, sun }
}
