import type { ProblemList } from '../problems.ts'
import type { RawTable } from '../table/raw.ts'
import { writeMoment } from '#model/basis/hours'

/**
 * Says when rows are not in the order of time (their stamps decide, not their place) and drops the later of two
 * rows with the same stamp by making its moment NaN.
 */
export function keepFirstOfDuplicates(ms: Float64Array, raw: RawTable, problems: ProblemList): Float64Array {
  let back = 0
  let firstBack = -1
  let before = -Infinity
  for (let row = 0; row < ms.length; row += 1) {
    const moment = ms[row]!
    if (moment !== moment) continue
    if (moment < before) {
      back += 1
      if (firstBack < 0) firstBack = row
    }
    before = moment
  }
  const seen = new Set<number>()
  const single = ms.slice()
  let twice = 0
  let firstTwice = -1
  for (let row = 0; row < ms.length; row += 1) {
    const moment = ms[row]!
    if (moment !== moment) continue
    if (seen.has(moment)) {
      single[row] = NaN
      twice += 1
      if (firstTwice < 0) firstTwice = row
    }
    seen.add(moment)
  }
  if (firstBack >= 0 && back > 2) {
    problems.warn(
      'weather-rows-shuffled',
      `${back} rows come before an earlier one; every row is put where its stamp says.`,
      'Nothing to do if the stamps are right.',
      { line: raw.lines[firstBack]! },
    )
  }
  if (firstTwice >= 0) sayTwice(twice, raw, firstTwice, ms, problems)
  return single
}

function sayTwice(twice: number, raw: RawTable, row: number, ms: Float64Array, problems: ProblemList): void {
  const glued = raw.headerAgain.length > 0 || twice > raw.rows * 0.3
  const place = { line: raw.headerAgain[0] ?? raw.lines[row]! }
  if (glued) {
    problems.error(
      'weather-two-files',
      `${twice} rows have a stamp that was there before, the first at ${writeMoment(ms[row]!)}: this looks like two files in one.`,
      'Keep one of the two and open it again.',
      place,
    )
  } else {
    problems.warn(
      'weather-duplicate-stamps',
      `${twice} rows have a stamp that was there before, the first at ${writeMoment(ms[row]!)}; the earlier row counts.`,
      'Delete the rows that are wrong if the later ones are right.',
      place,
    )
  }
}
