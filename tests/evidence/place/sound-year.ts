import { dayRanges, monthMeans } from '#model/basis/hours'
import { seededRandom } from '#model/basis/numbers'
import type { FoundPlace, PlaceAsked } from '#model/outdoors/place'
import { WEATHER_COLUMNS, type WeatherRecord } from '#model/outdoors/weather'
import { monthTargets } from '#inside/model/outdoors/place/months.ts'
import { PLACES, TOWNS } from '../../rooms/outdoors/place/held-data.ts'

/** What is impossible in a year, in words; null when all of it can be. */
export function impossible(record: WeatherRecord): string | null {
  for (let h = 0; h < record.hours; h++) {
    for (const name of WEATHER_COLUMNS) if (!Number.isFinite(record[name][h])) return `${name} at hour ${h}`
    if (record.dewPoint_C[h]! > record.airTemp_C[h]! + 1e-9) return `dew point over the air at hour ${h}`
    if (record.wind_ms[h]! < 0) return `wind below 0 at hour ${h}`
    if (!(record.cloud_frac[h]! >= 0 && record.cloud_frac[h]! <= 1)) return `cloud at hour ${h}`
    const [global, diffuse] = [record.globalHorizontal_Wm2[h]!, record.diffuseHorizontal_Wm2[h]!]
    if (diffuse < 0 || global < diffuse - 1e-6 || global > 1400) return `sun at hour ${h}`
    if (record.airTemp_C[h]! < -90 || record.airTemp_C[h]! > 60) return `air at hour ${h}`
  }
  return null
}

/** How far the year's months are from what they are to hold: K, K, K, and shares of cloud and wind. */
export function monthMisses(place: FoundPlace, record: WeatherRecord): Record<string, number> {
  const months = monthTargets(place.months)
  const off = (got: ArrayLike<number>, want: readonly number[], relative = false) =>
    Math.max(...want.map((value, k) => Math.abs(got[k]! - value) / (relative ? value : 1)))
  return {
    air_K: off(monthMeans(record.airTemp_C), months.airTemp_C),
    dew_K: off(monthMeans(record.dewPoint_C), months.dewPoint_C),
    range_K: off(monthMeans(dayRanges(record.airTemp_C)), months.dailyRange_K),
    cloud_frac: off(monthMeans(record.cloud_frac), months.cloud_frac),
    wind: off(monthMeans(record.wind_ms), months.wind_ms, true),
  }
}

/** Points on land: up to half a degree from a held place, the same for the same seed. */
export function landPoints(count: number, seed: number): PlaceAsked[] {
  const random = seededRandom(seed)
  return Array.from({ length: count }, () => {
    const near = Math.floor(random() * PLACES.count)
    return {
      latitude_deg: Math.max(-89, Math.min(89, PLACES.latitude_deg[near]! + random() - 0.5)),
      longitude_deg: Math.max(-180, Math.min(180, PLACES.longitude_deg[near]! + random() - 0.5)),
      altitude_m: null,
      name: null,
      warming_K: null,
    }
  })
}

/** Every so many-th town. */
export function townPoints(every: number): PlaceAsked[] {
  return TOWNS.filter((_, i) => i % every === 0).map(({ latitude_deg, longitude_deg, altitude_m }) => ({
    latitude_deg,
    longitude_deg,
    altitude_m,
    name: null,
    warming_K: null,
  }))
}
