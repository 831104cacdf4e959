import { describe, expect, test } from 'vitest'
import { findPlace, placeWeather, USUAL_PLACE, type PlaceAsked } from '#model/outdoors/place'
import { monthMeans } from '#model/basis/hours'
import { impossible, landPoints, monthMisses, townPoints } from '../../../evidence/place/sound-year.ts'
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

describe('the year of a place', () => {
  test('holds its months: air, dew point to 0.05 K, cloud and wind to 1 %', () => {
    const off = monthMisses(found, year)
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
    // Other years: the place's own is chosen to be ordinary.
    const hottest = (another: number) =>
      Math.max(...placeWeather(found, { hottest_C: 34, hotSummer: false, another }).airTemp_C)
    const median = [1, 2, 3, 4, 5].map(hottest).toSorted((a, b) => a - b)[2]!
    expect(Math.abs(median - 34)).toBeLessThan(0.2)
    expect(() => placeWeather(found, { ...USUAL_PLACE, hottest_C: 60 })).toThrow(/60 °C/)
  })
})

test('a sample of towns and of points on land: years that can be and hold their months (all: npm run -s evidence -- every-place)', () => {
  const worst: Record<string, number> = {}
  const asked = [...townPoints(500), ...landPoints(40, 7)]
  for (const one of asked) {
    const place = findPlace(PLACES, TOWNS, one)
    const record = placeWeather(place)
    expect(impossible(record), `${one.latitude_deg}, ${one.longitude_deg}`).toBeNull()
    for (const [name, off] of Object.entries(monthMisses(place, record)))
      worst[name] = Math.max(worst[name] ?? 0, off)
  }
  console.log(`${asked.length} places hold their months: ${JSON.stringify(worst)}`)
  expect(worst['air_K']).toBeLessThan(0.05)
  expect(worst['dew_K']).toBeLessThan(0.05)
  expect(worst['range_K']).toBeLessThan(0.05)
  expect(worst['cloud_frac']).toBeLessThan(0.01)
  expect(worst['wind']).toBeLessThan(0.01)
})

test('a place far from all others, and one on a slope, are warned about', () => {
  const codes = (asked: Partial<PlaceAsked>) =>
    findPlace(PLACES, TOWNS, { ...ASKED, ...asked }).warnings.map(({ code }) => code)
  expect(codes({ altitude_m: 1500 })).toContain('place-height')
  expect(codes({ latitude_deg: 21, longitude_deg: 51, altitude_m: null })).toContain('place-far')
  expect(codes({})).toEqual([])
  expect(() => codes({ latitude_deg: 95 })).toThrow(/latitude/)
})
