import { describe, expect, test } from 'vitest'
import { openWeather } from '#model/outdoors/intake'
import type { OpenOptions } from '#inside/model/outdoors/intake/open.ts'
import { dayOf, isoStamp, sample, sampleSite, timeOf, usualCells, write, type Dialect } from './dialects.ts'

const later = (date: Date, hours: number): Date => new Date(date.getTime() + hours * 3_600_000)
const dayOfYear = (date: Date): number =>
  Math.floor((date.getTime() - Date.UTC(date.getUTCFullYear(), 0, 1)) / 86_400_000) + 1

/** Opens a dialect and compares every hour with the sample it was written from: exact to the rounding of the text. */
function expectSame(dialect: Dialect, options: Omit<OpenOptions, 'file'> = {}): void {
  const { record, problems } = openWeather(write(dialect), {
    file: 'table.csv',
    site: sampleSite,
    ...options,
  })
  expect(problems.filter(({ severity }) => severity === 'error')).toEqual([])
  expect(record!.hours).toBe(8760)
  for (const column of [
    'airTemp_C',
    'dewPoint_C',
    'pressure_Pa',
    'wind_ms',
    'globalHorizontal_Wm2',
  ] as const) {
    const worst = record![column].reduce(
      (most, value, i) => Math.max(most, Math.abs(value - sample[column][i]!)),
      0,
    )
    expect([column, worst < 1e-6]).toEqual([column, true])
  }
}

