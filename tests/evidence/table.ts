import { readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import {
  areaErrors,
  citation,
  expected,
  figure,
  KIND_WORDS,
  kindCounts,
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

/** Kinds with their counts, then the bias of every part that was measured. */
export function summaryLines(rows: readonly EvidenceRow[]): string[] {
  return [
    ...kindCounts(rows).map(
      ({ kind, rows: count, misses }) => `${KIND_WORDS[kind]}: ${count} rows, ${misses} misses`,
    ),
    ...areaErrors(rows).map(
      ({ theme, unit, bias, rmse, n }) =>
        `${theme}: bias ${figure(bias, 3)} ${unit}, RMSE ${figure(rmse, 3)} ${unit}, n = ${n}`,
    ),
  ]
}

export function readableTable(table: EvidenceTable): string {
  const head = [
    '# Checks against the outside',
    '',
    'Written by `npm run -s evidence`; do not edit. Every value under “ours” was computed by the project’s code.',
    '',
    closingLine(table.rows),
    '',
    ...summaryLines(table.rows).map((line) => `- ${line}`),
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
        kindWords(row),
        citation(row, sources),
        [row.because, row.choice].filter((text) => text !== '').join('; choice: '),
      ]
        .map((cell) => cell.replaceAll('|', '\\|'))
        .join(' | '),
    )
  const title = ['', `## ${theme}`, '', '| quantity | ours | theirs | | kind | source | why that close |']
  return [...title, '| --- | --- | --- | --- | --- | --- | --- |', ...lines.map((line) => `| ${line} |`)]
}

function kindWords({ evidence, kind }: EvidenceRow): string {
  return `${evidence}: ${kind}`
}

function verdict(row: EvidenceRow): string {
  const old = row.measuredOn === null ? '' : `, with the data on ${row.measuredOn}`
  if (row.status === 'misses') return `**misses**: ${row.cause}${old}`
  return `${row.status}${old}`
}
