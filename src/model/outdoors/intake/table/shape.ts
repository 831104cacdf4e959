import type { Separator, TableShape } from '../mapping.ts'
import { findHeader } from './header-rows.ts'
import { dataShare } from './data-share.ts'
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

/** A number whose decimal comma is between quotation marks. */
const QUOTED_COMMA = /"[-+]?\d+,\d+"/

/** Blanks cut a stamp of date and time in two: any mark that gives a table too is likelier. */
const BLANKS = 0.7

/**
 * Finds the table in the first lines of a file: the longest run of lines with the same number of fields that
 * are mostly numbers and stamps, and the header above it. Null when there is none.
 */
export function findTable(lines: readonly string[]): FoundTable | null {
  const quoted = lines.some((line) => QUOTED_COMMA.test(line))
  let best: { score: number; run: Run; separator: Separator; decimal: '.' | ',' } | null = null
  for (const separator of SEPARATORS) {
    const rows = lines.map((line) => (isComment(line) ? [''] : splitLine(line, separator)))
    for (const decimal of DECIMALS) {
      if (separator === ',' && decimal === ',' && !quoted) continue
      const run = longestRun(rows, decimal)
      if (run === null) continue
      const score =
        run.length * run.share ** 2 * Math.sqrt(run.fields) * (separator === 'blanks' ? BLANKS : 1)
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
