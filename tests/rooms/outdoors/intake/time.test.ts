import { describe, expect, test } from 'vitest'
import { openWeather } from '#model/outdoors/intake'
import { beginOf, isoStamp, sample, sampleSite, usualCells, write } from './dialects.ts'

const codes = (problems: readonly { code: string }[]): string[] => problems.map(({ code }) => code)
const open = (text: string, more = {}) => openWeather(text, { file: 'table.csv', site: sampleSite, ...more })
const later = (date: Date, hours: number): Date => new Date(date.getTime() + hours * 3_600_000)

describe('years', () => {
  test('months of different years become one nominal year', () => {
    const years = [2011, 2004, 2016, 1999, 2007, 2012, 2003, 2018, 2001, 2005, 2010, 2008]
    const { record, problems } = open(
      write({
        stamp: (d) => [
          d
            .toISOString()
            .replace(/^\d{4}/, String(years[d.getUTCMonth()]))
            .slice(0, 16),
        ],
      }),
    )
    expect(codes(problems)).toEqual([])
    expect(record!.hours).toBe(8760)
    expect(record!.airTemp_C).toEqual(sample.airTemp_C)
    expect(record!.basis).toContain('1999–2018')
  })

  test('a real leap year keeps its 8784 hours', () => {
    const { record } = open(
      write({
        hours: 8784,
        stamp: (_, h) => isoStamp(new Date(Date.UTC(2020, 0, 1, h))),
        cells: (h) => usualCells(h % 8760),
      }),
    )
    expect(record!.hours).toBe(8784)
    expect(new Date(record!.start_utcMs + sampleSite.utcOffset_h * 3_600_000).toISOString()).toBe(
      '2020-01-01T00:00:00.000Z',
    )
  })

  test('a leap year whose 29 February was left out has a day’s gap, filled from its neighbours and said', () => {
    const skip = (h: number): number => (h < 59 * 24 ? h : h + 24)
    const { record, quality } = open(
      write({ stamp: (_, h) => isoStamp(new Date(Date.UTC(2020, 0, 1, skip(h)))) }),
    )
    expect(record!.hours).toBe(8784)
    expect(quality.gaps.find(({ quantity }) => quantity === 'airTemp')).toMatchObject({
      firstHour: 59 * 24,
      hours: 24,
      how: 'neighbouring days',
    })
  })

  test('an hour too many or too few at the end: the year is whole, the extra row does not touch 1 January', () => {
    const extra = open(
      write({ hours: 8761, cells: (h) => usualCells(h % 8760).map((value) => value + (h === 8760 ? 5 : 0)) }),
    )
    expect(extra.record!.hours).toBe(8760)
    expect(extra.record!.airTemp_C).toEqual(sample.airTemp_C)
    const short = open(write({ hours: 8759 }))
    expect(short.record!.hours).toBe(8760)
    expect(short.quality.gaps.every(({ firstHour, hours }) => firstHour === 8759 && hours === 1)).toBe(true)
    expect(short.quality.gaps.length).toBeGreaterThan(0)
  })

  test('a year from July to June is turned to start in January, and that is said', () => {
    const half = 181 * 24
    const { record, problems } = open(
      write({
        stamp: (_, h) => isoStamp(new Date(Date.UTC(2018, 6, 1, h))),
        cells: (h) => usualCells((h + half) % 8760),
      }),
    )
    expect(codes(problems)).toContain('weather-joined-year')
    expect(record!.airTemp_C).toEqual(sample.airTemp_C)
  })

  test('three years in one file: the fullest year is used and said, another can be asked for', () => {
    const three = write({
      hours: 3 * 8760,
      stamp: (_, h) => isoStamp(new Date(Date.UTC(2017, 0, 1, h))),
      cells: (h) => [
        ...usualCells(h % 8760).slice(0, 3),
        1 + Math.floor(h / 8760),
        ...usualCells(h % 8760).slice(4),
      ],
    })
    const { record, problems } = open(three)
    expect(codes(problems)).toContain('weather-many-years')
    expect(record!.hours).toBe(8760)
    expect(record!.wind_ms[10]).toBe(3)
    expect(open(three, { time: { year: 2018 } }).record!.wind_ms[10]).toBe(2)
    expect(open(three, { time: { year: 'all' } }).record!.hours).toBe(3 * 8760)
  })
})

