import { readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import {
  citation,
  expected,
  figure,
  themes,
  totals,
  type EvidenceRow,
  type EvidenceTable,
} from '#ui/trust/evidence-row.ts'
import { SOURCES, type SourceKey } from './sources.ts'

const JSON_TABLE = fileURLToPath(new URL('../../src/ui/trust/evidence.json', import.meta.url))
const READABLE_TABLE = fileURLToPath(new URL('./TABLE.md', import.meta.url))

/** Rows with the sources they name. */
export function tableOf(rows: readonly EvidenceRow[]): EvidenceTable {
  const used = new Set(rows.map((row) => row.source))
  const named = Object.entries(SOURCES).filter(([key]) => used.has(key as SourceKey))
  return { sources: Object.fromEntries(named), rows }
}

export function readTable(): EvidenceTable {
  try {
    return JSON.parse(readFileSync(JSON_TABLE, 'utf8')) as EvidenceTable
  } catch {
    return { sources: {}, rows: [] }
  }
}

/** Writes what the app shows and the same thing for reading in the repository. */
export function writeTable(table: EvidenceTable): void {
  writeFileSync(JSON_TABLE, `${JSON.stringify(table, null, 1)}\n`)
  writeFileSync(READABLE_TABLE, readableTable(table))
}

export function readReadableTable(): string {
  return readFileSync(READABLE_TABLE, 'utf8')
}

export function closingLine(rows: readonly EvidenceRow[]): string {
  const { checks, sources, misses } = totals(rows)
  return `${checks} checks, ${sources} sources, ${misses} misses`
}

export function readableTable(table: EvidenceTable): string {
  const head = [
    '# Checks against the outside',
    '',
    'Written by `npm run -s evidence`; do not edit. Every value under “ours” was computed by the project’s code.',
    '',
    closingLine(table.rows),
  ]
  return `${[...head, ...themes(table.rows).flatMap((theme) => themeLines(theme, table))].join('\n')}\n`
}

function themeLines(theme: string, { rows, sources }: EvidenceTable): string[] {
  const lines = rows
    .filter((row) => row.theme === theme)
    .map((row) =>
      [
        row.quantity,
        row.ours === null ? 'not run' : figure(row.ours),
        `${expected(row)} ${row.unit}`,
        verdict(row),
        row.kind,
        citation(row, sources),
        row.because,
      ]
        .map((cell) => cell.replaceAll('|', '\\|'))
        .join(' | '),
    )
  const title = ['', `## ${theme}`, '', '| quantity | ours | theirs | | kind | source | why that close |']
  return [...title, '| --- | --- | --- | --- | --- | --- | --- |', ...lines.map((line) => `| ${line} |`)]
}

function verdict(row: EvidenceRow): string {
  const old = row.measuredOn === null ? '' : `, with the data on ${row.measuredOn}`
  if (row.status === 'misses') return `**misses**: ${row.cause}${old}`
  return `${row.status}${old}`
}
