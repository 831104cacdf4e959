import { describe, expect, test } from 'vitest'
import { findPlace, placeWeather, USUAL_PLACE, type FoundPlace, type PlaceAsked } from '#model/outdoors/place'
import { dayRanges, monthMeans } from '#model/basis/hours'
import { seededRandom } from '#model/basis/numbers'
import { monthTargets } from '#inside/model/outdoors/place/months.ts'
import { WEATHER_COLUMNS, type WeatherRecord } from '#model/outdoors/weather'
import { PLACES, TOWNS } from './held-data.ts'

const ASKED: PlaceAsked = {
  latitude_deg: 50.06,
  longitude_deg: 19.94,
  altitude_m: 220,
  name: null,
  warming_K: null,
}
const found = findPlace(PLACES, TOWNS, ASKED)
const year = placeWeather(found)

/** Finite, dew point under the air, light by day only, nothing below zero that can't be. */
function consistent(record: WeatherRecord): boolean {
  for (let h = 0; h < record.hours; h++) {
    if (!WEATHER_COLUMNS.every((name) => Number.isFinite(record[name][h]))) return false
    if (record.dewPoint_C[h]! > record.airTemp_C[h]! + 1e-9 || record.wind_ms[h]! < 0) return false
    if (record.cloud_frac[h]! < 0 || record.cloud_frac[h]! > 1) return false
    if (record.globalHorizontal_Wm2[h]! < 0 || record.diffuseHorizontal_Wm2[h]! < 0) return false
  }
  return true
}

/** How far the year's months are from what they are to hold: K, K, K, and shares of cloud and wind. */
function misses(place: FoundPlace, record: WeatherRecord): Record<string, number> {
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

describe('the year of a place', () => {
  test('holds its months: air, dew point to 0.05 K, cloud and wind to 1 %', () => {
    const off = misses(found, year)
    expect(off['air_K']).toBeLessThan(0.05)
    expect(off['dew_K']).toBeLessThan(0.05)
    expect(off['cloud_frac']).toBeLessThan(0.01)
    expect(off['wind']).toBeLessThan(0.01)
    expect(off['range_K']).toBeLessThan(0.05)
  })

  test('the same place gives the same bytes; another year and another place do not', () => {
    expect(placeWeather(findPlace(PLACES, TOWNS, ASKED)).airTemp_C).toEqual(year.airTemp_C)
    expect(placeWeather(found, { ...USUAL_PLACE, another: 1 }).airTemp_C).not.toEqual(year.airTemp_C)
  })

  test('says what it is', () => {
    expect(year.madeFrom).toBe('months')
    expect(year.basis).toMatch(/monthly climate of 1961–1990 \(\+ 1\.3 K\).*not measured.*New et al\. 2002/)
    expect(year.site).toMatchObject({ name: 'Krakow', utcOffset_h: 1, altitude_m: 220 })
  })

  test('a hot summer is warmer in its three warmest months and nowhere else', () => {
    const hot = monthMeans(placeWeather(found, { ...USUAL_PLACE, hotSummer: true }).airTemp_C)
    const usual = monthMeans(year.airTemp_C)
    const more = Array.from(hot, (value, k) => value - usual[k]!)
    expect(Math.min(more[5]!, more[6]!, more[7]!)).toBeGreaterThan(0.5)
    expect(Math.max(...more)).toBeLessThan(2.5)
    expect(Math.abs(more[0]!) + Math.abs(more[11]!)).toBeLessThan(0.05)
  })

  test('the hottest hour of an ordinary year is met in the median, and refused where it does not go with the months', () => {
    const hottest = (another: number) =>
      Math.max(...placeWeather(found, { hottest_C: 34, hotSummer: false, another }).airTemp_C)
    const median = [0, 1, 2, 3, 4].map(hottest).toSorted((a, b) => a - b)[2]!
    expect(Math.abs(median - 34)).toBeLessThan(0.2)
    expect(() => placeWeather(found, { ...USUAL_PLACE, hottest_C: 60 })).toThrow(/60 °C/)
  })
})

test(
  '200 towns and 100 random points on land: consistent years that hold their months',
  { timeout: 120_000 },
  () => {
    const random = seededRandom(7)
    const asked: PlaceAsked[] = Array.from({ length: 200 }, (_, i) => {
      const { latitude_deg, longitude_deg, altitude_m } = TOWNS[(i * 131 + 17) % TOWNS.length]!
      return { latitude_deg, longitude_deg, altitude_m, name: null, warming_K: null }
    })
    for (let i = 0; i < 100; i++) {
      const near = Math.floor(random() * PLACES.count)
      asked.push({
        latitude_deg: Math.max(-89, Math.min(89, PLACES.latitude_deg[near]! + random() - 0.5)),
        longitude_deg: Math.max(-180, Math.min(180, PLACES.longitude_deg[near]! + random() - 0.5)),
        altitude_m: null,
        name: null,
        warming_K: null,
      })
    }
    let worst_K = 0
    for (const one of asked) {
      const place = findPlace(PLACES, TOWNS, one)
      const record = placeWeather(place)
      expect(consistent(record), `${one.latitude_deg}, ${one.longitude_deg}`).toBe(true)
      worst_K = Math.max(worst_K, misses(place, record)['air_K']!)
    }
    console.log(`300 places: month means of the air within ${worst_K.toFixed(3)} K`)
    expect(worst_K).toBeLessThan(0.05)
  },
)

test('a place far from all others, and one on a slope, are warned about', () => {
  const codes = (asked: Partial<PlaceAsked>) =>
    findPlace(PLACES, TOWNS, { ...ASKED, ...asked }).warnings.map(({ code }) => code)
  expect(codes({ altitude_m: 1500 })).toContain('place-height')
  expect(codes({ latitude_deg: 21, longitude_deg: 51, altitude_m: null })).toContain('place-far')
  expect(codes({})).toEqual([])
  expect(() => codes({ latitude_deg: 95 })).toThrow(/latitude/)
})
