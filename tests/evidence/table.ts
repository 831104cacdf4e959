import { readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { Kind, Theme } from './check.ts'
import { COMMON_PRACTICE, type SourceKey } from './sources.ts'

/** One line of the table that the app shows under "How far to trust it". */
export interface Row {
  readonly theme: Theme
  readonly quantity: string
  readonly unit: string
  readonly kind: Kind
  readonly ours: number | null
  readonly theirs: number | readonly [number, number]
  readonly within: number
  readonly because: string
  readonly source: SourceKey
  readonly cite: string
  readonly where: string
  readonly fromMemory: boolean
  readonly status: 'agrees' | 'misses' | 'not run'
  /** Why it misses, as far as we know. */
  readonly cause: string
  /** Open-data file it was measured against, and the day that was last done. */
  readonly data: string
  readonly measuredOn: string | null
}

export interface Totals {
  readonly checks: number
  readonly sources: number
  readonly misses: number
}

const JSON_TABLE = fileURLToPath(new URL('../../src/ui/trust/evidence.json', import.meta.url))
const READABLE_TABLE = fileURLToPath(new URL('./TABLE.md', import.meta.url))

export function readTable(): Row[] {
  try {
    return JSON.parse(readFileSync(JSON_TABLE, 'utf8')) as Row[]
  } catch {
    return []
  }
}

/** Writes what the app shows and the same thing for reading in the repository. */
export function writeTable(rows: readonly Row[]): void {
  writeFileSync(JSON_TABLE, `${JSON.stringify(rows, null, 1)}\n`)
  writeFileSync(READABLE_TABLE, readableTable(rows))
}

export function readReadableTable(): string {
  return readFileSync(READABLE_TABLE, 'utf8')
}

/** Checks, sources (common practice is none) and misses. */
export function totals(rows: readonly Row[]): Totals {
  return {
    checks: rows.length,
    sources: new Set(rows.filter((row) => row.source !== COMMON_PRACTICE).map((row) => row.source)).size,
    misses: rows.filter((row) => row.status !== 'agrees').length,
  }
}

export function closingLine(rows: readonly Row[]): string {
  const { checks, sources, misses } = totals(rows)
  return `${checks} checks, ${sources} sources, ${misses} misses`
}

/** The outside value with its tolerance, e.g. `0.937 ± 0.0005` or `40 … 60`. */
export function expected(row: Pick<Row, 'theirs' | 'within'>): string {
  if (typeof row.theirs !== 'number') {
    return `${tidy(row.theirs[0] - row.within)} … ${tidy(row.theirs[1] + row.within)}`
  }
  return `${row.theirs} ± ${row.within}`
}

const tidy = (value: number): number => Number(value.toPrecision(9))

export function readableTable(rows: readonly Row[]): string {
  const head = [
    '# Checks against the outside',
    '',
    'Written by `npm run -s evidence`; do not edit. Every value under “ours” was computed by the project’s code.',
    '',
    closingLine(rows),
  ]
  const themes = [...new Set(rows.map((row) => row.theme))]
  return `${[...head, ...themes.flatMap((theme) => themeLines(theme, rows))].join('\n')}\n`
}

function themeLines(theme: Theme, rows: readonly Row[]): string[] {
  const lines = rows
    .filter((row) => row.theme === theme)
    .map((row) =>
      [
        row.quantity,
        row.ours ?? 'not run',
        `${expected(row)} ${row.unit}`,
        verdict(row),
        row.kind,
        citation(row),
        row.because,
      ]
        .map((cell) => String(cell).replaceAll('|', '\\|'))
        .join(' | '),
    )
  const title = ['', `## ${theme}`, '', '| quantity | ours | theirs | | kind | source | why that close |']
  return [...title, '| --- | --- | --- | --- | --- | --- | --- |', ...lines.map((line) => `| ${line} |`)]
}

function verdict(row: Row): string {
  const old = row.measuredOn === null ? '' : `, with the data on ${row.measuredOn}`
  if (row.status === 'misses') return `**misses**: ${row.cause}${old}`
  return `${row.status}${old}`
}

export function citation(row: Pick<Row, 'cite' | 'where' | 'fromMemory'>): string {
  return [row.cite, row.where, row.fromMemory ? 'from memory' : ''].filter((part) => part !== '').join('; ')
}
