import { stop } from '#model/basis/words'
import { MONTH_COLUMNS, type MonthColumn, type OwnMonth } from './own-months.ts'

const MONTHS = 12
const NAMES = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ')

/**
 * A table of months as `duskbank place` prints it: a header line with `month` and any of the columns airTemp_C, dailyRange_K,
 * humidity_frac, sunshine_frac, wind_ms; one line a month, by name or number; commas, semicolons or tabs between. An empty cell
 * leaves the held value.
 * @throws ProblemError naming file, line and column
 */
export function readMonthsTable(text: string, file: string): OwnMonth[] {
  const lines = text
    .replace(/^\uFEFF/, '')
    .split(/\r?\n/)
    .map((line, i) => ({ line: i + 1, cells: cellsOf(line) }))
    .filter(({ cells }) => cells.some((cell) => cell !== '') && !cells[0]!.startsWith('#'))
  const [header, ...rows] = lines
  const columns = (header?.cells ?? []).map(
    (name) => MONTH_COLUMNS.find((column) => column.name === name)?.name,
  )
  const monthAt = (header?.cells ?? []).findIndex((name) => name.toLowerCase() === 'month')
  if (monthAt < 0 || columns.every((name) => name === undefined))
    throw stop(
      'months-no-header',
      'The table of months has no header line that names its columns.',
      `Begin with month and any of ${MONTH_COLUMNS.map(({ name }) => name).join(', ')}, as “duskbank place” prints it.`,
      { file, line: header?.line ?? 1 },
    )
  const seen = new Set<number>()
  return rows.flatMap(({ line, cells }) => {
    const month = monthOf(cells[monthAt] ?? '')
    if (month === null || seen.has(month))
      throw stop(
        'months-bad-month',
        month === null ? `“${cells[monthAt] ?? ''}” is no month.` : 'This month is here twice.',
        'Write each month once, by its name or by 1 to 12.',
        { file, line, field: 'month' },
      )
    seen.add(month)
    return columns.flatMap((column, i) =>
      column === undefined ? [] : valueOf(cells[i] ?? '', { column, month }, { file, line }),
    )
  })
}

function valueOf(
  cell: string,
  where: { readonly column: MonthColumn; readonly month: number },
  place: { readonly file: string; readonly line: number },
): OwnMonth[] {
  if (cell === '') return []
  const value = Number(cell.replace('−', '-'))
  if (Number.isFinite(value)) return [{ ...where, value }]
  throw stop('months-bad-number', `“${cell}” is not a number.`, 'Write it with a decimal point.', {
    ...place,
    field: where.column,
  })
}

function cellsOf(line: string): string[] {
  const separator = line.includes('\t') ? '\t' : line.includes(';') ? ';' : ','
  return line.split(separator).map((cell) =>
    cell
      .trim()
      .replace(/^"(.*)"$/, '$1')
      .trim(),
  )
}

function monthOf(cell: string): number | null {
  const named = NAMES.indexOf(cell.slice(0, 3).toLowerCase())
  if (named >= 0) return named
  const month = Number(cell)
  return cell !== '' && Number.isInteger(month) && month >= 1 && month <= MONTHS ? month - 1 : null
}
