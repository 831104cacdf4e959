import { type FlowUnitName, flowUnit_kgs, logQuantity, type LogQuantity } from './columns.ts'
import { type LogColumns, takenColumns } from './taken-columns.ts'
import type { AsBuiltLog } from './log.ts'
import { commonSpan, weatherSpan, type CommonSpan } from './span.ts'
import { ProblemError, stop, type Problem } from '#model/basis/words'
import {
  readHeader,
  findTimeColumns,
  conversion,
  unitFromText,
  type Stamp,
  type TableMapping,
  ProblemList,
  type RawColumn,
  type RawTable,
  TableReader,
  refusal,
  findTable,
  type FoundTable,
  plainLines,
  fewestRows,
  hourlyMeans,
  type HourPlan,
  rowTimes,
} from '#model/outdoors/intake'
import type { WeatherRecord } from '#model/outdoors/weather'

/** Lines looked at to see the layout. */
const HEAD_LINES = 400

export interface LogOptions {
  readonly file: string
  /** Period a row covers, as seen from its stamp; loggers mostly stamp the moment. */
  readonly stamp?: Stamp
  /** The logger's clock minus UTC, h; default: local standard time of the weather's site. */
  readonly clockOffset_h?: number
  /** Density of the fluid, kg/m³, to turn a metered volume into mass. */
  readonly fluidDensity_kgm3: number
  /** Corrections of the user: column number (0-based) by quantity; null leaves the quantity out. */
  readonly columns?: LogColumns
  /** Unit of the flow column, in place of what its header says. */
  readonly flowUnit?: FlowUnitName
}

/** A logger file laid beside its weather. */
export interface OpenedLog {
  readonly log: AsBuiltLog
  /** The weather of the same hours. */
  readonly weather: WeatherRecord
  /** First hour of the log in the whole weather record. */
  readonly firstWeatherHour: number
  /** What each column was taken for. */
  readonly columns: readonly { readonly quantity: LogQuantity; readonly header: string }[]
  /** Headers not used. */
  readonly unused: readonly string[]
  readonly warnings: readonly Problem[]
}

/**
 * Opens a logger file through the weather reader's table and clock, finds the panel's columns by their headers, makes
 * hourly means and cuts log and weather to the hours they share.
 * @throws ProblemError naming file, line and column
 */
export function openLog(text: string, weather: WeatherRecord, options: LogOptions): OpenedLog {
  const problems = new ProblemList(options.file)
  const { found, raw } = readTable(text, options.file)
  const taken = takenColumns(found, options.file, options.columns ?? {})
  const mapping = timeMapping(found, raw, taken, options)
  const times = rowTimes(
    raw,
    mapping,
    options.clockOffset_h === undefined ? {} : { clockOffset_h: options.clockOffset_h },
    weather.site.utcOffset_h,
    undefined,
    problems,
  )
  if (times === null || problems.stopped) throw new ProblemError(problems.list)
  const span = commonSpan(weather, times.plan, problems)
  if (span === null) throw new ProblemError(problems.list)
  const column = (quantity: LogQuantity) =>
    hourlyColumn(raw, found, taken.get(quantity), quantity, times.plan, times.step_h, span, options)
  const log: AsBuiltLog = {
    hours: span.hours,
    panelIn_C: column('panelIn')!,
    panelOut_C: column('panelOut')!,
    flow_kgs: column('flow'),
    pumpRun_frac: column('pumpRun'),
    air_C: column('air'),
    plate_C: column('plate'),
    store_C: column('store'),
    room_C: column('room'),
    basis: /^#\s*invented\b/i.test(text) ? `Invented log, ${options.file}.` : `Logger file ${options.file}.`,
  }
  const used = new Set(taken.values())
  const timed = new Set(mapping.columns.map(({ index }) => index))
  return {
    log,
    weather: weatherSpan(weather, span),
    firstWeatherHour: span.weatherFrom,
    columns: [...taken].map(([quantity, index]) => ({ quantity, header: found.headers[index]! })),
    unused: found.headers.filter((_, index) => !used.has(index) && !timed.has(index)),
    warnings: problems.list,
  }
}

