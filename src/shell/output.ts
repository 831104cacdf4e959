import { writeFileSync } from 'node:fs'
import { stop } from '#model/basis/words'

export type Cell = number | string | boolean | null
/** A table by columns: name (with its unit) → values, all of one length. */
export type Table = Readonly<Record<string, ArrayLike<Cell>>>

export const FORMATS = ['csv', 'json'] as const
/** `html`: only where a subcommand makes a page to print. */
export type Format = (typeof FORMATS)[number] | 'html'

/** Six significant digits: more than any input deserves, few enough to read. */
const DIGITS = 6

function shown(value: Cell): string {
  if (value === null) return ''
  if (typeof value === 'number')
    return Number.isFinite(value) ? String(Number(value.toPrecision(DIGITS))) : ''
  return quoted(String(value))
}

/** Text cells are quoted where they must be, and never start as a spreadsheet formula would, wide signs included. */
function quoted(text: string): string {
  const safe = /^\s*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r\n]/.test(text) ? `'${text}` : text
  return /[",\n\r]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe
}

function toCsv(table: Table): string {
  const names = Object.keys(table)
  const rows = Math.max(0, ...names.map((name) => table[name]!.length))
  const lines = [names.map(quoted).join(',')]
  for (let i = 0; i < rows; i++) lines.push(names.map((name) => shown(table[name]![i] ?? null)).join(','))
  return `${lines.join('\n')}\n`
}

function toJson(table: Table, mark: Readonly<Record<string, Cell>>): string {
  const clean = (value: Cell): Cell =>
    typeof value === 'number' ? (Number.isFinite(value) ? Number(value.toPrecision(DIGITS)) : null) : value
  const columns = Object.entries(table).map(([name, values]) => [name, Array.from(values, clean)])
  return `${JSON.stringify({ ...Object.fromEntries(columns), ...mark }, null, 1)}\n`
}

/** What a subcommand found: a table by columns, one set of named values, or a text of its own (a file to start from). */
export type Body =
  | { readonly kind: 'table'; readonly table: Table }
  | { readonly kind: 'record'; readonly record: Readonly<Record<string, Cell | readonly Cell[]>> }
  | { readonly kind: 'text'; readonly text: string }

/** A subcommand's result, with the names of all invented data that it rests on (none: an empty list). */
export interface Result {
  readonly body: Body
  readonly invented: readonly string[]
}

/** The text of a result, marked where it rests on invented data: fields `invented` and `inventedData`. */
export function renderResult({ body, invented }: Result, format: Format): string {
  switch (body.kind) {
    case 'text':
      return body.text
    case 'table':
      return renderTable(body.table, invented, format)
    case 'record': {
      const mark = { invented: invented.length > 0, inventedData: invented.join('; ') || null }
      return renderRecord({ ...body.record, ...mark }, format)
    }
  }
}

/** CSV: two columns more in every row, so that a row cut out keeps its mark. JSON: two fields beside the columns. */
function renderTable(table: Table, invented: readonly string[], format: Format): string {
  const rows = Math.max(0, ...Object.values(table).map((column) => column.length))
  const name = invented.join('; ')
  if (format === 'csv') {
    const repeated = (value: Cell): Cell[] => new Array<Cell>(rows).fill(value)
    return toCsv({
      ...table,
      invented: repeated(invented.length > 0),
      inventedData: repeated(name === '' ? null : name),
    })
  }
  return toJson(table, { invented: invented.length > 0, inventedData: name === '' ? null : name })
}

/** Text of a result that is one set of named values: two columns in CSV, one object in JSON. */
function renderRecord(record: Readonly<Record<string, Cell | readonly Cell[]>>, format: Format): string {
  if (format === 'json') {
    const tidy = (value: Cell | readonly Cell[]): unknown =>
      Array.isArray(value)
        ? value.map(tidy)
        : typeof value === 'number' && !Number.isFinite(value)
          ? null
          : value
    return `${JSON.stringify(Object.fromEntries(Object.entries(record).map(([k, value]) => [k, tidy(value)])), null, 1)}\n`
  }
  const names = Object.keys(record)
  const cell = (value: Cell | readonly Cell[]): Cell =>
    Array.isArray(value) ? value.join('; ') : (value as Cell)
  return toCsv({ name: names, value: names.map((name) => cell(record[name]!)) })
}

/** Writes to a file, or to standard output when none is named. @throws ProblemError when the file can't be written */
export function emit(text: string, out: string | undefined): void {
  if (out === undefined) {
    process.stdout.write(text)
    return
  }
  try {
    writeFileSync(out, text)
  } catch (error) {
    throw stop(
      'cannot-write',
      `The result could not be written (${(error as Error).message}).`,
      'Choose another --out file.',
      { file: out },
    )
  }
}

/** Progress and notes go to standard error, so that results can be piped. */
export function note(text: string): void {
  process.stderr.write(`${text}\n`)
}
