import type { HeaderReading } from './header-guess.ts'
import type { Quantity } from './quantity.ts'
import type { TimeColumn } from './time-column.ts'
import { ProblemList } from '../problems.ts'
import type { RawColumn, RawTable } from '../table/raw.ts'
import { rowMoments } from '../clock/moments.ts'

/** Rows looked at, and columns kept for one role. */
const LOOKED_AT = 1500
const KEPT = 5

export interface RoleColumn {
  readonly column: RawColumn
  readonly named: boolean
}

type Fits = (v: Float64Array) => boolean

const whole: Fits = (v) => v.every((value) => value === Math.round(value))
const within = (v: Float64Array, low: number, high: number): boolean =>
  v.every((value) => value >= low && value <= high)

/** True when every step is 0, +1 or back to the start: how calendars count. */
function counts(v: Float64Array, start: number): boolean {
  let odd = 0
  for (let i = 1; i < v.length; i += 1) {
    const step = v[i]! - v[i - 1]!
    if (step !== 0 && step !== 1 && v[i]! > start) odd += 1
  }
  return odd <= v.length * 0.03
}

function rises(v: Float64Array, strictly: boolean): boolean {
  let back = 0
  for (let i = 1; i < v.length; i += 1) if (strictly ? v[i]! <= v[i - 1]! : v[i]! < v[i - 1]!) back += 1
  return v.length > 2 && back <= v.length * 0.01
}

const ROLES: Readonly<
  Record<string, { readonly quantity: Quantity; readonly fits: Fits; readonly counts: Fits }>
> = {
  year: { quantity: 'year', fits: (v) => whole(v) && within(v, 1900, 2100), counts: (v) => changes(v) <= 12 },
  month: {
    quantity: 'month',
    fits: (v) => whole(v) && within(v, 1, 12),
    counts: (v) => counts(v, 1) && changes(v) <= 13,
  },
  day: { quantity: 'day', fits: (v) => whole(v) && within(v, 1, 31), counts: (v) => counts(v, 1) },
  hour: {
    quantity: 'hour',
    fits: (v) => within(v, 0, 24),
    counts: (v) => whole(v) && max(v) > 11 && counts(v, 1),
  },
  minute: {
    quantity: 'minute',
    fits: (v) => whole(v) && within(v, 0, 59),
    counts: (v) => max(v) > 9 && steady(v),
  },
  hhmm: {
    quantity: 'hour',
    fits: (v) => whole(v) && within(v, 0, 2400) && max(v) > 24 && v.every((x) => x % 100 < 60),
    counts: (v) => max(v) > 2200 && changes(v) > v.length / 2,
  },
  dayOfYear: {
    quantity: 'dayOfYear',
    fits: (v) => whole(v) && within(v, 1, 366),
    counts: (v) => counts(v, 1),
  },
  dayFraction: {
    quantity: 'dayOfYear',
    fits: (v) => within(v, 0, 367) && !whole(v),
    counts: (v) => rises(v, true),
  },
  hourOfYear: {
    quantity: 'hourOfYear',
    fits: (v) => within(v, 0, 8784) && max(v) > 24,
    counts: (v) => rises(v, true),
  },
  epoch: { quantity: 'epoch', fits: (v) => within(v, 1e8, 5e12), counts: (v) => rises(v, true) },
  stampNumber: { quantity: 'stampNumber', fits: isPackedDate, counts: (v) => rises(v, false) },
}

/** For each way a column can give time, the columns that could: those with the header for it, else those that count so. */
export function timeRoles(
  raw: RawTable,
  headers: readonly HeaderReading[],
): ReadonlyMap<string, readonly RoleColumn[]> {
  const roles = new Map<string, RoleColumn[]>()
  for (const [role, { quantity, fits, counts: behaves }] of Object.entries(ROLES)) {
    const fitting = raw.columns.flatMap((column): RoleColumn[] => {
      const values = column.values.subarray(0, LOOKED_AT)
      if (column.kind !== 'number' || values.length === 0 || !fits(values)) return []
      const named = headers[column.index]!.quantities.includes(quantity)
      return named || behaves(values) ? [{ column, named }] : []
    })
    const named = fitting.filter((one) => one.named)
    const kept = named.length > 0 ? named : fitting
    if (kept.length > 0) roles.set(role, kept.slice(0, KEPT))
  }
  return roles
}

/** Share of the steps between rows that equal the commonest step, when time is read from these columns; 0…1. */
export function regularity(raw: RawTable, columns: readonly TimeColumn[]): number {
  const rows = Math.min(raw.rows, LOOKED_AT)
  const few: RawTable = { ...raw, rows }
  const mapping = {
    ...{ version: 1 as const, layout: null, missing: [], site: {} },
    table: { separator: ',' as const, decimal: '.' as const, headerLine: null, firstDataLine: 1 },
    columns: columns.map((column) => ({ ...column, header: '', alternatives: [] })),
    time: { clockOffset_h: 0, stamp: 'beginning' as const, radiationOffset_h: null, shift_h: 0 },
  }
  const ms = rowMoments(few, mapping, undefined, new ProblemList(''))?.ms
  if (ms === undefined || rows < 2) return 0
  const steps = new Map<number, number>()
  for (let row = 1; row < rows; row += 1) {
    const step = Math.round((ms[row]! - ms[row - 1]!) / 30_000)
    if (step > 0) steps.set(step, (steps.get(step) ?? 0) + 1)
  }
  return Math.max(0, ...steps.values()) / (rows - 1)
}

function changes(v: Float64Array): number {
  let count = 0
  for (let i = 1; i < v.length; i += 1) if (v[i] !== v[i - 1]) count += 1
  return count
}

function max(v: Float64Array): number {
  return v.reduce((most, value) => Math.max(most, value), -Infinity)
}

/** Minutes go up by a fixed step and wrap. */
function steady(v: Float64Array): boolean {
  const steps = new Set<number>()
  for (let i = 1; i < v.length; i += 1) steps.add((((v[i]! - v[i - 1]!) % 60) + 60) % 60)
  return steps.size <= 3
}

function isPackedDate(v: Float64Array): boolean {
  return v.every((value) => {
    if (!(value >= 1.9e7 && value < 2.1e13) || value !== Math.round(value)) return false
    const text = String(value)
    const month = Number(text.slice(4, 6))
    const day = Number(text.slice(6, 8))
    return [8, 10, 12, 14].includes(text.length) && month >= 1 && month <= 12 && day >= 1 && day <= 31
  })
}
