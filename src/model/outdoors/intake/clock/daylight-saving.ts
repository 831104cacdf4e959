import type { ProblemList } from '../problems.ts'
import { DAY_MS, writeMoment, HOUR_MS } from '#model/basis/hours'

/**
 * Finds the two jumps a clock with daylight saving makes (an hour skipped, and half a year or so on either side an
 * hour said twice) and puts the rows between them back on standard time. Files without both jumps stay as they are.
 */
export function undoDaylightSaving(ms: Float64Array, step_h: number, problems: ProblemList): Float64Array {
  const jumps = clockJumps(ms, step_h)
  const pairs: [number, number][] = []
  let forward = -1
  for (const { row, kind } of jumps) {
    if (kind === 'forward') forward = row
    else if (forward >= 0 && isSummerLong(ms[row]! - ms[forward]!)) {
      pairs.push([forward, row])
      forward = -1
    } else if (pairs.length === 0) pairs.push([0, row])
  }
  if (forward >= 0 && pairs.length > 0 && pairs[0]![0] === 0) pairs.push([forward, ms.length])
  if (
    pairs.length === 0 ||
    jumps.length < 2 ||
    jumps.length > 2 * (1 + (ms.at(-1)! - ms[0]!) / (365 * DAY_MS))
  )
    return ms
  const standard = ms.slice()
  for (const [from, to] of pairs) for (let row = from; row < to; row += 1) standard[row]! -= HOUR_MS
  const [first, second] = jumps
  problems.warn(
    'weather-daylight-saving',
    `The clock jumps an hour at ${writeMoment(ms[first!.row]!)} and back at ${writeMoment(ms[second!.row]!)}: daylight saving. The rows between are put on standard time.`,
    'Nothing to do.',
  )
  return standard
}

interface Jump {
  readonly row: number
  readonly kind: 'forward' | 'back'
}

/** Rows whose step is an hour too long (and the row count shows nothing is missing there) or an hour too short. */
function clockJumps(ms: Float64Array, step_h: number): Jump[] {
  const jumps: Jump[] = []
  for (let row = 1; row < ms.length; row += 1) {
    const extra_h = (ms[row]! - ms[row - 1]!) / HOUR_MS - step_h
    const hour = new Date(ms[row - 1]!).getUTCHours()
    if (hour > 4 && hour !== 23) continue
    if (Math.abs(extra_h - 1) < 0.01) jumps.push({ row, kind: 'forward' })
    if (Math.abs(extra_h + 1) < 0.01) jumps.push({ row, kind: 'back' })
  }
  return jumps
}

function isSummerLong(ms: number): boolean {
  const days = ms / DAY_MS
  return days > 100 && days < 250
}
