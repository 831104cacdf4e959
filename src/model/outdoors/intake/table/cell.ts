/** What the cells of a table say: numbers, stamps, nothing, or text. */

const MISSING_WORDS = new Set([
  '',
  'na',
  'n/a',
  'nan',
  'null',
  'none',
  'nil',
  '-',
  '--',
  '---',
  '*',
  '.',
  'm',
  'x',
  '?',
  'missing',
  '-nan',
  '/',
  '//',
  '///',
  '////',
  '-/-',
  'trace',
  'nan.0',
])
const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)([eEdD][+-]?\d+)?$/

/** True for the ways files write "no value". */
export function isMissing(cell: string): boolean {
  return cell.length < 8 && MISSING_WORDS.has(cell.toLowerCase())
}

/** The number a trimmed cell holds, NaN when it is none. A decimal comma is read when asked for. */
export function cellNumber(cell: string, decimal: '.' | ','): number {
  if (cell === '') return NaN
  const text = decimal === ',' ? cell.replace(',', '.') : cell
  const value = Number(text)
  if (value === value) return isPrefixed(text) || Math.abs(value) === Infinity ? NaN : value
  return NUMBER.test(text) ? Number(text.replace(/[dD]/, 'e')) : NaN
}

/** True for 0x1f and its like, which are numbers to a programmer only. */
function isPrefixed(text: string): boolean {
  return text.length > 2 && text.charCodeAt(1) > 57 && /^0[xob]/i.test(text)
}

/** A moment as written: date parts in file order (day and month not yet separated) and milliseconds of day. */
export interface ClockCell {
  /** y·10000 + p·100 + q for year y and the two other parts p, q in file order; NaN when there is no date. */
  readonly date: number
  /** Milliseconds after midnight, zone suffix taken off; NaN when there is no time. */
  readonly ofDay_ms: number
  /** p, q order: `known` when the month is surely p. */
  readonly monthFirst: boolean
  /** True when the cell carries its own zone, so that the moment is UTC. */
  readonly zoned: boolean
}

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec']
const TIME = String.raw`(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,](\d+))?)?\s*([ap]\.?(?:m\.?)?)?\s*(z|utc|gmt|[+-]\d{2}:?\d{2})?`
const ISO = new RegExp(String.raw`^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[t\s:_]+${TIME})?$`, 'i')
const DAY_OR_MONTH_FIRST = new RegExp(
  String.raw`^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4}|\d{2})(?:[t\s,]+${TIME})?$`,
  'i',
)
const NAMED = new RegExp(
  String.raw`^(\d{1,2})[-/.\s]([a-z]{3})[a-z]*[-/.\s](\d{4}|\d{2})(?:[t\s,]+${TIME})?$`,
  'i',
)
const ONLY_TIME = new RegExp(`^${TIME}$`, 'i')
const PACKED = /^(\d{4})(\d{2})(\d{2})[:t\s_-](\d{2}):?(\d{2})(?::?(\d{2}))?(z)?$/i
const DAY_MS = 86_400_000

/** Reads a stamp such as 2018-01-31T14:30Z, 31.01.2018 14:30, 01/31/2018, 14:30, 20180131:1430; null when it is none. */
export function cellClock(cell: string): ClockCell | null {
  if (cell.length < 4 || cell.length > 40) return null
  return plainClock(HALF_DAY.test(cell) ? latinHalfDay(cell) : cell)
}

/** Halves of the day as some languages write them, and an hour of them without minutes. */
const HALF_DAY = /[aApP]\.?\s?[mM]|오[전후]|[上下]午|午[前後]/

/** `오후 3:20`, `下午3:20`, `3 p. m.` as `3:20 pm`. */
function latinHalfDay(cell: string): string {
  return cell
    .replace(/(오전|上午|午前)\s*(\d{1,2}(?::\d{2}){0,2})/, '$2 am')
    .replace(/(오후|下午|午後)\s*(\d{1,2}(?::\d{2}){0,2})/, '$2 pm')
    .replace(/([ap])\.?\s?m\.?$/i, '$1m')
    .replace(/(^|[\sT,])(\d{1,2})\s*([ap]m)$/i, '$1$2:00 $3')
}

function plainClock(cell: string): ClockCell | null {
  let m: RegExpExecArray | null
  if ((m = PACKED.exec(cell))) {
    const ofDay = ((Number(m[4]) * 60 + Number(m[5])) * 60 + Number(m[6] ?? 0)) * 1000
    return clock(pack(m[1]!, m[2]!, m[3]!), ofDay, true, m[7] !== undefined)
  }
  if ((m = ONLY_TIME.exec(cell))) return timed(NaN, false, m.slice(1))
  if ((m = ISO.exec(cell))) return timed(pack(m[1]!, m[2]!, m[3]!), true, m.slice(4))
  if ((m = DAY_OR_MONTH_FIRST.exec(cell))) return timed(pack(m[3]!, m[1]!, m[2]!), false, m.slice(4))
  if ((m = NAMED.exec(cell))) {
    const month = MONTHS.indexOf(m[2]!.toLowerCase()) + 1
    return month === 0 ? null : timed(pack(m[3]!, String(month), m[1]!), true, m.slice(4))
  }
  return null
}

function pack(year: string, p: string, q: string): number {
  const y = Number(year)
  return (year.length === 2 ? 2000 + y - (y > 60 ? 100 : 0) : y) * 10_000 + Number(p) * 100 + Number(q)
}

function timed(date: number, monthFirst: boolean, parts: readonly (string | undefined)[]): ClockCell | null {
  const [hour, minute, second, , half, zone] = parts
  if (hour === undefined) return clock(date, NaN, monthFirst, false)
  let h = Number(hour)
  const m = Number(minute)
  const s = Number(second ?? 0)
  if (half !== undefined) h = (h % 12) + (half[0]!.toLowerCase() === 'p' ? 12 : 0)
  if (h > 24 || m > 59 || s > 60 || (h === 24 && m + s > 0)) return null
  return clock(date, ((h * 60 + m) * 60 + s) * 1000 - zone_ms(zone), monthFirst, zone !== undefined)
}

function zone_ms(zone: string | undefined): number {
  const m = zone === undefined ? null : /^([+-])(\d{2}):?(\d{2})$/.exec(zone)
  return m ? (m[1] === '-' ? -1 : 1) * (Number(m[2]) * 60 + Number(m[3])) * 60_000 : 0
}

function clock(date: number, ofDay_ms: number, monthFirst: boolean, zoned: boolean): ClockCell | null {
  const p = Math.floor(date / 100) % 100
  const q = date % 100
  if (date === date && (p < 1 || q < 1 || p > 31 || q > 31 || (p > 12 && q > 12))) return null
  return ofDay_ms > DAY_MS * 2 ? null : { date, ofDay_ms, monthFirst, zoned }
}

/** True when the cell looks like part of a data row: a number, a stamp or "no value". */
export function isData(cell: string, decimal: '.' | ','): boolean {
  return isMissing(cell) || !Number.isNaN(cellNumber(cell, decimal)) || cellClock(cell) !== null
}
