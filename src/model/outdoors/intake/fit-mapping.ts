import type { TableMapping } from './mapping.ts'
import type { ProblemList } from './problems.ts'

/**
 * A remembered mapping laid on a file: columns are found by their headers, else by their place. What the file itself
 * says of its place and clock wins over what was remembered from another file.
 * @param own what the file was taken for without the mapping
 */
export function fitMapping(remembered: TableMapping, own: TableMapping, problems: ProblemList): TableMapping {
  if (remembered === own) return own
  const byHeader = new Map(own.columns.map(({ header, index }) => [header, index]))
  const meant = new Map(
    remembered.columns.map((column) => [byHeader.get(column.header) ?? column.index, column] as const),
  )
  for (const [index, { header, quantity }] of meant) {
    if (quantity === 'ignore' || index < own.columns.length) continue
    problems.error(
      'weather-mapping-unfit',
      `The mapping names a column "${header}" for ${quantity}, but the table has only ${own.columns.length} columns.`,
      'Use the mapping that belongs to this file, or none.',
      { line: own.table.firstDataLine, column: header },
    )
  }
  return {
    ...remembered,
    table: own.table,
    columns: own.columns.map(({ index, header, alternatives }) => {
      const column = meant.get(index)
      if (column !== undefined) return { ...column, index, header, alternatives }
      return { index, header, quantity: 'ignore', unit: '', confidence: 1, basis: 'user', alternatives }
    }),
    missing: [...new Set([...remembered.missing, ...own.missing])],
    time: { ...remembered.time, clockOffset_h: own.time.clockOffset_h ?? remembered.time.clockOffset_h },
    site: { ...remembered.site, ...own.site },
  }
}
