import { alternativesOf } from './alternatives.ts'
import { readHeaders, type HeaderReading } from './header-guess.ts'
import { findMissingValues } from './missing-values.ts'
import { isPlausible, plausibleUnit } from './plausible.ts'
import { guessByPhysics, type Guessed } from './physics-guess.ts'
import { profileOf, type Profile } from './profile.ts'
import { isUnitOf, givesTime, type Quantity } from './quantity.ts'
import { askColumns, askUnits } from './ask.ts'
import { fittingUnits } from './unit-questions.ts'
import { sampleTable } from './sample.ts'
import type { TimeColumn } from './time-column.ts'
import { findTimeColumns } from './time-columns.ts'
import type { ColumnMapping, TableMapping, TimeMapping } from '../mapping.ts'
import type { OpenOptions } from '../options.ts'
import { ProblemList } from '../problems.ts'
import type { Site } from '#model/outdoors/weather'
import type { RawTable } from '../table/raw.ts'
import { legendOf, namedMissing } from '../table/legend.ts'
import type { FoundTable } from '../table/shape.ts'
import { namedClock_h, siteNotes } from '../table/site-notes.ts'
import { HOUR_MS } from '#model/basis/hours'
import { guessStamp } from '../clock/guess-stamp.ts'
import { stampToMiddle_h } from '../clock/hours.ts'
import { rowMoments } from '../clock/moments.ts'
import { medianStep_h } from '../clock/step.ts'

/**
 * Mapping of a table whose layout is not known: columns by their headers where those fit the values, the rest by
 * physics; place and clock from the lines above the table.
 * @param lines the first lines of the file
 */
export function guessMapping(
  raw: RawTable,
  found: FoundTable,
  lines: readonly string[],
  options: OpenOptions,
  problems: ProblemList,
): TableMapping {
  const preamble = lines.slice(0, found.shape.firstDataLine - 1)
  const site = { ...siteNotes(preamble), ...options.site }
  const legend = legendOf(
    preamble,
    raw.columns.map(({ header }) => header),
  )
  const headers = readHeaders(
    raw.columns.map(({ header, unitText }) => {
      const entry = legend.get(header)
      return entry === undefined ? { header, unitText } : { header: entry.words, unitText: entry.unitText }
    }),
  )
  const timeColumns = findTimeColumns(raw, headers)
  const bare = bareMapping(raw, found, preamble, timeColumns, site)
  const forecast =
    raw.columns.some(({ header }) => FORECAST.test(header)) &&
    raw.columns.some(({ header }) => INSTANT.test(header))
  const { time, step_h, middles_utcMs } = guessTime(raw, bare, options.time?.clockOffset_h)
  const sample = sampleTable(raw, bare.missing, step_h, middles_utcMs, site)
  raw.columns.forEach(({ header }, index) => {
    const scale = legend.get(header)?.scale ?? 1
    if (scale !== 1) sample.columns[index]!.forEach((value, i, all) => (all[i] = value * scale))
  })
  const profiles = sample.columns.map((values) => profileOf(values, sample.hourBefore))
  const guessed = guessColumns(headers, profiles, timeColumns, site.latitude_deg, (known, taken) =>
    guessByPhysics(sample, profiles, known, taken),
  )
  const columns = raw.columns.map((column) =>
    answered(options.answers, {
      ...mapColumn(column.index, column.header, timeColumns, guessed, profiles),
      ...((legend.get(column.header)?.scale ?? 1) === 1 ? {} : { scale: legend.get(column.header)!.scale }),
      ...(forecast && INSTANT.test(column.header) ? { instant: true } : {}),
    }),
  )
  if (options.mapping === undefined) {
    askColumns(columns, options.answers, problems)
    askUnits(columns, headers, profiles, site.latitude_deg, options.answers ?? {}, problems)
  }
  return { ...bare, columns, time: forecast ? { ...time, stamp: 'ending' } : time }
}

/** A column in the unit the user said. */
function answered(answers: OpenOptions['answers'], column: ColumnMapping): ColumnMapping {
  const unit = answers?.[column.quantity]
  return isUnitOf(column.quantity, unit) ? { ...column, unit, basis: 'user', confidence: 1 } : column
}

/** Open tables of forecast models: readings at the stamp, irradiance over the hour before it. */
const FORECAST = /^shortwave_radiation\b/
const INSTANT = /_(2|10|80|100)m\b|^(surface_pressure|cloud_cover|pressure_msl)\b/

