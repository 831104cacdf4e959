import type { Stamp } from '../mapping.ts'
import type { RawTable } from '../table/raw.ts'
import { DAY_MS, HOUR_MS } from '#model/basis/hours'

/**
 * Whether stamps mark the end or the beginning of their period, by where the table starts and stops: a day that runs
 * from the first step to midnight or 24:00 is stamped at the end. Half-hour marks of hourly rows are middles.
 */
export function guessStamp(ms: Float64Array, raw: RawTable, step_h: number): Stamp {
  const first = ms.find((moment) => moment === moment) ?? 0
  const last = ms.findLast((moment) => moment === moment) ?? 0
  const intoDay_h = (first % DAY_MS) / HOUR_MS
  if (step_h === 1 && Math.abs((intoDay_h % 1) - 0.5) < 1e-6) return 'centred'
  const ends24 = raw.columns.some(({ kind, ofDay_ms }) => kind === 'clock' && ofDay_ms!.includes(DAY_MS))
  if (ends24) return 'ending'
  const startsLate = Math.abs(intoDay_h - step_h) < 1e-6
  return startsLate && last % DAY_MS < 1000 ? 'ending' : 'beginning'
}
