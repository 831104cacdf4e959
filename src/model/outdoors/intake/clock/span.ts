import type { ProblemList } from '../problems.ts'
import type { RawTable } from '../table/raw.ts'
import { DAY_MS, writeMoment, yearOf, HOUR_MS } from '#model/basis/hours'

/** A span longer than this must be filled to at least this share, or some stamps are taken to be wrong. */
const LONG_SPAN_H = 9600
const FILLED_FRAC = 0.2

/** Longest span that is simply kept, h: a leap year and a day. */
const LONGEST_SPAN_H = 8808

/** One calendar year of a file that holds several: the one asked for, else the fullest (and says so). */
export function chooseYear(
  centres_ms: Float64Array,
  toLocal_h: number,
  choice: number | 'all' | undefined,
  step_h: number,
  problems: ProblemList,
): Float64Array {
  if (choice === 'all') return centres_ms
  const rows = new Map<number, number>()
  let lowest = Infinity
  let highest = -Infinity
  for (const ms of centres_ms) {
    if (ms !== ms) continue
    const year = yearOf(ms + toLocal_h * HOUR_MS)
    rows.set(year, (rows.get(year) ?? 0) + 1)
    lowest = Math.min(lowest, ms)
    highest = Math.max(highest, ms)
  }
  if ((highest - lowest) / HOUR_MS <= LONGEST_SPAN_H) return centres_ms
  const fullest = [...rows].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0]!
  const year = typeof choice === 'number' && rows.has(choice) ? choice : fullest[0]
  if (rows.get(year)! * step_h < 7000) return centres_ms
  if (year !== choice) {
    problems.warn(
      'weather-many-years',
      `The file runs from ${writeMoment(lowest)} to ${writeMoment(highest)}; the year ${year} is used.`,
      `Choose another year among ${[...rows.keys()].sort().join(', ')} if you want it.`,
    )
  }
  return centres_ms.map((ms) => (yearOf(ms + toLocal_h * HOUR_MS) === year ? ms : NaN))
}

/** True (and a problem) when a few rows lie so far in time that the span between is all but empty. */
export function isScattered(ms: Float64Array, raw: RawTable, step_h: number, problems: ProblemList): boolean {
  const known = ms.filter((moment) => moment === moment).sort()
  if (known.length === 0) return false
  const span_h = (known.at(-1)! - known[0]!) / HOUR_MS
  if (span_h <= LONG_SPAN_H || known.length * (step_h || 1) >= span_h * FILLED_FRAC) return false
  const middle = known[Math.floor(known.length / 2)]!
  const far = ms.findIndex((moment) => Math.abs(moment - middle) > 366 * DAY_MS)
  problems.error(
    'weather-stamps-scattered',
    `The stamps run from ${writeMoment(known[0]!)} to ${writeMoment(known.at(-1)!)}, but only ${known.length} rows lie between.`,
    'Correct the stamps that lie far off, or cut the file to one year.',
    far < 0 ? {} : { line: raw.lines[far]! },
  )
  return true
}
