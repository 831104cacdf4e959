/** The worked layouts of ../shared/weather-examples, read and held against the year they were written from. */
import { existsSync, readFileSync } from 'node:fs'
import { gunzipSync } from 'node:zlib'
import { openWeather } from '#model/outdoors/intake'
import type { WeatherRecord } from '#model/outdoors/weather'
import { ROOT } from '../house-rules/source-files.ts'

export const FOLDER = `${ROOT}../shared/weather-examples/`
export const HELD = existsSync(`${FOLDER}expected.csv`)

const SITES = {
  'truth-A.csv': { latitude_deg: 35.84, longitude_deg: -106.31, altitude_m: 1585, utcOffset_h: -7 },
  'truth-B.csv': { latitude_deg: -33.42, longitude_deg: 149.13, altitude_m: 412, utcOffset_h: 10 },
} as const

export interface Example {
  readonly file: string
  readonly truth: keyof typeof SITES
  readonly expected: 'read' | 'ask'
  readonly place: 'file' | 'given'
}

const unzipped = (file: string): Uint8Array => new Uint8Array(gunzipSync(readFileSync(`${FOLDER}${file}.gz`)))

export function examples(): Example[] {
  const [, ...rows] = readFileSync(`${FOLDER}expected.csv`, 'utf8').trim().split('\n')
  return rows.map((row) => {
    const [file, truth, expected, place] = row.split(',')
    return { file, truth, expected, place } as unknown as Example
  })
}

type Columns = Readonly<
  Record<'airTemp_C' | 'dewPoint_C' | 'pressure_Pa' | 'wind_ms' | 'global_Wm2', Float64Array>
>

/** The year an example was written from. */
export function truthOf(name: Example['truth']): Columns {
  const rows = new TextDecoder()
    .decode(unzipped(name))
    .trim()
    .split('\n')
    .slice(2)
    .map((row) => row.split(','))
  const column = (i: number, times = 1) => Float64Array.from(rows, (row) => Number(row[i]) * times)
  return {
    airTemp_C: column(1),
    dewPoint_C: column(2),
    pressure_Pa: column(4, 100),
    wind_ms: column(5),
    global_Wm2: column(6),
  }
}

/** What of a reading is off beyond rounding, in words; empty when it is right. */
export function faultsOf(
  record: WeatherRecord,
  truth: Columns,
  site: (typeof SITES)[Example['truth']],
): string[] {
  const faults: string[] = []
  const shift_h = Math.round((record.start_utcMs - (Date.UTC(2023, 0, 1) - site.utcOffset_h * 3.6e6)) / 3.6e6)
  const apart = (got: Float64Array, want: Float64Array): number => {
    const off: number[] = []
    for (let h = 0; h < record.hours; h++) {
      const at = h + shift_h
      if (at < 0 || at >= want.length) continue
      off.push(Math.abs(got[h]! - want[at]!))
    }
    return off.toSorted((a, b) => a - b)[Math.floor(0.8 * off.length)] ?? NaN
  }
  const held: readonly (readonly [string, Float64Array, Float64Array, number])[] = [
    ['air temperature', record.airTemp_C, truth.airTemp_C, 0.5],
    ['dew point', record.dewPoint_C, truth.dewPoint_C, 1],
    ['wind', record.wind_ms, truth.wind_ms, 0.8],
    ['sun', record.globalHorizontal_Wm2, truth.global_Wm2, 40],
  ]
  for (const [name, got, want, within] of held) {
    const off = apart(got, want)
    if (!(off <= within)) faults.push(`${name} off by ${off.toFixed(1)} in a fifth of the hours`)
  }
  const { latitude_deg, longitude_deg } = record.site
  if (Math.abs(latitude_deg - site.latitude_deg) > 0.1 || Math.abs(longitude_deg - site.longitude_deg) > 0.1)
    faults.push(`place read as ${latitude_deg}, ${longitude_deg}`)
  if (record.hours < 8700) faults.push(`${record.hours} hours`)
  return faults
}

export interface Tried {
  readonly example: Example
  /** `right`, `asked` (an open question), `refused`, `wrong` in silence. */
  readonly verdict: 'right' | 'asked' | 'refused' | 'wrong'
  readonly words: string
}

export function tryExample(example: Example, read: (bytes: Uint8Array) => string): Tried {
  const site = SITES[example.truth]
  const opened = openWeather(read(unzipped(example.file)), {
    file: example.file,
    ...(example.place === 'given' ? { site } : {}),
  })
  const said = opened.problems.map(({ code, message }) => `${code}: ${message}`).join(' | ')
  if (opened.record === null) return { example, verdict: 'refused', words: said }
  const faults = faultsOf(opened.record, truthOf(example.truth), site)
  const { questions } = opened
  if (questions.length > 0)
    return { example, verdict: 'asked', words: questions.map(({ sentence }) => sentence).join(' | ') }
  if (faults.length === 0) return { example, verdict: 'right', words: said }
  return { example, verdict: 'wrong', words: `${faults.join('; ')} || ${said}` }
}
