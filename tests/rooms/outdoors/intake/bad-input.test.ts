import { describe, expect, test } from 'vitest'
import { problemSentence } from '#model/basis/words'
import { openWeather } from '#model/outdoors/intake'
import { openWeatherStream } from '#inside/model/outdoors/intake/open.ts'
import { sampleSite, sampleText, usualCells, write } from './dialects.ts'

const open = (text: string, more = {}) => openWeather(text, { file: 'bad.csv', site: sampleSite, ...more })

/** Opens, expects no record, and returns the error's code, line and sentence. */
function refused(text: string) {
  const { record, problems } = open(text)
  expect(record).toBeNull()
  const error = problems.find(({ severity }) => severity === 'error')!
  expect(problemSentence(error)).toContain('bad.csv')
  expect(error.message.length).toBeGreaterThan(10)
  expect(error.remedy.length).toBeGreaterThan(10)
  return error
}

describe('files that are no weather', () => {
  test('empty, and only blanks', () => {
    expect(refused('').code).toBe('weather-empty')
    expect(refused(' \n\n\t ').code).toBe('weather-empty')
  })
  test('binary', () => {
    expect(refused('PK\u0003\u0004\u0000\u0000\u0008\u0000spreadsheet').code).toBe('weather-binary')
    expect(refused('\ufffdPNG\ufffd\u001a\ufffd\ufffd\u0005\u0006'.repeat(50)).code).toBe('weather-binary')
  })
  test('prose, and a page of markup', () => {
    expect(refused('Dear neighbour,\nhere is my weather station.\nIt was warm.\n').code).toBe(
      'weather-no-table',
    )
    expect(refused('<!doctype html>\n<html><body>Not found</body></html>\n').code).toBe('weather-no-table')
  })
  test('200 MB: refused from its length while streaming, without keeping it', async () => {
    const piece = write({ hours: 5000 }).slice(0, 200_000)
    let pushed = 0
    function* pieces() {
      while (pushed < 200e6) {
        pushed += piece.length
        yield piece
      }
    }
    const { record, problems } = await openWeatherStream(pieces(), { file: 'huge.csv' })
    expect(record).toBeNull()
    expect(problems.at(-1)!.code).toBe('weather-too-large')
    expect(pushed).toBeLessThan(152e6)
  })
})

describe('tables with something wrong', () => {
  test('truncated in the middle of a row: the hours that are there, the line that is not, and not a whole year', () => {
    const text = write().slice(0, 200_003)
    const { record, problems } = open(text)
    expect(record!.hours).toBeGreaterThan(3000)
    expect(record!.hours).toBeLessThan(8760)
    const lines = text.split('\n').length
    expect(problems.find(({ code }) => code === 'weather-not-a-year')).toBeDefined()
    const last = text.split('\n').at(-1)!
    if (last.split(',').length < 6)
      expect(problems.find(({ code }) => code === 'weather-odd-lines')!.place.line).toBe(lines)
  })

  test('text in numbers: line, column and the text are named, the hour is filled and said', () => {
    const rows = write().split('\n')
    rows[1234] = rows[1234]!.replace(/^([^,]*),[^,]*/, '$1,broken')
    const { record, problems, quality } = open(rows.join('\n'))
    const said = problems.find(({ code }) => code === 'weather-words-in-numbers')!
    expect(said.place).toEqual({ file: 'bad.csv', line: 1235, column: 'temperature (C)' })
    expect(said.message).toContain('"broken"')
    expect(quality.gaps).toHaveLength(1)
    expect(record!.origins.airTemp_C!.filledHours).toBe(1)
  })

  test('a column without any value: named, and missing', () => {
    const error = refused(write({ cells: (h) => usualCells(h).map((value, i) => (i === 3 ? NaN : value)) }))
    expect(error.code).toBe('weather-column-missing')
    expect(error.message).toContain('wind speed')
  })

  test('rows with a field too many or too few are left out and the first is named', () => {
    const rows = write().split('\n')
    rows[100] += ',7'
    rows[200] = rows[200]!.replace(/,[^,]*$/, '')
    const { problems, record } = open(rows.join('\n'))
    const said = problems.find(({ code }) => code === 'weather-odd-lines')!
    expect(said.message).toMatch(/^2 lines/)
    expect(said.place.line).toBe(101)
    expect(record!.hours).toBe(8760)
  })

  test('stamps that cannot be read are counted and the first is named', () => {
    const rows = write().split('\n')
    rows[300] = rows[300]!.replace(/^[^,]*/, '2019-13-45 99:00')
    const said = open(rows.join('\n')).problems.find(({ code }) => code === 'weather-stamp-unreadable')!
    expect(said.place.line).toBe(301)
  })

  test('a stamp a century off: in a short file refused with its line; in a whole year left out, and that is said', () => {
    const spoil = (hours: number): string => {
      const rows = write({ hours }).split('\n')
      rows[300] = rows[300]!.replace('2019', '1919')
      return rows.join('\n')
    }
    const error = refused(spoil(2000))
    expect(error.code).toBe('weather-stamps-scattered')
    expect(error.place.line).toBe(301)
    const { record, problems, quality } = open(spoil(8760))
    expect(problems.map(({ code }) => code)).toContain('weather-many-years')
    expect(record!.hours).toBe(8760)
    expect(quality.gaps.some(({ firstHour, hours }) => firstHour === 299 && hours === 1)).toBe(true)
  })

  test('no stamp at all: asked for', () => {
    const text = write({
      stamp: () => [],
      header: 'temperature (C),dew point (C),pressure (hPa),wind speed (m/s),GHI (W/m2)',
    })
    expect(refused(text).code).toBe('weather-no-time')
  })

  test('a latitude of 900 is not taken; the place is asked for', () => {
    const { record, problems } = openWeather(write(), {
      file: 'bad.csv',
      site: { latitude_deg: 900, longitude_deg: 8 },
    })
    expect(record).toBeNull()
    expect(problems.map(({ code }) => code)).toContain('weather-site-missing')
  })

  test('a file of our own sample layout cut short opens as far as it goes', () => {
    const { record, problems } = openWeather(sampleText.slice(0, 100_000), { file: 'cut.csv' })
    expect(record!.hours).toBeGreaterThan(1000)
    expect(problems.map(({ code }) => code)).toContain('weather-not-a-year')
  })
})