describe('one invented year written in many dialects is read back the same', () => {
  const cases: Record<string, Dialect> = {
    'commas, ISO stamps': {},
    'ISO stamps with T and Z': { stamp: (d) => [later(d, -sampleSite.utcOffset_h).toISOString()] },
    'ISO stamps with a zone': {
      stamp: (d) => [
        `${d.toISOString().slice(0, 19)}${sampleSite.utcOffset_h < 0 ? '-' : '+'}${String(Math.abs(sampleSite.utcOffset_h)).padStart(2, '0')}:00`,
      ],
    },
    'semicolons, decimal comma, German words and dates': {
      separator: ';',
      decimal: ',',
      header:
        'Datum;Uhrzeit;Lufttemperatur [°C];Taupunkt [°C];Luftdruck [hPa];Windgeschwindigkeit [m/s];Globalstrahlung [W/m²]',
      stamp: (d) => [dayOf(d), timeOf(d)],
    },
    'tabs, French words': {
      separator: '\t',
      header:
        'date\ttempérature (°C)\tpoint de rosée (°C)\tpression (hPa)\tvitesse du vent (m/s)\trayonnement global (W/m2)',
    },
    'bars, Spanish words, decimal comma': {
      separator: '|',
      decimal: ',',
      header:
        'fecha|temperatura (°C)|punto de rocío (°C)|presión (hPa)|velocidad del viento (m/s)|radiación global (W/m2)',
    },
    'Italian words': {
      header:
        'data,temperatura (°C),punto di rugiada (°C),pressione (hPa),velocità del vento (m/s),radiazione globale (W/m2)',
    },
    'blanks and four time columns': {
      separator: '  ',
      header: 'year month day hour temp dewpoint pressure windspeed ghi'.split(' ').join('  '),
      stamp: (d) => [d.getUTCFullYear(), d.getUTCMonth() + 1, d.getUTCDate(), d.getUTCHours()].map(String),
    },
    'hours 1 to 24, hour ending': {
      header: 'year,month,day,hour,temp,dewpoint,pressure,wind speed,ghi',
      stamp: (d) =>
        [d.getUTCFullYear(), d.getUTCMonth() + 1, d.getUTCDate(), d.getUTCHours() + 1].map(String),
    },
    'month first, 24:00 at the end of the day': {
      header: 'date,time,temp,dewpoint,pressure,wind speed,ghi',
      stamp: (d) => [
        `${d.getUTCMonth() + 1}/${d.getUTCDate()}/${d.getUTCFullYear()}`,
        `${String(d.getUTCHours() + 1).padStart(2, '0')}:00`,
      ],
    },
    'half past: the middle of the hour': { stamp: (d) => isoStamp(later(d, 0.5)) },
    'day of the year and hour as hhmm': {
      header: 'year,doy,hhmm,temp,dewpoint,pressure,wind speed,ghi',
      stamp: (d) => [String(d.getUTCFullYear()), String(dayOfYear(d)), String(d.getUTCHours() * 100)],
    },
    'seconds since 1970, UTC': {
      header: 'epoch (UTC),temp,dewpoint,pressure,wind speed,ghi',
      stamp: (d) => [String(later(d, -sampleSite.utcOffset_h).getTime() / 1000)],
    },
    'YYYYMMDDHH as one number': {
      header: 'datum,temp,dewpoint,pressure,wind speed,ghi',
      stamp: (d) => [d.toISOString().slice(0, 13).replace(/\D/g, '')],
    },
    'YYYYMMDD:HHMM': {
      stamp: (d) => [`${d.toISOString().slice(0, 10).replace(/-/g, '')}:${timeOf(d).replace(':', '')}`],
    },
    'twelve-hour clock': {
      stamp: (d) => [
        `${d.toISOString().slice(0, 10)} ${d.getUTCHours() % 12 || 12}:00 ${d.getUTCHours() < 12 ? 'AM' : 'PM'}`,
      ],
    },
    'twelve-hour clock without minutes': {
      stamp: (d) => [
        `${d.toISOString().slice(0, 10)} ${d.getUTCHours() % 12 || 12} ${d.getUTCHours() < 12 ? 'a.m.' : 'p. m.'}`,
      ],
    },
    'twelve-hour clock in Korean': {
      stamp: (d) => [
        `${d.toISOString().slice(0, 10)} ${d.getUTCHours() < 12 ? '오전' : '오후'} ${d.getUTCHours() % 12 || 12}:00`,
      ],
    },
    'twelve-hour clock in Chinese, its own column': {
      header: 'date,time,temp,dewpoint,pressure,wind speed,ghi',
      stamp: (d) => [
        d.toISOString().slice(0, 10),
        `${d.getUTCHours() < 12 ? '上午' : '下午'}${d.getUTCHours() % 12 || 12}:00:00`,
      ],
    },
    'month by name': {
      stamp: (d) => [
        `${d.getUTCDate()}-${'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ')[d.getUTCMonth()]}-${d.getUTCFullYear()} ${timeOf(d)}`,
      ],
    },
    'byte-order mark, CRLF, preamble, remark, two header lines': {
      newline: '\r\n',
      before: '\ufeffWeather station export\nStation: Invented\n',
      header: 'time,temp,dewpoint,pressure,wind speed,ghi\n-,°C,°C,hPa,m/s,W/m²\n# calibrated in spring',
    },
    'old Mac line ends': { newline: '\r' },
    'legend at the foot': { after: '\ntemp: air temperature\nghi: global radiation\n' },
    'Fahrenheit, inches of mercury, miles an hour': {
      header: 'time,temp (°F),dewpoint (°F),pressure (inHg),wind speed (mph),ghi (W/m2)',
      cells: (h) => [
        sample.airTemp_C[h]! * 1.8 + 32,
        sample.dewPoint_C[h]! * 1.8 + 32,
        sample.pressure_Pa[h]! / 3386.39,
        sample.wind_ms[h]! / 0.44704,
        sample.globalHorizontal_Wm2[h]!,
      ],
    },
    'kelvin, pascal, kJ/m² an hour without units in the header': {
      header: 'time,temp,dewpoint,pressure,wind speed,ghi (kJ/m2)',
      cells: (h) => [
        sample.airTemp_C[h]! + 273.15,
        sample.dewPoint_C[h]! + 273.15,
        sample.pressure_Pa[h]!,
        sample.wind_ms[h]!,
        sample.globalHorizontal_Wm2[h]! * 3.6,
      ],
    },
  }
  test.each(Object.keys(cases))('%s', (name) => expectSame(cases[name]!))
})

