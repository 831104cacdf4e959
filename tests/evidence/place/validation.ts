/**
 * `npm run -s evidence -- place`: years made from monthly climate against year files held beside the repository
 * (../shared/data). The files judge and are never fitted to; the United States file is of the kind the method's regressions
 * were made on, the other two are not.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { openWeather } from '#model/outdoors/intake'
import { findPlace, placeWeather, trustLine } from '#model/outdoors/place'
import { wordingText } from '#model/basis/words'
import { defaultScenario, type Scenario } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'
import { createStudies, finish } from '#studies/index.ts'
import { ROOT } from '../../house-rules/source-files.ts'
import { PLACES, TOWNS } from '../../rooms/outdoors/place/held-data.ts'

const FOLDER = `${ROOT}../shared/data/`
export const TABLE = `${ROOT}src/ui/trust/place-validation.json`

const FILES = [
  {
    file: 'typical-year-36N-80W.csv',
    kind: 'typical year, United States; of the kind the regressions were made on',
  },
  { file: 'typical-year-45N-8E.csv', kind: 'typical year, Europe' },
  { file: 'half-hourly-41N-109W-2017.csv', kind: 'satellite year 2017, mountains' },
] as const

/** Area the file's year is to need: where a limit says something. */
const WANTED_M2 = [8, 25] as const
const LIMITS_C = Array.from({ length: 29 }, (_, i) => 21 + 0.5 * i)
const DRAWS = 64

export interface ValidationRow {
  readonly place: string
  readonly kind: string
  readonly limit_C: number
  readonly fileArea_m2: number
  /** Null where no area is enough. */
  readonly madeArea_m2: number | null
  readonly ratio: number | null
  readonly low_m2: number | null
  readonly high_m2: number | null
  readonly contained: boolean
  readonly peakAlone_K: number
  readonly hottestHour_K: number
  readonly warmNight_K: number
  readonly dampNight_K: number
}

export const held = (): boolean => FILES.every(({ file }) => existsSync(FOLDER + file))

function readYear(file: string): WeatherRecord {
  const { record, problems } = openWeather(readFileSync(FOLDER + file, 'utf8'), { file })
  if (record === null) throw new Error(problems.map(({ message }) => message).join(' '))
  return record
}

const withLimit = (limit_C: number): Scenario => {
  const base = defaultScenario()
  return { ...base, target: { ...base.target, limit_C }, plan: { ...base.plan, setpoint_C: limit_C - 2 } }
}

const sized = (scenario: Scenario, weather: WeatherRecord) =>
  finish(createStudies().size({ scenario, weather })).result.sizing

/** The first limit, from the coolest up, at which the file's year needs an area that says something. */
function limitFor(weather: WeatherRecord) {
  for (const limit_C of LIMITS_C) {
    const sizing = sized(withLimit(limit_C), weather)
    const { kind, area_m2 } = sizing
    if (kind !== 'floor' && area_m2 >= WANTED_M2[0] && area_m2 <= WANTED_M2[1]) return { limit_C, sizing }
  }
  throw new Error('no limit asks for such an area')
}

/** Value below which a share of the hours lie. */
const quantile = (values: ArrayLike<number>, share: number): number => {
  const sorted = Array.from(values).toSorted((a, b) => a - b)
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!
}

const nightly = (record: WeatherRecord, values: Float64Array): number[] =>
  Array.from(values).filter((_, h) => record.globalHorizontal_Wm2[h]! === 0)

export function validate({ file, kind }: (typeof FILES)[number]): ValidationRow {
  const real = readYear(file)
  const { latitude_deg, longitude_deg, altitude_m } = real.site
  const asked = { latitude_deg, longitude_deg, altitude_m, name: null, warming_K: null }
  const made = placeWeather(findPlace(PLACES, TOWNS, asked))
  const { limit_C, sizing } = limitFor(real)
  const scenario = withLimit(limit_C)
  const answer = sized(scenario, made)
  const range = finish(
    createStudies().range({ scenario, weather: made, sizing: answer, draws: DRAWS }),
  ).result
  const madeArea_m2 = answer.kind === 'floor' ? null : answer.area_m2
  const low_m2 = range.low_m2
  return {
    place: `${latitude_deg.toFixed(1)}, ${longitude_deg.toFixed(1)}`,
    kind,
    limit_C,
    fileArea_m2: sizing.area_m2,
    madeArea_m2,
    ratio: madeArea_m2 === null ? null : madeArea_m2 / sizing.area_m2,
    low_m2,
    high_m2: range.high_m2,
    contained: low_m2 !== null && low_m2 <= sizing.area_m2 && sizing.area_m2 <= (range.high_m2 ?? Infinity),
    peakAlone_K: answer.doNothing.peak_C - sizing.doNothing.peak_C,
    hottestHour_K: quantile(made.airTemp_C, 0.998) - quantile(real.airTemp_C, 0.998),
    warmNight_K:
      quantile(nightly(made, made.airTemp_C), 0.99) - quantile(nightly(real, real.airTemp_C), 0.99),
    dampNight_K:
      quantile(nightly(made, made.dewPoint_C), 0.99) - quantile(nightly(real, real.dewPoint_C), 0.99),
  }
}

const area = (value: number | null): string => (value === null ? 'none is enough' : value.toFixed(1))

/** Prints the table and keeps it for the trust page. */
export function printPlaceValidation(): void {
  if (!held()) {
    console.log(
      '../shared/data is not here: the years that judge the place method are not held. The kept table:',
    )
    console.log(readFileSync(TABLE, 'utf8'))
    return
  }
  const rows = FILES.map((one) => validate(one))
  for (const row of rows) {
    console.log(`${row.place} (${row.kind}), limit ${row.limit_C} °C`)
    console.log(
      `    area ${area(row.madeArea_m2)} m² against ${area(row.fileArea_m2)} m² from the file, ratio ${row.ratio?.toFixed(2) ?? '–'}; range ${area(row.low_m2)} to ${area(row.high_m2)} m² ${row.contained ? 'holds' : 'MISSES'} it`,
    )
    console.log(
      `    peak without panels ${row.peakAlone_K.toFixed(1)} K, hottest hours ${row.hottestHour_K.toFixed(1)} K, warm nights ${row.warmNight_K.toFixed(1)} K, damp nights ${row.dampNight_K.toFixed(1)} K off`,
    )
  }
  const within = rows.filter(({ ratio }) => ratio !== null && ratio >= 0.5 && ratio <= 2).length
  console.log(
    `${within} of ${rows.length} within a factor of two; ${rows.filter(({ contained }) => contained).length} of ${rows.length} inside their range.`,
  )
  const found = findPlace(PLACES, TOWNS, {
    latitude_deg: 50,
    longitude_deg: 20,
    altitude_m: 200,
    name: null,
    warming_K: null,
  })
  console.log(wordingText(trustLine(found), 'si'))
  writeFileSync(TABLE, `${JSON.stringify({ rows }, null, 2)}\n`)
}
