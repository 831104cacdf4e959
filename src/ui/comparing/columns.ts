import type { ComparisonRow, WordColumn } from '#model/design/comparison'
import type { UnitSystem } from '#model/basis/units'
import { shownQuantity } from '#ui/words/quantity.ts'

/** A column of numbers in the table of the comparison. */
export interface NumberColumn {
  readonly id: string
  readonly title: string
  /** As shown, for bars, chart and sorting; null where there is none. */
  readonly value: (row: ComparisonRow) => number | null
  readonly text: (row: ComparisonRow) => string
}

/** Every number that is set side by side. */
export function numberColumns(system: UnitSystem): readonly NumberColumn[] {
  const quantity = (
    id: string,
    title: string,
    unit: string,
    si: (row: ComparisonRow) => number | null,
    digits = 3,
  ): NumberColumn => {
    const shown = shownQuantity(unit, system)
    const decimals = unit === 'C' ? 1 : unit === 'h' ? 0 : null
    const text = (value: number) =>
      decimals === null ? shown.bare(value, digits) : shown.fixed(value, decimals)
    return {
      id,
      title: shown.symbol === '' ? title : `${title}, ${shown.symbol}`,
      value: (row) => (si(row) === null ? null : shown.toShown(si(row)!)),
      text: (row) => (si(row) === null ? 'out of reach' : text(si(row)!)),
    }
  }
  return [
    quantity('area', 'Panel area', 'm2', (row) => row.area_m2),
    quantity('store', 'Store', 'm3', (row) => row.storeVolume_m3, 2),
    quantity('pump', 'Pump runs', 'h', (row) => row.pumpRun_h),
    quantity('electric', 'Electricity', 'J', (row) => row.electric_J, 2),
    quantity('heat', 'Heat given off', 'J', (row) => row.panelHeat_J),
    quantity('peak', 'Hottest hour', 'C', (row) => row.peak_C),
    quantity('hours', 'Above the limit', 'h', (row) => row.hoursOver_h),
    quantity('peakAlone', 'Hottest without panels', 'C', (row) => row.doNothingPeak_C),
    quantity('hoursAlone', 'Above it without panels', 'h', (row) => row.doNothingHoursOver_h),
  ]
}

export interface Sorting {
  readonly id: string
  readonly falling: boolean
}

/** Rows in the order of a column; those without a number last, the order of the list within equals. */
export function sorted(
  rows: readonly ComparisonRow[],
  { id, falling }: Sorting,
  words: readonly WordColumn[],
  numbers: readonly NumberColumn[],
): readonly ComparisonRow[] {
  const sign = falling ? -1 : 1
  const word = words.find((column) => column.id === id)
  if (word) return rows.toSorted((a, b) => sign * word.text(a).localeCompare(word.text(b)))
  const number = numbers.find((column) => column.id === id)
  if (!number) return rows
  const value = (row: ComparisonRow) => number.value(row) ?? (falling ? -Infinity : Infinity)
  return rows.toSorted((a, b) => (value(a) === value(b) ? 0 : sign * (value(a) - value(b))))
}
