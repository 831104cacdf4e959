import { gzipSync, strToU8, zipSync } from 'fflate'
import { describe, expect, test } from 'vitest'
import { needsWhole, openWeather, textOfFile } from '#model/outdoors/intake'

const decode = (bytes: Uint8Array, encoding: string, strict: boolean): string =>
  new TextDecoder(encoding, { fatal: strict }).decode(bytes)
const textOf = (bytes: Uint8Array): string => textOfFile(bytes, decode, 'made')

const HOURS = 96
const when = (h: number): string => new Date(Date.UTC(2023, 6, 1, h)).toISOString().slice(0, 16)
const air = (h: number): number => Number((18 + 7 * Math.sin(((h % 24) - 9) * 0.26)).toFixed(2))
const sun = (h: number): number => Math.round(Math.max(0, 850 * Math.sin(((h % 24) - 6) * 0.2618)))
const hours = [...Array(HOURS).keys()]
const CSV = [
  'time,Temp (C),RH (%),Wind (m/s),GHI (W/m2)',
  ...hours.map((h) => `${when(h)},${air(h)},50,${2 + (h % 3)},${sun(h)}`),
].join('\n')

const COLUMNS = {
  latitude: 40,
  longitude: 0.1,
  elevation: 600,
  utc_offset_seconds: 0,
  hourly_units: { time: 'iso8601', temperature_2m: '°C', relative_humidity_2m: '%', wind_speed_10m: 'km/h', shortwave_radiation: 'W/m²' },
  hourly: {
    time: hours.map(when),
    temperature_2m: hours.map(air),
    relative_humidity_2m: hours.map(() => 50),
    wind_speed_10m: hours.map((h) => 3.6 * (2 + (h % 3))),
    shortwave_radiation: hours.map(sun),
  },
} // prettier-ignore

describe('packed files', () => {
  test.each([
    [
      'one table in a zip',
      zipSync({ 'a/weather.csv': strToU8(CSV), '__MACOSX/._weather.csv': strToU8('x') }),
    ],
    ['a table beside a readme', zipSync({ 'weather.csv': strToU8(CSV), 'LICENCE.pdf': strToU8('x') })],
    ['gzip', gzipSync(strToU8(CSV))],
    ['plain', strToU8(CSV)],
  ])('%s', (_, bytes) => {
    expect(textOf(bytes)).toBe(CSV)
  })

  test('several tables, a broken archive and one without a table are refused with a way on', () => {
    const two = zipSync({ 'a.csv': strToU8(CSV), 'b.csv': strToU8(CSV) })
    expect(() => textOf(two)).toThrow(/holds 2 tables: a\.csv, b\.csv/)
    expect(() => textOf(two.subarray(0, 200))).toThrow(/can't be unpacked/)
    expect(() => textOf(gzipSync(strToU8(CSV)).subarray(0, 60))).toThrow(/can't be unpacked|more than/)
    expect(() => textOf(zipSync({ 'a.pdf': strToU8('x'), 'b.pdf': strToU8('x') }))).toThrow(/no table/)
  })

  test('the first bytes say whether a file must be whole', () => {
    expect(needsWhole(strToU8(CSV), decode)).toBe(false)
    expect(needsWhole(gzipSync(strToU8(CSV)), decode)).toBe(true)
    expect(needsWhole(strToU8('  {"hourly": {}}'), decode)).toBe(true)
  })
})

describe('JSON', () => {
  const opened = (json: unknown, site = {}) =>
    openWeather(textOf(strToU8(JSON.stringify(json))), { file: 'made.json', site })

  test('columns with their units and the place beside them', () => {
    const { record, questions, mapping } = opened(COLUMNS)
    expect(record!.site).toMatchObject({ latitude_deg: 40, longitude_deg: 0.1, altitude_m: 600 })
    expect(questions).toEqual([])
    expect(mapping!.columns.find(({ quantity }) => quantity === 'windSpeed')!.unit).toBe('km/h')
    expect(record!.wind_ms.slice(10, 20).every((wind) => wind > 1.9 && wind < 4.1)).toBe(true)
  })

  const site = { latitude_deg: 40, longitude_deg: 0.1, altitude_m: 600, utcOffset_h: 0 }
  test.each([
    ['rows as objects', hours.map((h) => ({ time: when(h), 'Temp (C)': air(h), 'RH (%)': 50, 'Wind (m/s)': 2, 'GHI (W/m2)': sun(h) }))],
    ['values with their unit', { data: hours.map((h) => ({ time: when(h), temperature: { value: air(h), unit: 'C' }, humidity: { value: 50, unit: '%' }, windSpeed: { value: 2, unit: 'm/s' }, ghi: { value: sun(h), unit: 'W/m2' } })) }],
    ['rows as lists under names', { columns: ['time', 'Temp (C)', 'RH (%)', 'Wind (m/s)', 'GHI (W/m2)'], data: hours.map((h) => [when(h), air(h), 50, 2, sun(h)]) }],
    ['rows as lists under named fields', { fields: [{ name: 'time' }, { name: 'Temp', unit: 'C' }, { name: 'RH', unit: '%' }, { name: 'Wind', unit: 'm/s' }, { name: 'GHI', unit: 'W/m2' }], rows: hours.map((h) => [when(h), air(h), 50, 2, sun(h)]) }],
  ])('%s', (_, json) => {
    const { record, problems } = opened(json, site)
    expect(record, JSON.stringify(problems)).not.toBeNull()
    expect(record!.hours).toBe(HOURS)
    expect(record!.airTemp_C[14]).toBeCloseTo(air(14), 6)
  }) // prettier-ignore

  test('broken JSON and JSON without a table are refused with a reason', () => {
    expect(() => textOf(strToU8('{"hourly": [1, 2'))).toThrow(/can't be read as such/)
    expect(() => textOf(strToU8('{"a": 1}'))).toThrow(/holds no table/)
    expect(() => textOf(strToU8('[]'))).toThrow(/holds no table/)
    expect(() => textOf(strToU8('{"a": {"b": {"c": {"d": {"e": [1,2]}}}}}'))).toThrow(/holds no table/)
  })
})
