import type { Separator } from '../mapping.ts'
import { unitFromText } from '../column/unit.ts'
import { dataShare } from './data-share.ts'
import { isComment, splitLine } from './split.ts'

/** Names and units of the columns, and the line of the names. */
export interface Header {
  readonly line: number | null
  readonly names: readonly string[]
  readonly units: readonly string[]
}

interface Run {
  readonly first: number
  readonly fields: number
}

/** Rows above the data that are looked at. */
const MOST_ROWS = 6
const PROCESS =
  /^(avg|average|mean|smp|sample|inst|instantaneous|tot|total|sum|min|minimum|max|maximum|std|stdev|sd|med|wvc)$/i
/** What a column holds that is not the quantity itself: the name must carry it. */
const SPREAD = /^(min|minimum|max|maximum|std|stdev|sd)$/i
/** Cells of a line of units that are no unit of the weather. */
const NO_UNIT =
  /^(ts|rn|volts?|v|mm|mm\/h|in|inch(es)?|unitless|none|n\/a|-|code|yyyy.*|hh:?mm.*|m|cm|ppm|umol.*|mol.*|kg.*|g\/.*)$/i

/**
 * The header above a table: a line of names, or two that belong together ("Temp" over "Out"), with lines of units and of
 * what was done ("Avg", "Max") under it in any order.
 */
export function findHeader(
  lines: readonly string[],
  run: Run,
  separator: Separator,
  decimal: '.' | ',',
): Header {
  const blank = Array.from({ length: run.fields }, () => '')
  let units: readonly string[] = blank
  let process: readonly string[] = blank
  let names: { readonly line: number; readonly cells: readonly string[] } | null = null
  let above = 0
  for (let at = run.first - 1; at >= 0 && above < MOST_ROWS; at -= 1) {
    const line = lines[at]!.replace(/^ *(#+|!|%(?![\t,;|])|\/\/) */, '')
    if (line.trim() === '') continue
    const cells = trimEnd(splitLine(line, separator), run.fields)
    if (cells === null && isComment(lines[at]!)) continue
    above += 1
    if (cells === null || dataShare(cells, decimal) >= 0.5) break
    if (names !== null) {
      if (belongsOver(cells, names.cells) && units === blank)
        names = { line: names.line, cells: names.cells.map((cell, i) => `${cells[i]!} ${cell}`.trim()) }
      break
    }
    if (process === blank && isProcessLine(cells)) process = cells
    else if (units === blank && isUnitLine(cells)) units = cells
    else names = { line: at + 1, cells }
  }
  if (names === null) return { line: null, names: blank, units }
  const named = names.cells.map((cell, i) => (SPREAD.test(process[i]!) ? `${cell} ${process[i]!}` : cell))
  return { line: names.line, names: named, units }
}

/** A line with gaps over a fuller one: the first words of its names. */
function belongsOver(upper: readonly string[], lower: readonly string[]): boolean {
  const filled = (cells: readonly string[]): number => cells.filter((cell) => cell !== '').length
  return (
    filled(upper) < filled(lower) &&
    filled(upper) >= 2 &&
    upper.every((cell, i) => cell === '' || lower[i] !== '') &&
    upper.every((cell) => !/[:=]/.test(cell))
  )
}

/** The cells at the number the data have, empty ones at the end dropped or added; null when they do not fit. */
function trimEnd(cells: readonly string[], fields: number): readonly string[] | null {
  const kept = [...cells]
  while (kept.length > fields && kept.at(-1) === '') kept.pop()
  if (kept.length === fields - 1 && fields > 3) kept.push('')
  return kept.length === fields ? kept : null
}

function isUnitLine(cells: readonly string[]): boolean {
  const said = cells.map((cell) => cell.replace(/^[[(]|[\])]$/g, '')).filter((cell) => cell !== '')
  const units = said.filter((cell) => unitFromText(cell) !== null)
  const others = said.filter((cell) => unitFromText(cell) === null && NO_UNIT.test(cell))
  return said.length > 1 && units.length >= 1 && units.length + others.length >= said.length * 0.6
}

function isProcessLine(cells: readonly string[]): boolean {
  const said = cells.filter((cell) => cell !== '')
  return said.length > 1 && said.filter((cell) => PROCESS.test(cell)).length >= said.length * 0.6
}
