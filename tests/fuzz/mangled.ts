/** Weather files spoiled at random, and what must hold of whatever is made of them. */
import { performance } from 'node:perf_hooks'
import { seededRandom } from '#model/basis/numbers'
import { openWeather, textOfFile } from '#model/outdoors/intake'
import { ProblemError } from '#model/basis/words'
import { WEATHER_COLUMNS } from '#model/outdoors/weather'
import { sampleSite, write } from '../rooms/outdoors/intake/dialects.ts'

export const BASE = write({ hours: 200 })
const LONGEST = 120_000
/** Longest that one input may take, of the process's own time, s. */
const HANGS_S = 2

/** Ways to spoil a file: each takes the text, a place in it and a seed. */
export const SPOILS: readonly ((text: string, at: number, seed: number) => string)[] = [
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

/** A spoiled text, spoiled once more. */
export const spoiled = (text: string, how: number, at: number, seed: number): string =>
  SPOILS[how]!(text, Math.floor(at * text.length), seed).slice(0, LONGEST)

/** What does not hold of a text, or null: a sentence for every problem, a reason for every missing record, no NaN in one. */
export function faultOf(text: string): { readonly fault: string | null; readonly record: boolean } {
  const { record, problems } = openWeather(text, {
    file: 'mangled.csv',
    site: sampleSite,
    acceptLongGaps: true,
  })
  const odd = problems.find(
    ({ place, code, message, remedy }) =>
      place.file !== 'mangled.csv' ||
      !/^weather-[a-z-]+$/.test(code) ||
      message.length < 6 ||
      remedy.length < 6,
  )
  if (odd !== undefined)
    return { fault: `a problem without its words: ${JSON.stringify(odd)}`, record: false }
  const stopped = problems.some(({ severity }) => severity === 'error')
  if ((record === null) !== stopped)
    return {
      fault: record === null ? 'no record and no reason' : 'a record in spite of an error',
      record: false,
    }
  if (record === null) return { fault: null, record: false }
  const column = WEATHER_COLUMNS.find(
    (name) => record[name].length !== record.hours || !record[name].every(Number.isFinite),
  )
  return { fault: column === undefined ? null : `${column} is not whole`, record: true }
}

const decode = (bytes: Uint8Array, encoding: string, strict: boolean): string =>
  new TextDecoder(encoding, { fatal: strict }).decode(bytes)

/** One input by its number: spoiled text, spoiled bytes, or rows of odd cells; what is wrong with its reading, or null. */
export function tryMangled(seed: number): { readonly fault: string | null; readonly record: boolean } {
  const random = seededRandom(seed)
  const whole = (below: number): number => Math.floor(random() * below)
  let text = BASE
  for (let times = 1 + whole(4); times > 0; times--)
    text = spoiled(text, whole(SPOILS.length), random(), whole(99_999))
  if (seed % 5 === 0) {
    const cells = ['', 'NaN', '12:30', '2020-01-01', '31.12.2020 24:00', 'x', '"', '-999', '1e9', '3,5']
    text = Array.from({ length: 1 + whole(40) }, () =>
      Array.from({ length: 1 + whole(8) }, () => (random() < 0.5 ? cells[whole(cells.length)]! : String(random() * 100)))
        .join([',', ';', '\t', ' '][seed % 4]),
    ).join('\n') // prettier-ignore
  }
  const before = performance.now()
  try {
    if (seed % 3 === 0) {
      const bytes = new TextEncoder().encode(text).subarray(0, LONGEST)
      for (let times = 1 + whole(20); times > 0; times--) bytes[whole(bytes.length)] = whole(256)
      text = textOfFile(bytes, decode, 'mangled.csv')
    }
    const result = faultOf(text)
    const took_s = (performance.now() - before) / 1000
    return took_s > HANGS_S && result.fault === null
      ? { ...result, fault: `took ${took_s.toFixed(1)} s` }
      : result
  } catch (error) {
    if (error instanceof ProblemError) return { fault: null, record: false }
    return { fault: `threw ${(error as Error).stack}`, record: false }
  }
}
