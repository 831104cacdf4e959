/**
 * `npm run -s evidence -- place`: years made from monthly climate against year files held beside the repository
 * (../shared/data). The files judge and are never fitted to; the United States file is of the kind the method's regressions
 * were made on, the other two are not.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { openWeather } from '#model/outdoors/intake'
import { findPlace, type OwnMonth, type PlaceAsked, placeWeather, trustLine } from '#model/outdoors/place'
import { wordingText } from '#model/basis/words'
import { defaultScenario, type Scenario } from '#model/design/scenario'
import type { Site, WeatherRecord } from '#model/outdoors/weather'
import { createStudies, finish } from '#studies/index.ts'
import { ROOT } from '../../house-rules/source-files.ts'
import { sizingStatistics, type SizingStatistics } from './statistics.ts'
import { PLACES, TOWNS } from '../../rooms/outdoors/place/held-data.ts'

const FOLDER = `${ROOT}../shared/data/`
export const TABLE = `${ROOT}src/ui/trust/place-validation.json`

interface YearFile {
  readonly file: string
  readonly kind: string
  /** Where the file does not say it. */
  readonly site?: Site
  /** True where the file's longwave was measured: then it judges the night. */
  readonly measuredSky?: boolean
  /** Warming over 1961–1990 of the file's own years, K; null: as usual today. */
  readonly ownWarming_K: number | null
}

const FILES: readonly YearFile[] = [
  {
    file: 'typical-year-36N-80W.csv',
    kind: 'typical year of 1980–2003, United States; of the kind the regressions were made on',
    ownWarming_K: 0.3,
  },
  { file: 'typical-year-45N-8E.csv', kind: 'typical year of 2006–2020, Europe', ownWarming_K: null },
  {
    file: 'half-hourly-41N-109W-2017.csv',
    kind: 'satellite year 2017, mountains; its July is 4.5 K warmer than the climate of its height',
    ownWarming_K: null,
  },
  {
    file: 'sky/sky-43.74-3.60-mediterranean.csv',
    kind: 'measured year 2014 over a forest, south of France; no station in the open',
    measuredSky: true,
    site: { name: 'Forest', latitude_deg: 43.74, longitude_deg: 3.6, altitude_m: 270, utcOffset_h: 1 },
    ownWarming_K: null,
  },
]

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
  /** The same at the warming of the file's own years, where that is another. */
  readonly ownYearsRatio: number | null
  /** The same with the twelve mean temperatures of the file's own year typed into the table of months. */
  readonly ownMonths: {
    readonly area_m2: number | null
    readonly ratio: number | null
    readonly low_m2: number | null
    readonly high_m2: number | null
    readonly contained: boolean
  }
  readonly peakAlone_K: number
  /** True where the file's night is by its measured sky, not by the formula. */
  readonly skyMeasured: boolean
  /** Made less file. */
  readonly off: SizingStatistics
}

export const held = (): boolean => FILES.every(({ file }) => existsSync(FOLDER + file))

