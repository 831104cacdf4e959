import type { RawTable } from '../table/raw.ts'

/** Numbers that tables print for "no value". Positive ones that could be a pressure or a time are not among them. */
const FILLS = [-99, -99.9, -999, -999.9, -6999, -7999, -8888, -9900, -9999, -9999.9, -99999, 9999]

/** The fill values a table uses: those of the list that are apart from the rest of their column. */
export function findMissingValues(raw: RawTable): number[] {
  const used = new Set<number>()
  for (const column of raw.columns) {
    if (column.kind !== 'number') continue
    const seen = new Set<number>()
    let low = Infinity
    let high = -Infinity
    for (const value of column.values) {
      if (FILLS.includes(value)) seen.add(value)
      else if (value < low) low = value
      if (value > high && !FILLS.includes(value)) high = value
    }
    for (const fill of seen) {
      const apart = fill < 0 ? low > fill + 30 || fill <= -999 : high < fill / 3
      if (apart || low === Infinity) used.add(fill)
    }
  }
  return [...used].sort((a, b) => a - b)
}
