import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { wordingText } from '#model/basis/words'
import {
  findPlace,
  PLACE_CREDITS,
  readClimatePlaces,
  readTowns,
  townsLike,
  townsNamed,
} from '#model/outdoors/place'
import { standardOffset_h } from '#inside/model/outdoors/place/zone.ts'
import { ROOT } from '../../../house-rules/source-files.ts'
import { climateBytes, decoded, INDEX, PLACES, townBytes, TOWNS } from './held-data.ts'

const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex')

test('both files are those of the licence notice, which lies beside them', () => {
  const notice = readFileSync(`${ROOT}static/places/DATA-LICENCE.md`, 'utf8')
  expect(notice).toContain(sha256(climateBytes).slice(0, 8))
  expect(notice).toContain(sha256(townBytes).slice(0, 8))
  for (const credit of PLACE_CREDITS) expect(notice).toContain(`Text to show in the app: "${credit}"`)
})

test('17 819 places and 26 416 towns, every value where it can be', () => {
  expect(PLACES.count).toBe(17_819)
  expect(TOWNS).toHaveLength(26_416)
  const within = (values: ArrayLike<number>, least: number, most: number) =>
    Array.from(values).every((value) => value >= least && value <= most)
  expect(within(PLACES.latitude_deg, -90, 90) && within(PLACES.longitude_deg, -180, 180)).toBe(true)
  expect(within(PLACES.altitude_m, -430, 5500)).toBe(true)
  for (let month = 0; month < 12; month++) {
    expect(within(PLACES.months.airTemp_C[month]!, -60, 45)).toBe(true)
    expect(within(PLACES.months.dailyRange_K[month]!, 0, 30)).toBe(true)
    expect(within(PLACES.months.humidity_pct[month]!, 5, 100)).toBe(true)
    expect(within(PLACES.months.sunshine_pct[month]!, 0, 100)).toBe(true)
    expect(within(PLACES.months.wind_ms[month]!, 0, 25)).toBe(true)
  }
  expect(new Set(TOWNS.map(({ zone }) => zone)).size).toBeGreaterThan(200)
})

test('no town lies under the lowest ground on Earth: a height that the source lacks is not held, and said', () => {
  const given = TOWNS.flatMap(({ altitude_m }) => (altitude_m === null ? [] : [altitude_m]))
  expect(Math.min(...given)).toBeGreaterThan(-430)
  expect(TOWNS.length - given.length).toBe(12)
  const cordova = townsNamed(INDEX, 'Cordova, PH')[0]!
  expect(cordova.altitude_m).toBeNull()
  const { latitude_deg, longitude_deg } = cordova
  const asked = { latitude_deg, longitude_deg, altitude_m: cordova.altitude_m, name: null, warming_K: null }
  const { site, assumed } = findPlace(PLACES, TOWNS, asked)
  expect(site.altitude_m).toBeGreaterThan(-10)
  expect(site.altitude_m).toBeLessThan(300)
  expect(assumed.map((line) => wordingText(line, 'si')).join(' ')).toContain('the town’s own is not held')
})

test('a file cut short or of another kind is refused in a sentence', () => {
  expect(() => readClimatePlaces(climateBytes.subarray(0, 5000))).toThrow(/climate-places\.bin/)
  expect(() => readClimatePlaces(townBytes)).toThrow(/climate-places\.bin/)
  expect(() => readTowns(townBytes.subarray(0, 9000), decoded)).toThrow(/towns\.bin/)
  expect(() => readTowns(new Uint8Array(3), decoded)).toThrow(/towns\.bin/)
})

test.each([
  ['krak', 'Krakow', 'PL'],
  ['Kraków', 'Krakow', 'PL'],
  ['sao paulo', 'Sao Paulo', 'BR'],
  ['Łódź', 'Lodz', 'PL'],
  ['cordoba, AR', 'Cordoba', 'AR'],
  ['cordoba, es', 'Cordoba', 'ES'],
  ['new york', 'New York City', 'US'],
])('%s is found', (asked, name, country) => {
  expect(townsNamed(INDEX, asked)[0]).toMatchObject({ name, country })
})

test('nothing is found for nothing, and a slip of the pen brings what is like it', () => {
  expect(townsNamed(INDEX, '  ')).toEqual([])
  expect(townsNamed(INDEX, 'Krakov')).toEqual([])
  expect(townsLike(INDEX, 'Krakov').map(({ name }) => name)).toContain('Krakow')
})

test.each([
  ['Europe/Warsaw', 1],
  ['Asia/Kolkata', 5.5],
  ['America/St_Johns', -3.5],
  ['Australia/Sydney', 10],
  ['Africa/Abidjan', 0],
])('standard time of %s is UTC%d h (tz database)', (zone, offset) => {
  expect(standardOffset_h(zone)).toBe(offset)
})