test('ten-minute rows are averaged to hours', () => {
  const text = write({
    hours: 8760,
    stamp: (d) => isoStamp(d),
  })
    .split('\n')
    .flatMap((line, at) => {
      if (at === 0 || line === '') return [line]
      const [time, temp, ...rest] = line.split(',')
      return [-2.5, -1.5, -0.5, 0.5, 1.5, 2.5].map((k, i) =>
        [`${time!.slice(0, 14)}${i}0`, Number(temp) + k, ...rest].join(','),
      )
    })
    .join('\n')
  const { record } = openWeather(text, { file: 'ten.csv', site: sampleSite })
  expect(record!.hours).toBe(8760)
  expect(record!.radiationMiddle_h).toBeCloseTo(0.5, 9)
  expect(record!.airTemp_C[100]).toBeCloseTo(sample.airTemp_C[100]!, 6)
})

test('fill values count as missing, whatever number the file prints for them', () => {
  for (const fill of [-999, -9999, -9999.9, -99.9]) {
    const text = write({
      cells: (h) => usualCells(h).map((value, i) => (h === 200 && i === 0 ? fill : value)),
    })
    const { mapping, quality, record } = openWeather(text, { file: 'fill.csv', site: sampleSite })
    expect(mapping!.missing).toContain(fill)
    expect(quality.gaps.map(({ quantity, hours, how }) => [quantity, hours, how])).toContainEqual([
      'airTemp',
      1,
      'interpolated',
    ])
    expect(record!.airTemp_C[200]).toBeCloseTo((sample.airTemp_C[199]! + sample.airTemp_C[201]!) / 2, 9)
  }
})

test('place and clock are read from the lines above the table', () => {
  const before =
    'Station: Invented Bay\nLatitude: 12.5 S\nLongitude: 45.25 W\nElevation: 120 m\nTime zone: -3\n'
  const { record } = openWeather(write({ before }), { file: 'place.csv' })
  expect(record!.site).toEqual({
    name: 'Invented Bay',
    latitude_deg: -12.5,
    longitude_deg: -45.25,
    altitude_m: 120,
    utcOffset_h: -3,
  })
})

test('an hourly table of a reanalysis service: preamble block, −999 fill, kPa, longwave', () => {
  const time = (d: Date): string[] =>
    [d.getUTCFullYear(), d.getUTCMonth() + 1, d.getUTCDate(), d.getUTCHours()].map(String)
  const text = write({
    before: `-BEGIN HEADER-\nHourly data, invented here for a test\nDates (month/day/year): 01/01/2019 through 12/31/2019 in LST\nLocation: Latitude  ${sampleSite.latitude_deg}   Longitude ${sampleSite.longitude_deg}\nelevation: average of the cell = 230.38 meters\nThe value for missing source data: -999\n-END HEADER-`,
    header: 'YEAR,MO,DY,HR,T2M,T2MDEW,PS,WS10M,ALLSKY_SFC_SW_DWN,ALLSKY_SFC_LW_DWN',
    stamp: time,
    cells: (h) => {
      const [temp, dew, pressure, wind, global] = usualCells(h)
      return [temp!, dew!, pressure! / 10, wind!, h === 5000 ? -999 : global!, h < 100 ? -999 : 300]
    },
  })
  const { record, mapping } = openWeather(text, { file: 'cell.csv' })
  expect(mapping!.layout).toBe('reanalysis-hourly')
  expect(record!.site.altitude_m).toBe(230.38)
  expect(record!.pressure_Pa[0]).toBeCloseTo(sample.pressure_Pa[0]!, 6)
  expect(record!.skyLongwave_Wm2![99]).toBeNaN()
  expect(record!.skyLongwave_Wm2![100]).toBe(300)
  expect(record!.origins.globalHorizontal_Wm2!.filledHours).toBe(1)
})
