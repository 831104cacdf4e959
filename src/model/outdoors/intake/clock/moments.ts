import type { Quantity } from '../column/quantity.ts'
import type { TableMapping } from '../mapping.ts'
import type { ProblemList } from '../problems.ts'
import type { RawColumn, RawTable } from '../table/raw.ts'
import { DAY_MS, moment_ms, NOMINAL_YEAR, HOUR_MS } from '#model/basis/hours'
import { isMonthFirst } from './day-or-month.ts'

/** When each row was, on the file's own clock, ms since 1970; NaN where the stamp cannot be read. */
export interface Moments {
  readonly ms: Float64Array
  /** The file gives no year. */
  readonly yearless: boolean
  /** The stamps carry their own zone, so they are UTC. */
  readonly zoned: boolean
}

type Columns = Partial<Record<Quantity, RawColumn>>

/** Works the rows' moments out of the columns that give time; null (and a problem) when none do. */
export function rowMoments(
  raw: RawTable,
  mapping: TableMapping,
  year: number | undefined,
  problems: ProblemList,
): Moments | null {
  const columns: Columns = {}
  for (const { quantity, index } of mapping.columns) {
    const column = raw.columns[index]
    if (column !== undefined) columns[quantity] ??= column
  }
  const at = momentReader(columns, mapping, year, problems)
  if (at === null) {
    problems.error(
      'weather-no-time',
      'No column says when a row was.',
      'Name the date and time columns in the mapping.',
      { line: mapping.table.firstDataLine },
    )
    return null
  }
  const ms = new Float64Array(raw.rows)
  for (let row = 0; row < raw.rows; row += 1) ms[row] = at(row)
  const stamped = columns.dateTime ?? columns.date
  const dated = stamped !== undefined || columns.year !== undefined || columns.epoch !== undefined
  return { ms, yearless: !dated && columns.stampNumber === undefined, zoned: stamped?.zoned ?? false }
}

type MomentAt = (row: number) => number

function momentReader(
  columns: Columns,
  mapping: TableMapping,
  year: number | undefined,
  problems: ProblemList,
): MomentAt | null {
  const { epoch, stampNumber, dayOfYear, hourOfYear, month, day } = columns
  const stamped = columns.dateTime ?? columns.date
  if (stamped?.kind === 'clock') {
    return stampReader(stamped, columns.dateTime === stamped ? null : timeOfDay(columns, mapping), problems)
  }
  if (epoch) return epochReader(epoch, unitOf(mapping, epoch) === 'ms' ? 1 : 1000)
  const packed = stampNumber ?? stamped
  if (packed) return packedReader(packed, timeOfDay(columns, mapping))
  const yearAt = columns.year ? columns.year.values : null
  const known = (row: number): number => yearAt?.[row] ?? year ?? NOMINAL_YEAR
  const ofDay = timeOfDay(columns, mapping)
  if (month && day)
    return (row) => moment_ms(known(row), month.values[row]!, day.values[row]!, ofDay?.(row) ?? 0)
  if (dayOfYear) {
    return (row) => {
      const days = dayOfYear.values[row]! - 1
      const start = Date.UTC(known(row), 0, 1)
      return days >= -1 && days < 367 ? start + days * DAY_MS + (ofDay?.(row) ?? 0) : NaN
    }
  }
  if (hourOfYear) return (row) => Date.UTC(known(row), 0, 1) + hourOfYear.values[row]! * HOUR_MS
  return null
}

function unitOf(mapping: TableMapping, column: RawColumn): string | undefined {
  return mapping.columns.find(({ index }) => index === column.index)?.unit
}

function stampReader(column: RawColumn, ofDay: MomentAt | null, problems: ProblemList): MomentAt {
  const monthFirst = isMonthFirst(column, problems)
  const own = column.ofDay_ms!
  return (row) => {
    const date = column.values[row]!
    const p = Math.floor(date / 100) % 100
    const q = date % 100
    const start = moment_ms(Math.floor(date / 10_000), monthFirst ? p : q, monthFirst ? q : p, 0)
    const printed = own[row]!
    return start + (ofDay?.(row) ?? (printed === printed ? printed : 0))
  }
}

function epochReader(column: RawColumn, factor: number): MomentAt {
  return (row) => column.values[row]! * factor
}

/** YYYYMMDD, YYYYMMDDHH, YYYYMMDDHHMM or with seconds, separated by the size of the number. */
function packedReader(column: RawColumn, ofDay: MomentAt | null): MomentAt {
  return (row) => {
    let rest = column.values[row]!
    if (!(rest >= 1e7 && rest < 1e14)) return NaN
    const take = (): number => {
      const part = rest % 100
      rest = Math.floor(rest / 100)
      return part
    }
    const second = rest >= 1e13 ? take() : 0
    const minute = rest >= 1e11 ? take() : 0
    const hour = rest >= 1e9 ? take() : 0
    const day = take()
    const month = take()
    return moment_ms(rest, month, day, ((hour * 60 + minute) * 60 + second) * 1000 + (ofDay?.(row) ?? 0))
  }
}

function timeOfDay(columns: Columns, mapping: TableMapping): MomentAt | null {
  const { timeOfDay: time, hour, minute } = columns
  if (time?.kind === 'clock') return (row) => time.ofDay_ms![row]!
  const clock = hour ?? time
  if (clock?.kind === 'clock') return (row) => clock.ofDay_ms![row]!
  if (clock) {
    const hhmm = unitOf(mapping, clock) === 'hhmm'
    return (row) => {
      const value = clock.values[row]!
      const hours = hhmm ? Math.floor(value / 100) + (value % 100) / 60 : value
      const minutes = minute?.values[row] ?? 0
      return hours >= 0 && hours <= 24 ? hours * HOUR_MS + minutes * 60_000 : NaN
    }
  }
  return null
}
