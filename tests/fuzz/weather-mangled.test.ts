import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { openWeather, WeatherReading, readMapping } from '#model/outdoors/intake'
import { sampleSite, usualCells, write } from '../rooms/outdoors/intake/dialects.ts'
import { BASE, faultOf, spoiled, SPOILS, tryMangled } from './mangled.ts'

let records = 0

/** Opens text and checks what must always hold: no throw, a sentence for every problem, no NaN in a record. */
function mustHold(text: string): void {
  const { fault, record } = faultOf(text)
  expect(fault).toBeNull()
  if (record) records += 1
}

describe('mangled weather files never throw and never lose their reason', () => {
  test('spoiled one to four times (300 runs)', () => {
    const spoil = fc.record({
      how: fc.nat(SPOILS.length - 1),
      at: fc.double({ min: 0, max: 1, noNaN: true }),
      seed: fc.nat(99_999),
    })
    fc.assert(
      fc.property(fc.array(spoil, { minLength: 1, maxLength: 4 }), (spoils) => {
        mustHold(spoils.reduce((text, { how, at, seed }) => spoiled(text, how, at, seed), BASE))
      }),
      { numRuns: 300, seed: 3 },
    )
    // not all may end as refusals, or nothing is checked of what a record holds
    expect(records).toBeGreaterThan(60)
  })

  test('the first 300 inputs of the fuzz command hold', () => {
    for (let seed = 1; seed <= 300; seed++)
      expect({ seed, ...tryMangled(seed) }).toMatchObject({ fault: null })
  })

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
  })

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
  })

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
