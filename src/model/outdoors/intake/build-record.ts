import { standardPressure_Pa } from '#model/outdoors/air'
import type { SunHours } from '#model/outdoors/sun'
import { QUANTITIES, type Quantity } from './column/quantity.ts'
import { CLOUD_NOTE, deriveCloud } from './derive/cloud.ts'
import { DEW_POINT_NOTE, deriveDewPoint } from './derive/humidity.ts'
import { deriveRadiation } from './derive/radiation.ts'
import type { TableMapping } from './mapping.ts'
import type { ProblemList } from './problems.ts'
import type { Gap } from './quality/report.ts'
import type { HourlySeries } from './quality/series.ts'
import type { ColumnOrigin, Site, WeatherColumn, WeatherRecord } from '#model/outdoors/weather'
import type { HourPlan } from './clock/hours.ts'

/** What the record is built from: filled hourly series and where they came from. */
export interface RecordParts {
  readonly series: HourlySeries
  readonly gaps: readonly Gap[]
  readonly mapping: TableMapping
  /** Why a quantity that no column holds has values. */
  readonly worked: Partial<Readonly<Record<Quantity, string>>>
  readonly plan: HourPlan
  readonly radiationMiddle_h: number
  readonly site: Site
  readonly sun: SunHours
  readonly basis: string
}

type Origins = Partial<Record<WeatherColumn | 'skyLongwave_Wm2', ColumnOrigin>>

/** Puts the record together, working out what is missing; null and a problem when something cannot be worked out. */
export function buildRecord(parts: RecordParts, problems: ProblemList): WeatherRecord | null {
  const { series, plan, site, sun } = parts
  const origins: Origins = {}
  const airTemp_C = need(parts, 'airTemp', problems)
  const wind_ms = need(parts, 'windSpeed', problems)
  const dewPoint_C = dewPoint(parts, origins, problems)
  const radiation = deriveRadiation(series, sun)
  if (radiation === null)
    sayMissing('globalHorizontal', 'direct and diffuse irradiance would also do', problems)
  if (airTemp_C === null || wind_ms === null || dewPoint_C === null || radiation === null) return null
  const pressure_Pa =
    series.pressure ?? new Float64Array(plan.hours).fill(standardPressure_Pa(site.altitude_m))
  origins.airTemp_C = readOrigin(parts, 'airTemp')
  origins.wind_ms = readOrigin(parts, 'windSpeed')
  origins.pressure_Pa = series.pressure
    ? readOrigin(parts, 'pressure')
    : derived(
        `Worked out from the altitude ${site.altitude_m} m: standard atmosphere, ASHRAE Fundamentals ch. 1.`,
      )
  const { global, direct, diffuse, notes } = radiation
  origins.globalHorizontal_Wm2 = notes.global ? derived(notes.global) : readOrigin(parts, 'globalHorizontal')
  origins.directNormal_Wm2 = notes.direct ? derived(notes.direct) : readOrigin(parts, 'directNormal')
  origins.diffuseHorizontal_Wm2 = notes.diffuse
    ? derived(notes.diffuse)
    : readOrigin(parts, 'diffuseHorizontal')
  const cloud_frac = cloud(parts, global, origins)
  if (series.skyLongwave) origins.skyLongwave_Wm2 = readOrigin(parts, 'skyLongwave')
  return {
    site,
    start_utcMs: plan.start_utcMs,
    hours: plan.hours,
    radiationMiddle_h: parts.radiationMiddle_h,
    ...{ airTemp_C, dewPoint_C, pressure_Pa, wind_ms, cloud_frac },
    ...{ globalHorizontal_Wm2: global, directNormal_Wm2: direct, diffuseHorizontal_Wm2: diffuse },
    ...(series.skyLongwave ? { skyLongwave_Wm2: series.skyLongwave } : {}),
    origins,
    basis: parts.basis,
  }
}

function need({ series }: RecordParts, quantity: Quantity, problems: ProblemList): Float64Array | null {
  const values = series[quantity]
  if (values) return values
  sayMissing(quantity, null, problems)
  return null
}

function sayMissing(quantity: Quantity, instead: string | null, problems: ProblemList): void {
  problems.error(
    'weather-column-missing',
    `No column with values for ${QUANTITIES[quantity].label.toLowerCase()} was found${instead === null ? '' : ` (${instead})`}.`,
    'Name the column in the mapping, or choose a file that has it.',
    { column: QUANTITIES[quantity].label },
  )
}

function dewPoint(parts: RecordParts, origins: Origins, problems: ProblemList): Float64Array | null {
  const { airTemp, dewPoint: read, relativeHumidity } = parts.series
  if (airTemp === undefined) return null
  if (read !== undefined) {
    origins.dewPoint_C = readOrigin(parts, 'dewPoint')
    return read.map((dew, i) => Math.min(dew, airTemp[i]!))
  }
  if (relativeHumidity === undefined) {
    sayMissing(
      'dewPoint',
      'relative humidity, vapour pressure or its deficit, specific humidity, mixing ratio or wet bulb would also do',
      problems,
    )
    return null
  }
  origins.dewPoint_C = {
    ...derived(DEW_POINT_NOTE),
    filledHours: filledHours(parts.gaps, 'relativeHumidity'),
  }
  return deriveDewPoint(airTemp, relativeHumidity)
}

function cloud(parts: RecordParts, global: Float64Array, origins: Origins): Float64Array {
  const { opaqueCloud, totalCloud } = parts.series
  if (opaqueCloud !== undefined) {
    origins.cloud_frac = readOrigin(parts, 'opaqueCloud')
    return opaqueCloud
  }
  const worked = deriveCloud(global, parts.sun, parts.site.altitude_m, parts.plan.wholeYear)
  if (worked !== null && totalCloud === undefined) {
    origins.cloud_frac = derived(CLOUD_NOTE)
    return worked
  }
  if (totalCloud !== undefined) {
    const origin = readOrigin(parts, 'totalCloud')
    origins.cloud_frac = {
      ...origin,
      note: `${origin.note} Total cloud is taken for opaque cloud, which is less or equal.`,
    }
    return totalCloud
  }
  origins.cloud_frac = derived(
    'The sun never rises above 10° in this record, so cloud is unknown; 0 is taken.',
  )
  return new Float64Array(parts.plan.hours)
}

function readOrigin({ mapping, gaps, worked }: RecordParts, quantity: Quantity): ColumnOrigin {
  const note = worked[quantity]
  if (note !== undefined) return { ...derived(note), filledHours: filledHours(gaps, quantity) }
  const column = mapping.columns.find((candidate) => candidate.quantity === quantity)
  const name = column === undefined ? 'the file' : column.header
  const unit = column?.unit ? `, ${column.unit}` : ''
  return { kind: 'read', note: `Read from ${name}${unit}.`, filledHours: filledHours(gaps, quantity) }
}

function filledHours(gaps: readonly Gap[], quantity: Quantity): number {
  return gaps
    .filter((gap) => gap.quantity === quantity && gap.how !== 'left')
    .reduce((sum, gap) => sum + gap.hours, 0)
}

function derived(note: string): ColumnOrigin {
  return { kind: 'derived', note, filledHours: 0 }
}
