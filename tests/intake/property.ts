/** A record written at random and read back: right, asked about, refused, or wrong in silence. */
import { seededRandom } from '#model/basis/numbers'
import { openWeather, textOfFile } from '#model/outdoors/intake'
import { findPlace, placeWeather } from '#model/outdoors/place'
import type { WeatherRecord } from '#model/outdoors/weather'
import { PLACES, TOWNS } from '../rooms/outdoors/place/held-data.ts'
import { written } from './written.ts'

export type Verdict = 'right' | 'asked' | 'refused' | 'wrong'

export interface Case {
  readonly seed: number
  readonly verdict: Verdict
  readonly how: string
  readonly words: string
}

/** Largest differences of four fifths of the hours that rounding and filled gaps explain. */
const WITHIN = { airTemp_C: 0.4, wind_ms: 0.3, globalHorizontal_Wm2: 12, dewPoint_C: 0.9 } as const

const decode = (some: Uint8Array, encoding: string, strict: boolean): string =>
  new TextDecoder(encoding, { fatal: strict }).decode(some)

/** A person answers no more than so many for a table with a header. */
const MOST_QUESTIONS = 2

/** So many towns are drawn; their years are made once. */
const TRUTHS = 500
const made = new Map<number, WeatherRecord>()

/** The year of a town drawn at random, between 60° north and south. */
function truthOf(number: number): WeatherRecord {
  const record = made.get(number) ?? drawnTruth(seededRandom(number))
  made.set(number, record)
  return record
}

function drawnTruth(random: () => number): WeatherRecord {
  for (;;) {
    const town = TOWNS[Math.floor(random() * TOWNS.length)]!
    if (Math.abs(town.latitude_deg) > 60) continue
    const { latitude_deg, longitude_deg, altitude_m } = town
    return placeWeather(
      findPlace(PLACES, TOWNS, { latitude_deg, longitude_deg, altitude_m, name: 'made up', warming_K: null }),
    )
  }
}

function wrongIn(record: WeatherRecord, truth: WeatherRecord): string[] {
  /** Hours from local midnight of 1 January. */
  const intoYear = ({ start_utcMs, site }: WeatherRecord): number => {
    const local = start_utcMs + site.utcOffset_h * 3.6e6
    return Math.round((local - Date.UTC(new Date(local).getUTCFullYear(), 0, 1)) / 3.6e6)
  }
  const shift = intoYear(record) - intoYear(truth)
  return (Object.keys(WITHIN) as (keyof typeof WITHIN)[]).flatMap((name) => {
    const off: number[] = []
    for (let h = 0; h < record.hours; h++) {
      const want = truth[name][(((h + shift) % 8760) + 8760) % 8760]!
      off.push(Math.abs(record[name][h]! - want))
    }
    const most = off.toSorted((a, b) => a - b)[Math.floor(0.8 * off.length)]!
    return most <= WITHIN[name] ? [] : [`${name} off by ${most.toFixed(1)}`]
  })
}

export function tryCase(seed: number): Case {
  const random = seededRandom(seed)
  const truth = truthOf(seed % TRUTHS)
  const { bytes, how } = written(truth, random)
  const opened = openWeather(textOfFile(bytes, decode, 'made'), { file: 'made.csv', site: truth.site })
  const said = opened.problems.map(({ code }) => code).join(', ')
  const result = (verdict: Verdict, words: string): Case => ({ seed, verdict, how, words })
  if (opened.record === null)
    return result('refused', opened.problems.map(({ message }) => message).join(' '))
  const wrong = wrongIn(opened.record, truth)
  if (wrong.length === 0) return result('right', said)
  const { verdict, late_min } = opened.clock
  if (opened.questions.length > MOST_QUESTIONS && !how.includes('no header'))
    return result('wrong', `${opened.questions.length} questions`)
  if (opened.questions.length > 0)
    return result('asked', opened.questions.map(({ about }) => about).join(', '))
  return result('wrong', `${wrong.join('; ')} | ${said} | clock ${verdict} ${late_min.toFixed(0)} min`)
}
