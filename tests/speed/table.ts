import { profileOf } from './profile.ts'

/** One line of the bench: what is to be reached, what came out, over how many runs. */
export interface Row {
  readonly name: string
  /** Empty: printed, not judged. */
  readonly goal: string
  readonly values: readonly number[]
  readonly unit: string
  /** Null: printed, not judged. */
  readonly met: ((value: number) => boolean) | null
  /** One sentence of why, printed where the goal is missed. */
  readonly why?: string
  /** What makes the two sides of a ratio comparable, printed where the goal is missed. */
  readonly alike?: string
  /** The work behind the row, run once more under the profiler where the goal is missed; or the lines of a profile taken as it ran. */
  readonly work?: (() => unknown) | readonly string[]
  /** Its time by what it is spent on, where that is measured: asked for only where the goal is missed. */
  readonly parts?: () => readonly string[]
}

/** A line of the bench that cannot be measured where it runs. */
export interface NotMeasured {
  readonly name: string
  readonly goal: string
  readonly reason: string
}

export type Line = Row | NotMeasured

const sorted = (values: readonly number[]): number[] => values.toSorted((a, b) => a - b)
const middle = (values: readonly number[]): number => sorted(values)[Math.floor(values.length / 2)]!

function figure(value: number): string {
  const size = Math.abs(value)
  if (size > 0 && size < 0.01) return value.toExponential(1)
  return size >= 100 ? value.toFixed(0) : size >= 10 ? value.toFixed(1) : value.toFixed(2)
}

const isMissed = ({ met, values }: Row): boolean => met !== null && !met(middle(values))

function cells(line: Line): string[] {
  if ('reason' in line) return [line.name, '', '', line.goal, 'not measured here']
  const { name, values, unit, goal, met } = line
  const [least, most] = [sorted(values)[0]!, sorted(values).at(-1)!]
  const spread = values.length === 1 ? '(1)' : `${figure(least)} … ${figure(most)} (${values.length})`
  const verdict = met === null ? '' : isMissed(line) ? 'missed' : 'reached'
  return [name, `${figure(middle(values))} ${unit}`.trim(), spread, goal, verdict]
}

/** Prints the table, the reason and the profile of each miss, the reason of what is not measured, and the count. */
export async function printTable(lines: readonly Line[]): Promise<void> {
  const table = [['what', 'median', 'least … most (runs)', 'goal', ''], ...lines.map(cells)]
  const widths = table[0]!.map((_, i) => Math.max(...table.map((line) => line[i]!.length)))
  for (const line of table)
    console.log(
      line
        .map((cell, i) => cell.padEnd(widths[i]!))
        .join('  ')
        .trimEnd(),
    )
  const rows = lines.filter((line): line is Row => 'values' in line)
  const missed = rows.filter(isMissed)
  for (const row of missed) await explain(row)
  const left = lines.filter((line): line is NotMeasured => 'reason' in line)
  for (const { name, reason } of left) console.log(`\n${name} is not measured here: ${reason}`)
  const judged = rows.filter(({ met }) => met !== null).length
  const unmeasured = left.length === 0 ? '' : `, ${left.length} not measured here (reasons above)`
  console.log(
    `\n${judged + left.length} rows, ${judged - missed.length} reached, ${missed.length} missed (each with its profile above)${unmeasured}`,
  )
}

async function explain({ name, values, unit, goal, why, alike, work, parts }: Row): Promise<void> {
  console.log(`\n${name}: ${figure(middle(values))} ${unit} for ${goal} ${unit}. ${why ?? ''}`.trimEnd())
  if (alike !== undefined) console.log(`  like for like: ${alike}`)
  const profile = typeof work === 'function' ? await profileOf(work) : (work ?? [])
  for (const line of [...(parts?.() ?? []), ...profile]) console.log(`  ${line}`)
}
