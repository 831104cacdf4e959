import { expect, test } from 'vitest'
import {
  layoutSignature,
  type TableMapping,
  readMapping,
  writeMapping,
  previewRows,
  openWeather,
} from '#model/outdoors/intake'
import { sample, sampleSite, usualCells, write } from './dialects.ts'

const unclear = (cells = usualCells, header = 'when,a,b,c,d,e') => write({ header, cells })
const guess = (): TableMapping => openWeather(unclear(), { file: 'a.csv', site: sampleSite }).mapping!

/** The mapping with one column taken for something else by the user. */
function corrected(
  mapping: TableMapping,
  header: string,
  change: Partial<TableMapping['columns'][number]>,
): TableMapping {
  return {
    ...mapping,
    columns: mapping.columns.map((column) =>
      column.header === header ? { ...column, ...change, basis: 'user' } : column,
    ),
  }
}

test('a mapping written and read back is the same', () => {
  const mapping = guess()
  expect(readMapping(writeMapping(mapping), 'm.json')).toEqual({ mapping, problems: [] })
})

test('what the user corrects is obeyed: column and unit', () => {
  const mapping = corrected(corrected(guess(), 'd', { quantity: 'ignore', unit: '' }), 'a', {
    quantity: 'windSpeed',
    unit: 'km/h',
  })
  const {
    record,
    mapping: used,
    problems,
  } = openWeather(unclear(), { file: 'a.csv', site: sampleSite, mapping })
  expect(used!.columns[1]).toMatchObject({ header: 'a', quantity: 'windSpeed', unit: 'km/h', basis: 'user' })
  expect(record).toBeNull()
  expect(problems.find(({ code }) => code === 'weather-column-missing')!.message).toContain('air temperature')
  const kmh = corrected(guess(), 'd', { unit: 'km/h' })
  const slow = openWeather(unclear(), { file: 'a.csv', site: sampleSite, mapping: kmh })
  expect(slow.record!.wind_ms[5]).toBeCloseTo(sample.wind_ms[5]! / 3.6, 9)
})

test('a remembered mapping follows the headers when another file has its columns in another order', () => {
  const turned = unclear((h) => [...usualCells(h)].reverse(), 'when,e,d,c,b,a')
  const { record } = openWeather(turned, { file: 'b.csv', site: sampleSite, mapping: guess() })
  expect(record!.airTemp_C).toEqual(sample.airTemp_C)
  expect(record!.globalHorizontal_Wm2).toEqual(sample.globalHorizontal_Wm2)
})

test('a remembered mapping does not bring the place of the file it was made for', () => {
  const at = (latitude: number): string =>
    write({ before: `Latitude: ${latitude}\nLongitude: 10\nElevation: 5` })
  const first = openWeather(at(41), { file: 'a.csv' })
  const second = openWeather(at(-33), { file: 'b.csv', mapping: first.mapping! })
  expect(second.record!.site.latitude_deg).toBe(-33)
})

test('a mapping of a wider table is refused in words', () => {
  const mapping = guess()
  const wide = {
    ...mapping,
    columns: [...mapping.columns, { ...mapping.columns[1]!, index: 40, header: 'q' }],
  }
  const { record, problems } = openWeather(unclear(), { file: 'a.csv', site: sampleSite, mapping: wide })
  expect(record).toBeNull()
  expect(problems.map(({ code }) => code)).toContain('weather-mapping-unfit')
})

test('files of one layout have one signature, others another', () => {
  const other = openWeather(write(), { file: 'b.csv', site: sampleSite }).mapping!
  expect(layoutSignature(guess())).toBe(layoutSignature(guess()))
  expect(layoutSignature(guess())).not.toBe(layoutSignature(other))
})

test('malformed mapping files say which field is wrong', () => {
  expect(readMapping('{', 'm.json').problems[0]!.message).toContain('not JSON')
  const wrong = (change: object) => readMapping(JSON.stringify({ ...guess(), ...change }), 'm.json')
  expect(wrong({ version: 7 }).problems[0]!.place).toEqual({ file: 'm.json', field: 'version' })
  expect(wrong({ site: { latitude_deg: 900 } }).problems[0]!.place.field).toBe('site.latitude_deg')
  const unit = corrected(guess(), 'a', { unit: 'hPa' })
  expect(readMapping(writeMapping(unit), 'm.json').problems[0]!.message).toContain('does not go with')
  expect(wrong({}).mapping).not.toBeNull()
})

test('the preview shows the first rows as printed and as read, and follows a corrected unit at once', () => {
  const text = unclear()
  const shown = previewRows(text, corrected(guess(), 'd', { unit: 'km/h' }), 3)
  expect(shown[0]).toMatchObject({
    printed: ['2019-01-01 00:00', '2019-01-01 01:00', '2019-01-01 02:00'],
    inside: null,
  })
  expect(shown[4]!.printed[1]).toBe(String(sample.wind_ms[1]))
  expect(shown[4]!.inside![1]).toBeCloseTo(sample.wind_ms[1]! / 3.6, 9)
})

test('a column’s scale and offset hold in its own unit, in the record and in the preview alike', () => {
  const text = unclear()
  const changed = corrected(guess(), 'd', { unit: 'km/h', scale: 0.1, offset: 2 })
  const { mapping, problems } = readMapping(writeMapping(changed), 'm.json')
  expect(problems).toEqual([])
  const want = (h: number): number => (sample.wind_ms[h]! * 0.1 + 2) / 3.6
  const { record } = openWeather(text, { file: 'a.csv', site: sampleSite, mapping: mapping! })
  expect(record!.wind_ms[7]).toBeCloseTo(want(7), 9)
  expect(previewRows(text, mapping!, 3)[4]!.inside![1]).toBeCloseTo(want(1), 9)
})