function readTable(text: string, file: string): { found: FoundTable; raw: RawTable } {
  const { found, lines } = tableOf(text, file)
  const reader = new TableReader(found, lines)
  reader.push(text)
  return { found, raw: reader.finish() }
}

/** The table's layout from its first lines. */
function tableOf(text: string, file: string): { found: FoundTable; lines: string[] } {
  const refused = refusal(text.slice(0, 400_000), text.length, file)
  if (refused !== null) throw new ProblemError([refused])
  const lines = plainLines(text.slice(0, 400_000)).split('\n', HEAD_LINES)
  const found = findTable(lines)
  if (found === null || found.headers.every((header) => header === '')) {
    throw stop(
      'as-built-no-table',
      'No table with a header line was found in the logger file.',
      'Name the columns in the first line: time, panel in, panel out, and what else was logged.',
      { file, line: 1 },
    )
  }
  return { found, lines }
}

/** The headers of a logger file and what each is taken for by its words. @throws ProblemError without a table */
export function logHeaders(
  text: string,
  file: string,
): { readonly header: string; readonly quantity: LogQuantity | null }[] {
  return tableOf(text, file).found.headers.map((header) => ({ header, quantity: logQuantity(header) }))
}

/** The columns that give the time, as the weather reader wants them. */
function timeMapping(
  found: FoundTable,
  raw: RawTable,
  taken: ReadonlyMap<LogQuantity, number>,
  options: LogOptions,
): TableMapping {
  const used = new Set(taken.values())
  const rest: RawTable = { ...raw, columns: raw.columns.filter(({ index }) => !used.has(index)) }
  const headings = found.headers.map((header, i) => readHeader(header, found.units[i] ?? ''))
  const columns = findTimeColumns(rest, headings).map((column) => ({
    ...column,
    header: found.headers[column.index]!,
    alternatives: [],
  }))
  return {
    version: 1,
    layout: null,
    table: found.shape,
    columns,
    missing: [-9999, -999],
    time: { clockOffset_h: null, stamp: options.stamp ?? 'instant', radiationOffset_h: null, shift_h: 0 },
    site: {},
  }
}

/** Hourly means of one column over the common span, in our units; null when the file has no such column. */
function hourlyColumn(
  raw: RawTable,
  found: FoundTable,
  index: number | undefined,
  quantity: LogQuantity,
  plan: HourPlan,
  step_h: number,
  span: CommonSpan,
  options: LogOptions,
): Float64Array | null {
  if (index === undefined) return null
  const column = raw.columns.find((candidate) => candidate.index === index)
  if (column === undefined) throw new RangeError(`column ${index} of ${raw.columns.length}`)
  const convert = converter(column, found.units[index] ?? '', quantity, options)
  const cleaned = column.values.map((value) => (value === -9999 || value === -999 ? NaN : value))
  const means = hourlyMeans(cleaned, plan, fewestRows(step_h), convert)
  return means.slice(span.logFrom, span.logFrom + span.hours)
}

function converter(
  column: RawColumn,
  unitText: string,
  quantity: LogQuantity,
  options: LogOptions,
): (value: number) => number {
  if (quantity === 'pumpRun') {
    const whole = column.values.some((value) => value > 1) ? 100 : 1
    return (value) => value / whole
  }
  if (quantity === 'flow') {
    const named = options.flowUnit ?? ''
    const unit = flowUnit_kgs(named || column.header, named ? '' : unitText, options.fluidDensity_kgm3)
    if (unit !== null) return (value) => value * unit
    throw stop(
      'as-built-flow-unit',
      `The flow column “${column.header}” does not say its unit.`,
      'Choose its unit beside the columns, or put mL/min, L/min, L/h, m3/h, gpm or kg/s into its header.',
      { file: options.file, column: column.header },
    )
  }
  const named = readHeader(column.header, unitText).unit ?? unitFromText(unitText)
  const unit = named === 'K' || named === 'F' ? named : 'C'
  const { factor, offset } = conversion('airTemp', unit, 1)
  return (value) => value * factor + offset
}