/** The mapping with its time columns only. */
function bareMapping(
  raw: RawTable,
  found: FoundTable,
  preamble: readonly string[],
  timeColumns: readonly TimeColumn[],
  site: Partial<Site>,
): TableMapping {
  const named = [...timeColumns.map(({ index }) => found.headers[index] ?? ''), ...preamble]
  return {
    ...{
      version: 1,
      layout: null,
      table: found.shape,
      missing: [...new Set([...findMissingValues(raw), ...namedMissing(preamble)])],
      site,
    },
    columns: timeColumns.map((column) => ({ ...column, header: '', alternatives: [] })),
    time: { clockOffset_h: namedClock_h(named), stamp: 'beginning', radiationOffset_h: null, shift_h: 0 },
  }
}

/** Step, kind of stamp and the UTC middles of the rows; null middles where no column gives time. */
function guessTime(raw: RawTable, bare: TableMapping, chosenClock_h: number | undefined) {
  const ms =
    bare.columns.length === 0 ? null : (rowMoments(raw, bare, undefined, new ProblemList(''))?.ms ?? null)
  if (ms === null) return { time: bare.time, step_h: 1, middles_utcMs: null }
  const step_h = medianStep_h(ms)
  const time: TimeMapping = { ...bare.time, stamp: guessStamp(ms, raw, step_h) }
  const { utcOffset_h, longitude_deg } = bare.site
  const zone_h =
    chosenClock_h ?? bare.time.clockOffset_h ?? utcOffset_h ?? Math.round((longitude_deg ?? 0) / 15)
  const toMiddle_ms = (stampToMiddle_h(time.stamp, step_h) - zone_h) * HOUR_MS
  return { time, step_h, middles_utcMs: ms.map((moment) => moment + toMiddle_ms) }
}

/** Counted only where both are there: U10 alone is a wind speed. */
const COMPONENTS: readonly Quantity[] = ['windEast', 'windNorth']

type Physics = (known: ReadonlyMap<Quantity, Guessed>, taken: ReadonlySet<number>) => readonly Guessed[]

function guessColumns(
  headers: readonly HeaderReading[],
  profiles: readonly (Profile | null)[],
  timeColumns: readonly TimeColumn[],
  latitude_deg: number | undefined,
  physics: Physics,
): readonly Guessed[] {
  const taken = new Set(timeColumns.map(({ index }) => index))
  const known = new Map<Quantity, Guessed>()
  const components = COMPONENTS.every((one) => headers.some(({ quantities }) => quantities.includes(one)))
  headers.forEach(({ quantities, unit: named, vetoed }, index) => {
    if (vetoed) taken.add(index)
    const quantity = quantities.find((one) => !givesTime(one) && (components || !COMPONENTS.includes(one)))
    const profile = profiles[index]
    if (quantity === undefined || taken.has(index) || !profile) return
    if (quantity === 'ignore') {
      taken.add(index)
      return
    }
    const unit = named !== null && isUnitOf(quantity, named) ? named : plausibleUnit(quantity, profile)
    if (unit === null || known.has(quantity)) return
    if (!isPlausible(quantity, unit, profile) && !profile.constant) return
    taken.add(index)
    known.set(quantity, { index, quantity, unit, confidence: named === null ? 0.85 : 0.95, basis: 'header' })
  })
  agreeUnits(known, headers, profiles, latitude_deg)
  return [...known.values(), ...physics(known, taken)]
}

/** Units that headers leave open: one that fits values and place, and the dew point as the air. */
function agreeUnits(
  known: Map<Quantity, Guessed>,
  headers: readonly HeaderReading[],
  profiles: readonly (Profile | null)[],
  latitude_deg: number | undefined,
): void {
  for (const quantity of ['airTemp', 'dewPoint', 'windSpeed', 'globalHorizontal'] as const) {
    const column = known.get(quantity)
    const named = column === undefined ? null : headers[column.index]!.unit
    if (column === undefined || (named !== null && isUnitOf(quantity, named))) continue
    const profile = profiles[column.index]!
    const airUnit = known.get('airTemp')?.unit
    const fitting = fittingUnits(quantity, profile, latitude_deg)
    const open = fitting.length > 0 && !fitting.some(({ unit }) => unit === column.unit)
    const unit = quantity === 'dewPoint' ? (airUnit ?? column.unit) : open ? fitting[0]!.unit : column.unit
    if (isPlausible(quantity, unit, profile)) known.set(quantity, { ...column, unit })
  }
}

function mapColumn(
  index: number,
  header: string,
  timeColumns: readonly TimeColumn[],
  guessed: readonly Guessed[],
  profiles: readonly (Profile | null)[],
): ColumnMapping {
  const column = timeColumns.find((one) => one.index === index) ?? guessed.find((one) => one.index === index)
  const alternatives = alternativesOf(profiles[index] ?? null, column?.quantity)
  const name = header === '' ? `column ${index + 1}` : header
  if (column !== undefined) {
    const { quantity, unit, confidence, basis } = column
    return { index, header: name, quantity, unit, confidence, basis, alternatives }
  }
  return { index, header: name, quantity: 'ignore', unit: '', confidence: 0.5, basis: 'none', alternatives }
}
