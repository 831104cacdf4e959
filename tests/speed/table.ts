/** One line of the bench: what was reached for, what came out, over how many runs. */
export interface Row {
  readonly name: string
  readonly reach: string
  readonly values: readonly number[]
  readonly unit: string
  /** Null: printed, not judged. */
  readonly met: ((value: number) => boolean) | null
  /** Printed under the table where the reach is missed. */
  readonly found?: string
}

const sorted = (values: readonly number[]): number[] => values.toSorted((a, b) => a - b)
const middle = (values: readonly number[]): number => sorted(values)[Math.floor(values.length / 2)]!
const figure = (value: number): string =>
  Math.abs(value) >= 100 ? value.toFixed(0) : Math.abs(value) >= 10 ? value.toFixed(1) : value.toFixed(2)

/** Prints the table, what is known of each miss, and the count. */
export function printTable(rows: readonly Row[], notes: readonly string[]): void {
  const missed = rows.filter(({ met, values }) => met !== null && !met(middle(values)))
  const lines = rows.map((row) => [
    row.name,
    `${figure(middle(row.values))} ${row.unit}`.trim(),
    `${figure(sorted(row.values)[0]!)} … ${figure(sorted(row.values).at(-1)!)} (${row.values.length})`,
    row.reach,
    row.met === null ? '' : missed.includes(row) ? 'missed' : 'reached',
  ])
  const table = [['what', 'median', 'least … most (runs)', 'reach', ''], ...lines]
  const widths = table[0]!.map((_, i) => Math.max(...table.map((line) => line[i]!.length)))
  for (const line of table)
    console.log(
      line
        .map((cell, i) => cell.padEnd(widths[i]!))
        .join('  ')
        .trimEnd(),
    )
  for (const row of missed) if (row.found !== undefined) console.log(`\n${row.name}: ${row.found}`)
  for (const note of notes) console.log(`\n${note}`)
  const judged = rows.filter(({ met }) => met !== null).length
  console.log(`\n${judged} reaches, ${missed.length} missed`)
}
