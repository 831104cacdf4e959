import { GrowingColumn } from './growing.ts'
import { cellClock, cellNumber, isMissing } from './cell.ts'
import type { RawColumn } from './raw.ts'

/** Reads one column cell by cell into numbers. */
export interface ColumnReader {
  /** Takes one trimmed cell; true when it held a value or was empty. */
  take(cell: string, line: number): boolean
  done(): RawColumn
}

export interface ColumnPlan {
  readonly index: number
  readonly header: string
  readonly unitText: string
  readonly kind: RawColumn['kind']
  readonly decimal: '.' | ','
}

/** What kind of column a few of its cells make it. */
export function columnKind(cells: readonly string[], decimal: '.' | ','): RawColumn['kind'] {
  const said = cells.filter((cell) => !isMissing(cell))
  const numbers = said.filter((cell) => !Number.isNaN(cellNumber(cell, decimal))).length
  if (numbers * 2 >= said.length) return 'number'
  const clocks = said.filter((cell) => cellClock(cell) !== null).length
  return clocks * 2 >= said.length ? 'clock' : 'text'
}

export function columnReader(plan: ColumnPlan): ColumnReader {
  if (plan.kind === 'clock') return clockReader(plan)
  return plan.kind === 'text' ? textReader(plan) : numberReader(plan)
}

function numberReader({ index, header, unitText, decimal }: ColumnPlan): ColumnReader {
  const values = new GrowingColumn()
  let textCells = 0
  let firstText: RawColumn['firstText'] = null
  return {
    take(cell, line) {
      const value = cellNumber(cell, decimal)
      values.push(value)
      if (value === value) return true
      if (isMissing(cell)) return true
      textCells += 1
      firstText ??= { line, text: cell.slice(0, 40) }
      return false
    },
    done: () => ({ index, header, unitText, kind: 'number', values: values.values(), textCells, firstText }),
  }
}

function clockReader({ index, header, unitText }: ColumnPlan): ColumnReader {
  const dates = new GrowingColumn()
  const times = new GrowingColumn()
  let monthFirst = true
  let zoned = false
  let textCells = 0
  let firstText: RawColumn['firstText'] = null
  return {
    take(cell, line) {
      const clock = cellClock(cell)
      dates.push(clock === null ? NaN : clock.date)
      times.push(clock === null ? NaN : clock.ofDay_ms)
      if (clock !== null) {
        monthFirst &&= clock.monthFirst
        zoned ||= clock.zoned
        return true
      }
      if (isMissing(cell)) return true
      textCells += 1
      firstText ??= { line, text: cell.slice(0, 40) }
      return false
    },
    done: () => ({
      ...{ index, header, unitText, kind: 'clock', values: dates.values(), ofDay_ms: times.values() },
      ...{ monthFirst, zoned, textCells, firstText },
    }),
  }
}

function textReader({ index, header, unitText }: ColumnPlan): ColumnReader {
  let rows = 0
  return {
    take() {
      rows += 1
      return true
    },
    done: () => ({
      ...{ index, header, unitText, kind: 'text' },
      ...{ values: new Float64Array(rows).fill(NaN), textCells: 0, firstText: null },
    }),
  }
}