function readYear({ file, site }: YearFile): WeatherRecord {
  const said = site === undefined ? {} : { site }
  const { record, problems } = openWeather(readFileSync(FOLDER + file, 'utf8'), { file, ...said })
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

/** Mean temperatures of the months of a year file, as a user would type them from a climate table. */
function monthMeans(record: WeatherRecord): OwnMonth[] {
  const sums = Array.from({ length: 12 }, () => ({ sum: 0, count: 0 }))
  for (let h = 0; h < record.hours; h++) {
    const month = sums[new Date(Date.UTC(2001, 0, 1, h)).getUTCMonth()]!
    month.sum += record.airTemp_C[h]!
    month.count++
  }
  return sums.map(({ sum, count }, month) => ({ month, column: 'airTemp_C', value: sum / count }))
}

/** What a made year asks for against what its file asks for. */
function against(scenario: Scenario, weather: WeatherRecord, file_m2: number) {
  const answer = sized(scenario, weather)
  const range = finish(createStudies().range({ scenario, weather, sizing: answer, draws: DRAWS })).result
  const { low_m2, high_m2 } = range
  const area_m2 = answer.kind === 'floor' ? null : answer.area_m2
  const contained = low_m2 !== null && low_m2 <= file_m2 && file_m2 <= (high_m2 ?? Infinity)
  return { answer, area_m2, ratio: area_m2 === null ? null : area_m2 / file_m2, low_m2, high_m2, contained }
}

export function validate(one: YearFile): ValidationRow {
  const { kind, measuredSky, ownWarming_K } = one
  const real = readYear(one)
  const { latitude_deg, longitude_deg, altitude_m } = real.site
  const madeFor = (changes: Pick<PlaceAsked, 'own' | 'warming_K'>): WeatherRecord =>
    placeWeather(
      findPlace(PLACES, TOWNS, { latitude_deg, longitude_deg, altitude_m, name: null, ...changes }),
    )
  const made = madeFor({ warming_K: null })
  const { limit_C, sizing } = limitFor(real)
  const scenario = withLimit(limit_C)
  const asked = against(scenario, made, sizing.area_m2)
  const own = madeFor({ warming_K: null, own: monthMeans(real) })
  const { area_m2, ratio, low_m2, high_m2, contained } = against(scenario, own, sizing.area_m2)
  const ownYears = ownWarming_K === null ? null : sized(scenario, madeFor({ warming_K: ownWarming_K }))
  return {
    place: `${latitude_deg.toFixed(1)}, ${longitude_deg.toFixed(1)}`,
    kind,
    limit_C,
    fileArea_m2: sizing.area_m2,
    madeArea_m2: asked.area_m2,
    ratio: asked.ratio,
    low_m2: asked.low_m2,
    high_m2: asked.high_m2,
    contained: asked.contained,
    ownYearsRatio: ownYears === null || ownYears.kind === 'floor' ? null : ownYears.area_m2 / sizing.area_m2,
    ownMonths: { area_m2, ratio, low_m2, high_m2, contained },
    peakAlone_K: asked.answer.doNothing.peak_C - sizing.doNothing.peak_C,
    skyMeasured: measuredSky === true,
    off: difference(sizingStatistics(made), sizingStatistics(real, measuredSky === true)),
  }
}

const difference = (a: SizingStatistics, b: SizingStatistics): SizingStatistics =>
  Object.fromEntries(
    Object.entries(a).map(([name, value]) => [name, value - b[name as keyof SizingStatistics]]),
  ) as unknown as SizingStatistics

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
    if (row.ownYearsRatio !== null)
      console.log(`    at the warming of the file's own years: ratio ${row.ownYearsRatio.toFixed(2)}`)
    const { off, ownMonths } = row
    console.log(
      `    with the twelve mean temperatures of the file's own year: ratio ${ownMonths.ratio?.toFixed(2) ?? '–'}; range ${area(ownMonths.low_m2)} to ${area(ownMonths.high_m2)} m² ${ownMonths.contained ? 'holds' : 'MISSES'} it`,
    )
    console.log(
      `    made less file: peak without panels ${row.peakAlone_K.toFixed(1)} K, hot spell ${off.hotSpell_C.toFixed(1)} K, hottest hours ${off.hottestHour_C.toFixed(1)} K, warm nights ${off.warmNight_C.toFixed(1)} K, damp nights ${off.dampNight_C.toFixed(1)} K, damp-hot days ${off.dampHot_C.toFixed(1)} K,`,
    )
    console.log(
      `      clear calm nights ${(100 * off.clearCalm_frac).toFixed(0)} %, night deficit ${off.deficit_Wm2.toFixed(1)} W/m², night depression of the plate ${off.depression_K.toFixed(1)} K`,
    )
  }
  const within = rows.filter(({ ratio }) => ratio !== null && ratio >= 0.5 && ratio <= 2).length
  console.log(
    `${within} of ${rows.length} within a factor of two; ${rows.filter(({ contained }) => contained).length} of ${rows.length} inside their range.`,
  )
  const own = rows.filter(({ ownMonths: { ratio } }) => ratio !== null && ratio >= 0.5 && ratio <= 2).length
  console.log(
    `With the twelve mean temperatures of the file's own year: ${own} of ${rows.length} within a factor of two; ${rows.filter(({ ownMonths }) => ownMonths.contained).length} of ${rows.length} inside their range.`,
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
