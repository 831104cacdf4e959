import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { inventClimate, readSampleCsv, writeSampleCsv } from '#model/outdoors/climate'
import { placeById } from '#inside/model/outdoors/climate/places.ts'
import { ProblemError } from '#model/basis/words'
import { openWeather } from '#model/outdoors/intake'
import { WEATHER_COLUMNS } from '#model/outdoors/weather'

const place = placeById('hot-desert')
const record = inventClimate(place)
const text = writeSampleCsv(record, 'A test.\nOn two lines.')
const lines = text.split('\n')
const headerAt = lines.findIndex((line) => line.startsWith('month,'))

/** The file with one line replaced (1-based). */
function withLine(line: number, replacement: string): string {
  return [...lines.slice(0, line - 1), replacement, ...lines.slice(line)].join('\n')
}

/** Where the reader says the file is wrong. */
function refusal(broken: string) {
  try {
    readSampleCsv(broken, 'broken.csv')
  } catch (error) {
    if (error instanceof ProblemError) return error.problems[0]!
    throw error
  }
  return undefined
}

describe('a record through the file and back', () => {
  const back = readSampleCsv(text, 'hot-desert.csv')

  test('keeps place, start and every value to half the last digit written', () => {
    expect(back.site).toEqual(record.site)
    expect(back.start_utcMs).toBe(record.start_utcMs)
    expect(back.radiationMiddle_h).toBe(0.5)
    const half = {
      airTemp_C: 0.05,
      dewPoint_C: 0.05,
      pressure_Pa: 0.5,
      wind_ms: 0.05,
      globalHorizontal_Wm2: 0.05,
      directNormal_Wm2: 0,
      diffuseHorizontal_Wm2: 0,
      cloud_frac: 0.005,
    }
    for (const name of WEATHER_COLUMNS) {
      for (let hour = 0; hour < 8760; hour += 1) {
        const miss = Math.abs(back[name][hour]! - record[name][hour]!)
        if (miss > half[name] + 1e-9) expect.fail(`${name} hour ${hour}: off by ${miss}`)
      }
    }
  })

  test('writing what was read gives the same bytes; Windows line ends read the same', () => {
    expect(writeSampleCsv(back, 'A test. On two lines.')).toBe(text)
    expect(readSampleCsv(lines.join('\r\n'), 'w.csv').airTemp_C).toEqual(back.airTemp_C)
  })

  test('the general weather reader makes the same year of it: place, start and every value exactly', () => {
    const opened = openWeather(text, { file: 'hot-desert.csv' }).record!
    expect(opened.site).toEqual(back.site)
    expect([opened.start_utcMs, opened.radiationMiddle_h]).toEqual([back.start_utcMs, 0.5])
    for (const name of WEATHER_COLUMNS) expect(opened[name]).toEqual(back[name])
    expect(opened.origins.cloud_frac!.kind).toBe('read')
    expect(back.origins.cloud_frac!.kind).toBe('read')
  })

  test('the dew point in the file is never above the air in the file', () => {
    expect(back.dewPoint_C.every((dew, hour) => dew <= back.airTemp_C[hour]!)).toBe(true)
  })

  test('the writer refuses a year that is not 8760 h and a value that is not a number', () => {
    expect(() => writeSampleCsv({ ...record, hours: 24 }, '')).toThrow(RangeError)
    const airTemp_C = record.airTemp_C.slice()
    airTemp_C[5] = NaN
    expect(() => writeSampleCsv({ ...record, airTemp_C }, '')).toThrow(RangeError)
  })
})

describe('a malformed file is refused with its line and column', () => {
  const row = headerAt + 2 + 100
  const cells = lines[row - 1]!.split(',')
  const withCell = (at: number, cell: string) =>
    withLine(row, cells.map((old, index) => (index === at ? cell : old)).join(','))

  test.each([
    ['a word for a number', withCell(3, 'warm'), row, 'airTemp_C'],
    ['an empty cell', withCell(4, ''), row, 'dewPoint_C'],
    ['a pressure in hPa', withCell(5, '965.2'), row, 'pressure_Pa'],
    ['cloud in tenths', withCell(10, '7'), row, 'cloud_frac'],
    ['an hour out of turn', withCell(2, '23'), row, 'hour'],
    ['a field too few', withLine(row, cells.slice(1).join(',')), row, undefined],
    ['another header', withLine(headerAt + 1, 'time,temp'), headerAt + 1, undefined],
    ['a latitude of 126', text.replace('latitude_deg: 26.4', 'latitude_deg: 126.4'), 6, 'latitude_deg'],
    ['no altitude', text.replace('# altitude_m:', '# height:'), undefined, 'altitude_m'],
    ['the last row cut off', lines.slice(0, -2).join('\n'), headerAt + 8761, undefined],
    ['a row too many', `${text}12,31,23,1,1,1,1,1,1,1,1\n`, headerAt + 8762, undefined],
    ['nothing at all', '', 1, undefined],
    ['only comments', '# one\n# two', 1, undefined],
  ])('%s', (_, broken, line, column) => {
    const problem = refusal(broken)
    expect(problem).toMatchObject({ code: 'sample-malformed', severity: 'error' })
    expect(problem!.place.file).toBe('broken.csv')
    expect(problem!.place.line).toBe(line)
    expect(problem!.place.column).toBe(column)
    expect(problem!.remedy.length).toBeGreaterThan(10)
  })

  test('property: any line replaced by any text is read or refused for people, never crashed on', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: lines.length }), fc.string(), (line, replacement) => {
        refusal(withLine(line, replacement))
      }),
      { numRuns: 60, seed: 3 },
    )
  })
})
