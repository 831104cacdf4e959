import { givesTime, type Quantity, type Unit } from './quantity.ts'
import type { HeaderReading } from './header-guess.ts'
import type { TimeColumn } from './time-column.ts'
import { regularity, timeRoles } from './time-roles.ts'
import type { RawColumn, RawTable } from '../table/raw.ts'

/** Ways a file can say when, the fullest first; the parts of each that may be left out carry a question mark. */
const WAYS: readonly (readonly string[])[] = [
  ['year?', 'month', 'day', 'hour', 'minute?'],
  ['year?', 'dayOfYear', 'hour', 'minute?'],
  ['year?', 'month', 'day', 'hhmm'],
  ['year?', 'dayOfYear', 'hhmm'],
  ['stampNumber', 'hour?'],
  ['epoch'],
  ['year?', 'dayFraction'],
  ['year?', 'hourOfYear'],
]
/** Share of equal steps at which a way to read the time is believed without a header. */
const BELIEVED = 0.75

/** Finds the columns that say when a row was: by stamps, then by headers, then by how the numbers count up. */
export function findTimeColumns(raw: RawTable, headers: readonly HeaderReading[]): TimeColumn[] {
  const clocks = clockColumns(raw, headers)
  if (clocks.some(({ quantity }) => quantity === 'dateTime')) return clocks
  if (clocks.some(({ quantity }) => quantity === 'date') && clocks.length > 1) return clocks
  const roles = timeRoles(raw, headers)
  if (clocks.length > 0 && clocks[0]!.quantity === 'date') {
    const hour = roles.get('hour')?.[0] ?? roles.get('hhmm')?.[0]
    return hour === undefined
      ? clocks
      : [...clocks, part(hour.column, roles.get('hour') ? 'hour' : 'hhmm', 0.8, hour.named)]
  }
  return bestWay(raw, roles)
}

function clockColumns(raw: RawTable, headers: readonly HeaderReading[]): TimeColumn[] {
  const found: TimeColumn[] = []
  for (const column of raw.columns) {
    if (column.kind !== 'clock') continue
    const dated = column.values.some((date) => date === date)
    const timed =
      column.ofDay_ms!.some((ms) => ms === ms && ms !== 0) ||
      (!dated && column.ofDay_ms!.some((ms) => ms === ms))
    const quantity = dated ? (timed ? 'dateTime' : 'date') : 'timeOfDay'
    if (found.some((other) => other.quantity === quantity)) continue
    const named = headers[column.index]!.quantities.some(givesTime)
    found.push({
      index: column.index,
      quantity,
      unit: 'stamp',
      confidence: 0.95,
      basis: named ? 'header' : 'physics',
    })
  }
  return found
}

type Roles = ReturnType<typeof timeRoles>
type Choice = { readonly column: RawColumn; readonly named: boolean } | null

function bestWay(raw: RawTable, roles: Roles): TimeColumn[] {
  let best: { score: number; columns: TimeColumn[] } | null = null
  WAYS.forEach((way, rank) => {
    for (const choice of choices(way, roles)) {
      const named = choice.filter((one) => one !== null).every((one) => one.named)
      const columns = way.flatMap((role, i) =>
        choice[i] ? [part(choice[i].column, role.replace('?', ''), 0, choice[i].named)] : [],
      )
      if (new Set(columns.map(({ index }) => index)).size < columns.length) continue
      const regular = regularity(raw, columns)
      if (regular < BELIEVED && !(named && regular > 0.02)) continue
      const score = Math.round(regular * 50) / 50 + (named ? 1 : 0) + columns.length * 0.001 - rank * 0.0001
      if (best === null || score > best.score) {
        best = {
          score,
          columns: columns.map((column) => ({ ...column, confidence: Math.min(0.95, regular) })),
        }
      }
    }
  })
  return (best as { columns: TimeColumn[] } | null)?.columns ?? []
}

function choices(way: readonly string[], roles: Roles): Choice[][] {
  let all: Choice[][] = [[]]
  for (const role of way) {
    const found: Choice[] = [...(roles.get(role.replace('?', '')) ?? [])]
    if (role.endsWith('?')) found.push(null)
    all = all.flatMap((head) => found.map((one) => [...head, one]))
    if (all.length > 3000) all = all.slice(0, 3000)
  }
  return all
}

function part(column: RawColumn, role: string, confidence: number, named: boolean): TimeColumn {
  const quantity = role === 'hhmm' ? 'hour' : role === 'dayFraction' ? 'dayOfYear' : (role as Quantity)
  const unit: Unit =
    role === 'hhmm' ? 'hhmm' : role === 'epoch' ? (column.values[0]! > 1e11 ? 'ms' : 's') : 'count'
  return { index: column.index, quantity, unit, confidence, basis: named ? 'header' : 'physics' }
}