describe('clocks that jump', () => {
  /** Civil time of central Europe in 2019: an hour ahead from 31 March 02:00 to 27 October 02:00 standard time. */
  const summer = (h: number): number => (h >= 89 * 24 + 2 && h < 299 * 24 + 2 ? 1 : 0)

  test('daylight saving is found by its two jumps, undone and said', () => {
    const { record, problems, clock } = open(write({ stamp: (d, h) => isoStamp(later(d, summer(h))) }))
    expect(codes(problems)).toEqual(['weather-daylight-saving'])
    expect(record!.airTemp_C).toEqual(sample.airTemp_C)
    expect(clock.verdict).toBe('agrees')
  })

  test('daylight saving whose jumps were smoothed away is still seen in the sun', () => {
    const text = write({ stamp: (d, h) => isoStamp(later(d, summer(h))) })
    const rows = text.split('\n')
    const jumps = [89 * 24 + 2, 299 * 24 + 2]
    const cut = rows.filter((_, line) => !jumps.some((at) => line - 1 >= at - 3 && line - 1 < at + 3))
    expect(open(cut.join('\n')).clock.verdict).toBe('daylight-saving')
  })

  test('an hour planted late in an invented year is caught', () => {
    const { clock } = open(write({ stamp: (d) => isoStamp(later(d, 1)) }), { time: { stamp: 'beginning' } })
    expect(clock.verdict).toBe('late')
    expect(clock.late_min).toBeGreaterThan(50)
    expect(clock.late_min).toBeLessThan(70)
  })
})

describe('rows out of place', () => {
  test('shuffled rows are put where their stamps say, and that is said', () => {
    const [header, ...rows] = write().trim().split('\n')
    const mixed = rows.map((row, i) => ({ row, key: (i * 7919) % 8760 })).sort((a, b) => a.key - b.key)
    const { record, problems } = open([header, ...mixed.map(({ row }) => row)].join('\n'))
    expect(codes(problems)).toContain('weather-rows-shuffled')
    expect(record!.airTemp_C).toEqual(sample.airTemp_C)
  })

  test('duplicate stamps: the earlier row counts, the line is named', () => {
    const rows = write().split('\n')
    rows.splice(501, 0, rows[500]!.replace(/,[^,]*$/, ',0'))
    const { record, problems } = open(rows.join('\n'))
    const said = problems.find(({ code }) => code === 'weather-duplicate-stamps')!
    expect(said.place.line).toBe(502)
    expect(record!.globalHorizontal_Wm2).toEqual(sample.globalHorizontal_Wm2)
  })

  test('two files glued together are refused, the seam’s line is named', () => {
    const { record, problems } = open(write() + write())
    expect(record).toBeNull()
    expect(problems.find(({ code }) => code === 'weather-two-files')!.place.line).toBe(8762)
  })
})

test('three-hourly rows are refused', () => {
  const { record, problems } = open(write({ hours: 2920, stamp: (_, h) => isoStamp(beginOf(h * 3)) }))
  expect(record).toBeNull()
  expect(codes(problems)).toContain('weather-step-too-long')
})

test('TZ of the machine does not matter: no local-time call is made', () => {
  const before = process.env.TZ
  process.env.TZ = 'America/New_York'
  const text = write()
  const here = open(text).record!.start_utcMs
  process.env.TZ = 'Asia/Tokyo'
  expect(open(text).record!.start_utcMs).toBe(here)
  if (before === undefined) delete process.env.TZ
  else process.env.TZ = before
})
