import Papa from 'papaparse/papaparse.js'
import { stop } from '#model/basis/words'

type Json = null | boolean | number | string | Json[] | { readonly [key: string]: Json }
type Fields = { readonly [key: string]: Json }
type Cell = string | number

interface Found {
  readonly headers: readonly string[]
  readonly units: readonly string[]
  readonly rows: readonly (readonly Cell[])[]
}

/** Fewer than so many rows are no table. */
const FEWEST_ROWS = 2
/** How deep tables are looked for. */
const DEPTH = 4

export const isJson = (text: string): boolean => /^\ufeff?\s*[[{]/.test(text)

/**
 * The largest table of a JSON text as lines of CSV, under the plain values that are beside it (place, clock): columns of
 * equal length by name, rows as objects, or rows as lists under a list of names.
 * @throws ProblemError where the text is no JSON or holds no table
 */
export function tableOfJson(text: string, file: string): string {
  let json: Json
  try {
    json = JSON.parse(text.replace(/^\ufeff/, '')) as Json
  } catch (error) {
    throw stop(
      'weather-json-broken',
      `The file begins like JSON and can't be read as such (${(error as Error).message}).`,
      'Fetch it again, or save the table as CSV.',
      { file },
    )
  }
  const found = tables(json, DEPTH).toSorted((a, b) => b.rows.length - a.rows.length)[0]
  if (found === undefined) {
    throw stop(
      'weather-no-table',
      'The JSON holds no table: neither columns of equal length, nor a list of rows.',
      'Save the hourly values as columns or as CSV.',
      { file },
    )
  }
  const beside = isFields(json) ? Object.entries(json).filter(([, value]) => isCell(value)) : []
  const { headers, units, rows } = found
  const lines = [
    ...(beside.length === 0 ? [] : [beside.map(([name]) => name), beside.map(([, value]) => value), ['']]),
    headers,
    ...(units.some((unit) => unit !== '') ? [units] : []),
    ...rows,
  ]
  return Papa.unparse(lines as Cell[][], { newline: '\n' })
}

const isFields = (json: Json | undefined): json is Fields =>
  typeof json === 'object' && json !== null && !Array.isArray(json)
const isCell = (json: Json | undefined): json is Cell => typeof json === 'string' || typeof json === 'number'
const cell = (json: Json | undefined): Cell => (isCell(json) ? json : '')

/** Every table in a value, down to a depth. */
function tables(json: Json, depth: number): Found[] {
  if (depth === 0) return []
  if (Array.isArray(json)) {
    if (json.length >= FEWEST_ROWS && json.every(isFields)) return [rowsAsObjects(json)]
    return json.slice(0, 20).flatMap((one) => tables(one, depth - 1))
  }
  if (!isFields(json)) return []
  const own = columnsByName(json, {}) ?? rowsAsLists(json)
  const inside = Object.entries(json).flatMap(([name, value]) => {
    const units = json[`${name}_units`]
    const columns = isFields(value) ? columnsByName(value, isFields(units) ? units : {}) : null
    return columns === null ? tables(value, depth - 1) : [columns]
  })
  return own === null ? inside : [own, ...inside]
}

/** `{ time: […], temperature: […] }`, with the units of an object beside it. */
function columnsByName(json: Fields, units: Fields): Found | null {
  const columns = Object.entries(json).filter((entry): entry is [string, Json[]] => {
    const [, value] = entry
    return (
      Array.isArray(value) && value.length >= FEWEST_ROWS && value.every((one) => one === null || isCell(one))
    )
  })
  const length = Math.max(0, ...columns.map(([, values]) => values.length))
  const whole = columns.filter(([, values]) => values.length === length)
  if (whole.length < 2) return null
  return {
    headers: whole.map(([name]) => name),
    units: whole.map(([name]) => String(cell(units[name]))),
    rows: Array.from({ length }, (_, row) => whole.map(([, values]) => cell(values[row]))),
  }
}

/** `[{ time, temperature }, …]`; a value with its unit, `{ value, unit }`, is one column. */
function rowsAsObjects(rows: readonly Fields[]): Found {
  const first = flat(rows[0]!)
  const headers = [...first.keys()]
  const found = rows.map((row) => {
    const fields = flat(row)
    return headers.map((name) => fields.get(name)?.value ?? '')
  })
  return { headers, units: headers.map((name) => first.get(name)!.unit), rows: found }
}

/** The plain values of a row by their path. */
function flat(row: Fields, path = ''): Map<string, { readonly value: Cell; readonly unit: string }> {
  const all = new Map<string, { readonly value: Cell; readonly unit: string }>()
  for (const [key, value] of Object.entries(row)) {
    const name = path === '' ? key : `${path} ${key}`
    if (!isFields(value)) all.set(name, { value: cell(value), unit: '' })
    else if ('value' in value)
      all.set(name, { value: cell(value['value']), unit: String(cell(value['unit'] ?? value['units'])) })
    else for (const [inner, entry] of flat(value, name)) all.set(inner, entry)
  }
  return all
}

const NAMES = ['columns', 'fields', 'headers', 'names'] as const

/** `{ columns: ["time", …], data: [[…], …] }`; a name may be an object with `name` and `unit`. */
function rowsAsLists(json: Fields): Found | null {
  const names = NAMES.map((key) => json[key]).find(Array.isArray)
  if (names === undefined) return null
  const lists = Object.values(json).find(
    (value): value is Json[][] =>
      Array.isArray(value) && value.length >= FEWEST_ROWS && value.every((row) => Array.isArray(row)),
  )
  if (lists === undefined) return null
  const named = (one: Json, key: string): string => (isFields(one) ? String(cell(one[key])) : '')
  return {
    headers: names.map((one) => (isCell(one) ? String(one) : named(one, 'name') || named(one, 'id'))),
    units: names.map((one) => named(one, 'unit') || named(one, 'units')),
    rows: lists.map((row) => names.map((_, at) => cell(row[at]))),
  }
}
