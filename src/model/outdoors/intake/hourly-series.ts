import { columnConversion } from './column/column-conversion.ts'
import { givesTime, type Quantity } from './column/quantity.ts'
import type { TableMapping } from './mapping.ts'
import type { ProblemList } from './problems.ts'
import type { HourlySeries } from './quality/series.ts'
import type { RawColumn, RawTable } from './table/raw.ts'
import { fewestRows, hourlyMeans, type HourPlan } from './clock/hours.ts'

/** Hourly means of every mapped column in our units; fill values become gaps. Says which columns hold words. */
export function hourlySeries(
  raw: RawTable,
  mapping: TableMapping,
  plan: HourPlan,
  step_h: number,
  problems: ProblemList,
): HourlySeries {
  const series: HourlySeries = {}
  for (const mapped of mapping.columns) {
    const { index, quantity, instant = false } = mapped
    const column = raw.columns[index]
    if (quantity === 'ignore' || givesTime(quantity) || column === undefined || series[quantity]) continue
    sayWords(column, quantity, problems)
    const printed = withoutFill(column.values, mapping.missing)
    const values = instant && step_h === 1 ? meanOfEnds(printed) : printed
    series[quantity] = hourlyMeans(values, plan, fewestRows(step_h), columnConversion(mapped, step_h || 1))
  }
  return series
}

/** Readings at the ends of hours as means over the hours that end with them. */
function meanOfEnds(values: Float64Array): Float64Array {
  return values.map((value, row) => {
    const before = values[row - 1] ?? NaN
    return before === before ? 0.5 * (before + value) : value
  })
}

/** Values that mean "missing" as NaN; the same array when there are none. */
export function withoutFill(values: Float64Array, missing: readonly number[]): Float64Array {
  if (missing.length === 0) return values
  return values.map((value) => (missing.includes(value) ? NaN : value))
}

function sayWords(column: RawColumn, quantity: Quantity, problems: ProblemList): void {
  if (column.firstText === null) return
  problems.warn(
    'weather-words-in-numbers',
    `"${column.firstText.text}" is where a number is due (${column.textCells} such cells); they count as missing.`,
    'Put a number there, or leave the cell empty.',
    { line: column.firstText.line, column: column.header || `column ${column.index + 1} (${quantity})` },
  )
}
