import { columnConversion } from './column/column-conversion.ts'
import { givesTime } from './column/quantity.ts'
import type { ColumnMapping, TableMapping } from './mapping.ts'
import { cellNumber } from './table/cell.ts'
import { isComment, plainLines, splitLine } from './table/split.ts'

/** One column of the first rows: as printed, and as it is read with the mapping in force. */
export interface PreviewColumn {
  readonly column: ColumnMapping
  readonly printed: readonly string[]
  /** In our unit (°C, %, Pa, m/s, W/m², fraction); NaN for missing; null for columns of time and unused ones. */
  readonly inside: readonly number[] | null
}

/**
 * The first rows of a file under a mapping, for a screen on which every column and unit can be corrected.
 * @param head the beginning of the file, at least its first data rows
 * @param step_h length of the period a row covers, h
 */
export function previewRows(head: string, mapping: TableMapping, rows = 8, step_h = 1): PreviewColumn[] {
  const { separator, decimal, firstDataLine } = mapping.table
  const cells = plainLines(head)
    .split('\n', firstDataLine + rows * 3)
    .slice(firstDataLine - 1)
    .filter((line) => line.trim() !== '' && !isComment(line))
    .slice(0, rows)
    .map((line) => splitLine(line, separator))
  return mapping.columns.map((column) => {
    const printed = cells.map((row) => row[column.index] ?? '')
    if (column.quantity === 'ignore' || givesTime(column.quantity)) return { column, printed, inside: null }
    const convert = columnConversion(column, step_h)
    const inside = printed.map((cell) => {
      const value = cellNumber(cell, decimal)
      return mapping.missing.includes(value) ? NaN : convert(value)
    })
    return { column, printed, inside }
  })
}
