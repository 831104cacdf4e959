import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { openWeather, WeatherReading, readMapping } from '#model/outdoors/intake'
import { sampleSite, usualCells, write } from '../rooms/outdoors/intake/dialects.ts'

const BASE = write({ hours: 200 })
let records = 0

/** Opens text and checks what must always hold: no throw, a sentence for every problem, no NaN in a record. */
function mustHold(text: string): void {
  const opened = openWeather(text, { file: 'mangled.csv', site: sampleSite, acceptLongGaps: true })
  for (const problem of opened.problems) {
    expect(problem.place.file).toBe('mangled.csv')
    expect(problem.code).toMatch(/^weather-[a-z-]+$/)
    expect(problem.message.length).toBeGreaterThan(5)
    expect(problem.remedy.length).toBeGreaterThan(5)
  }
  const stopped = opened.problems.some(({ severity }) => severity === 'error')
  expect(opened.record === null).toBe(stopped)
  if (opened.record === null) return
  records += 1
  for (const column of [
    'airTemp_C',
    'dewPoint_C',
    'pressure_Pa',
    'wind_ms',
    'globalHorizontal_Wm2',
    'directNormal_Wm2',
    'diffuseHorizontal_Wm2',
    'cloud_frac',
  ] as const) {
    expect([column, opened.record[column].every(Number.isFinite)]).toEqual([column, true])
    expect(opened.record[column].length).toBe(opened.record.hours)
  }
}

/** Ways to spoil a file: each takes the text, a place in it and a seed. */
const SPOILS: readonly ((text: string, at: number, seed: number) => string)[] = [
  (text, at) => text.slice(0, at),
  (text, at) => text.slice(at),
  (text, at, seed) => text.slice(0, at) + String.fromCharCode(seed % 0x3000) + text.slice(at),
  (text, at, seed) => text.slice(0, at) + text.slice(at + (seed % 300)),
  (text, at, seed) => text.slice(0, at) + text.slice(seed % text.length) + text.slice(at),
  (text, at) => text.slice(0, at) + '\n' + text.slice(at),
  (text, at) => text.slice(0, at) + '"' + text.slice(at),
  (text, at) => text.slice(0, at) + ',,,,' + text.slice(at),
  (text, at, seed) =>
    text.slice(0, at) +
    ['-999', 'NaN', '1e308', '-1e308', '∞', '0x1F', '1,5', '--'][seed % 8] +
    text.slice(at),
  (text, _, seed) => text.replaceAll(',', [';', '\t', '|', '  ', ',,'][seed % 5]!),
  (text, _, seed) => text.replaceAll('2019', ['1900', '0000', '99999', '20', '2020'][seed % 5]!),
  (text, _, seed) => text.replaceAll('\n', ['\r\n', '\r', '\n\n', '\n# remark\n'][seed % 4]!),
  (text) => text.split('\n').reverse().join('\n'),
  (text, at) => text.slice(0, at) + text,
]

describe('mangled weather files never throw and never lose their reason', () => {
  test('spoiled one to four times (300 runs)', () => {
    const spoil = fc.record({
      how: fc.nat(SPOILS.length - 1),
      at: fc.double({ min: 0, max: 1, noNaN: true }),
      seed: fc.nat(99_999),
    })
    fc.assert(
      fc.property(fc.array(spoil, { minLength: 1, maxLength: 4 }), (spoils) => {
        mustHold(
          spoils.reduce(
            (text, { how, at, seed }) =>
              SPOILS[how]!(text, Math.floor(at * text.length), seed).slice(0, 120_000),
            BASE,
          ),
        )
      }),
      { numRuns: 300, seed: 3 },
    )
    // not all may end as refusals, or nothing is checked of what a record holds
    expect(records).toBeGreaterThan(60)
  }, 120_000)

  test('any text at all, and tables of odd cells (500 runs)', () => {
    fc.assert(fc.property(fc.string({ maxLength: 400, unit: 'binary' }), mustHold), { numRuns: 250, seed: 5 })
    const cell = fc.oneof(
      fc.double().map(String),
      fc.constantFrom('', 'NaN', '12:30', '2020-01-01', '31.12.2020 24:00', 'x', '"', '-999'),
      fc.integer({ min: -5, max: 3000 }).map(String),
    )
    const table = fc.array(fc.array(cell, { minLength: 1, maxLength: 8 }), { minLength: 1, maxLength: 40 })
    fc.assert(
      fc.property(table, fc.constantFrom(',', ';', '\t', ' '), (rows, glue) =>
        mustHold(rows.map((row) => row.join(glue)).join('\n')),
      ),
      { numRuns: 250, seed: 7 },
    )
  }, 120_000)

  test('where a file is cut into pieces makes no difference, beyond the part that is looked at first too (12 runs)', () => {
    const long = write({ hours: 20_000, cells: (h) => usualCells(h % 8760) })
    expect(long.length).toBeGreaterThan(800_000)
    const whole = openWeather(long, { file: 'a.csv', site: sampleSite })
    fc.assert(
      fc.property(fc.array(fc.nat(long.length), { maxLength: 12 }), (cuts) => {
        const reading = new WeatherReading({ file: 'a.csv', site: sampleSite })
        const edges = [0, ...cuts.sort((a, b) => a - b), long.length]
        for (let i = 1; i < edges.length; i += 1) reading.push(long.slice(edges[i - 1], edges[i]))
        expect(reading.finish()).toEqual(whole)
      }),
      { numRuns: 12, seed: 11 },
    )
  }, 120_000)

  test('any JSON as a mapping file gives a mapping or a problem (300 runs)', () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        const { mapping, problems } = readMapping(text, 'm.json')
        expect(mapping === null).toBe(problems.length > 0)
      }),
      { numRuns: 300, seed: 13 },
    )
  })
})
