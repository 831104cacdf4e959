import type { Separator, TableShape } from '../mapping.ts'
import { unitFromText } from '../column/unit.ts'
import { isData, isMissing } from './cell.ts'
import { isComment, splitLine } from './split.ts'

/** A table found in the first lines of a text. */
export interface FoundTable {
  readonly shape: TableShape
  /** One a column; empty strings where the file has no header. */
  readonly headers: readonly string[]
  /** From a line of units under the header; empty strings where there is none. */
  readonly units: readonly string[]
  readonly fields: number
}

interface Run {
  readonly first: number
  readonly length: number
  readonly fields: number
  readonly share: number
}

const SEPARATORS: readonly Separator[] = [';', '\t', '|', ',', 'blanks']
const DECIMALS = ['.', ','] as const

/**
 * Finds the table in the first lines of a file: the longest run of lines with the same number of fields that
 * are mostly numbers and stamps, and the header above it. Null when there is none.
 */
export function findTable(lines: readonly string[]): FoundTable | null {
  let best: { score: number; run: Run; separator: Separator; decimal: '.' | ',' } | null = null
  for (const separator of SEPARATORS) {
    const rows = lines.map((line) => (isComment(line) ? [''] : splitLine(line, separator)))
    for (const decimal of DECIMALS) {
      if (separator === ',' && decimal === ',') continue
      const run = longestRun(rows, decimal)
      if (run === null) continue
      const score = run.length * run.share ** 2 * Math.sqrt(run.fields)
      if (best === null || score > best.score * 1.001) best = { score, run, separator, decimal }
    }
  }
  if (best === null) return null
  const { run, separator, decimal } = best
  const header = findHeader(lines, run, separator, decimal)
  return {
    shape: { separator, decimal, headerLine: header.line, firstDataLine: run.first + 1 },
    headers: header.names,
    units: header.units,
    fields: run.fields,
  }
}

/** Share of the cells that say something which say a number or a stamp. */
function dataShare(cells: readonly string[], decimal: '.' | ','): number {
  let data = 0
  let said = 0
  for (const cell of cells) {
    if (isMissing(cell)) continue
    said += 1
    if (isData(cell, decimal)) data += 1
  }
  return said === 0 ? 0 : data / said
}

interface OpenRun {
  first: number
  last: number
  length: number
  shares: number
}
/** Lines that do not fit which a table may have in a row before it counts as ended. */
const ODD_LINES = 3

/** The longest run of data lines with one number of fields; a few odd lines inside do not end it, a header does. */
function longestRun(rows: readonly string[][], decimal: '.' | ','): Run | null {
  let best: (Run & { weight: number }) | null = null
  const open = new Map<number, OpenRun>()
  const close = (fields: number, run: OpenRun): void => {
    const weight = run.length * Math.sqrt(fields)
    if (best !== null && weight <= best.weight) return
    best = { first: run.first, length: run.length, fields, share: run.shares / run.length, weight }
  }
  rows.forEach((cells, at) => {
    const fields = cells.length
    if (fields < 2) return
    const run = open.get(fields)
    const share = dataShare(cells, decimal)
    if (share >= 0.5 && run !== undefined && at - run.last <= ODD_LINES + 1) {
      run.last = at
      run.length += 1
      run.shares += share
      return
    }
    if (run !== undefined) close(fields, run)
    open.delete(fields)
    if (share >= 0.5) open.set(fields, { first: at, last: at, length: 1, shares: share })
  })
  for (const [fields, run] of open) close(fields, run)
  return best
}

interface Header {
  readonly line: number | null
  readonly names: readonly string[]
  readonly units: readonly string[]
}

function findHeader(lines: readonly string[], run: Run, separator: Separator, decimal: '.' | ','): Header {
  const blank = Array.from({ length: run.fields }, () => '')
  let units: readonly string[] = blank
  let above = 0
  for (let at = run.first - 1; at >= 0 && above < 2; at -= 1) {
    const line = lines[at]!.replace(/^\s*(#+|!|%|\/\/)\s*/, '')
    if (line.trim() === '') continue
    const cells = trimEnd(splitLine(line, separator), run.fields)
    if (cells === null && isComment(lines[at]!)) continue
    above += 1
    if (cells === null || dataShare(cells, decimal) >= 0.5) break
    if (above === 1 && isUnitLine(cells)) {
      units = cells
      continue
    }
    return { line: at + 1, names: cells, units }
  }
  return { line: null, names: blank, units }
}

/** The cells at the number the data have, empty ones at the end dropped or added; null when they do not fit. */
function trimEnd(cells: readonly string[], fields: number): readonly string[] | null {
  const kept = [...cells]
  while (kept.length > fields && kept.at(-1) === '') kept.pop()
  if (kept.length === fields - 1 && fields > 3) kept.push('')
  return kept.length === fields ? kept : null
}

function isUnitLine(cells: readonly string[]): boolean {
  const said = cells.filter((cell) => cell !== '')
  const units = said.filter((cell) => unitFromText(cell.replace(/^[[(]|[\])]$/g, '')) !== null)
  return said.length > 1 && units.length >= said.length * 0.6
}
