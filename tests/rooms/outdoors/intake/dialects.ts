import { readFileSync } from 'node:fs'
import { openWeather } from '#model/outdoors/intake'
import type { WeatherRecord } from '#model/outdoors/weather'

/** One of the project's own invented years, as the source of tables in many dialects. */
export const sampleText = readFileSync(
  new URL('../../../../climate-samples/mediterranean-coast.csv', import.meta.url),
  'utf8',
)
export const sample: WeatherRecord = openWeather(sampleText, { file: 'mediterranean-coast.csv' }).record!

export const sampleSite = {
  latitude_deg: sample.site.latitude_deg,
  longitude_deg: sample.site.longitude_deg,
  altitude_m: sample.site.altitude_m,
  utcOffset_h: sample.site.utcOffset_h,
}

/** How a table is written. */
export interface Dialect {
  separator?: string
  decimal?: '.' | ','
  newline?: string
  before?: string
  /** Header line(s); '' for none. */
  header?: string
  /** Stamp cell(s) of an hour, from the local standard time at its beginning, as a UTC date. */
  stamp?: (begin: Date, hour: number) => string[]
  /** Cells after the stamp. */
  cells?: (hour: number) => number[]
  after?: string
  hours?: number
}

const two = (value: number): string => String(value).padStart(2, '0')
export const isoStamp = (date: Date): string[] => [date.toISOString().slice(0, 16).replace('T', ' ')]
export const dayOf = (date: Date): string =>
  `${two(date.getUTCDate())}.${two(date.getUTCMonth() + 1)}.${date.getUTCFullYear()}`
export const timeOf = (date: Date): string => `${two(date.getUTCHours())}:${two(date.getUTCMinutes())}`

/** Temperature, humidity by dew point, pressure hPa, wind, global. */
export const usualCells = (hour: number): number[] => [
  sample.airTemp_C[hour]!,
  sample.dewPoint_C[hour]!,
  sample.pressure_Pa[hour]! / 100,
  sample.wind_ms[hour]!,
  sample.globalHorizontal_Wm2[hour]!,
]

/** The local standard time at the beginning of an hour of 2019, as a UTC date. */
export const beginOf = (hour: number): Date => new Date(Date.UTC(2019, 0, 1, hour))

/** The sample year as a table in a dialect. */
export function write({
  separator = ',',
  decimal = '.',
  newline = '\n',
  before = '',
  header = [
    'time',
    'temperature (C)',
    'dew point (C)',
    'pressure (hPa)',
    'wind speed (m/s)',
    'GHI (W/m2)',
  ].join(separator),
  stamp = isoStamp,
  cells = usualCells,
  after = '',
  hours = 8760,
}: Dialect = {}): string {
  const rows = Array.from({ length: hours }, (_, hour) => {
    const numbers = cells(hour).map((value) => String(value).replace('.', decimal))
    return [...stamp(beginOf(hour), hour), ...numbers].join(separator)
  })
  const top = header === '' ? [] : header.split('\n')
  return [...(before === '' ? [] : before.split('\n')), ...top, ...rows, after].join(newline)
}
