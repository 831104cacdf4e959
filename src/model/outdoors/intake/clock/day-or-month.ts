import type { ProblemList } from '../problems.ts'
import type { RawColumn } from '../table/raw.ts'

/** True when the month is before the day in a column of stamps; judged by values above 12, else by order. */
export function isMonthFirst(column: RawColumn, problems: ProblemList): boolean {
  if (column.monthFirst) return true
  let backMonthFirst = 0
  let backDayFirst = 0
  let before = NaN
  for (const date of column.values) {
    if (date !== date || date === before) continue
    const p = Math.floor(date / 100) % 100
    const q = date % 100
    if (p > 12) return false
    if (q > 12) return true
    if (before === before) {
      if (date < before) backMonthFirst += 1
      if (swapped(date) < swapped(before)) backDayFirst += 1
    }
    before = date
  }
  problems.warn(
    'weather-day-or-month',
    `The stamps do not show whether the day or the month comes first; ${backMonthFirst < backDayFirst ? 'month first' : 'day first'} is taken.`,
    'If that is wrong, write the dates as 2018-01-31.',
    { column: column.header },
  )
  return backMonthFirst < backDayFirst
}

function swapped(date: number): number {
  const p = Math.floor(date / 100) % 100
  return date - p * 100 - (date % 100) + (date % 100) * 100 + p
}
