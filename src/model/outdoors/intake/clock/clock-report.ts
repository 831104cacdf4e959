import type { Stamp } from '../mapping.ts'

/** What the sun says about the file's clock. */
export type ClockVerdict =
  'agrees' | 'late' | 'early' | 'utc' | 'local' | 'longitude-flipped' | 'daylight-saving' | 'unknown'

/** A change of the opening options that would put the clock right. */
export interface ClockCorrection {
  readonly verdict: ClockVerdict
  /** One sentence for a button's help. */
  readonly sentence: string
  readonly change: {
    readonly time?: { readonly clockOffset_h?: number; readonly stamp?: Stamp; readonly shift_h?: number }
    readonly site?: {
      readonly longitude_deg?: number
      readonly latitude_deg?: number
      readonly utcOffset_h?: number
    }
  }
  /** What would be left of the difference, min. */
  readonly left_min: number
}

export interface ClockReport {
  readonly verdict: ClockVerdict
  /** One sentence with the evidence. */
  readonly sentence: string
  /** Middle of the radiation minus solar noon, median over the days used, min; positive is late. NaN when unknown. */
  readonly late_min: number
  /** Half-spread of the days (median absolute deviation), min. */
  readonly spread_min: number
  readonly days: number
  readonly corrections: readonly ClockCorrection[]
}

/** A clock so far off the sun is asked about, min; a sharp verdict of many days from the second on: hills blur, clocks do not. */
const ASKED_FROM_MIN = 35
const SHARP = { from_min: 20, spread_min: 12, days: 30 }

/** True where the sun contradicts the clock so clearly that nobody should go on without an answer. */
export function asksAboutClock({ verdict, late_min, spread_min, days }: ClockReport): boolean {
  if (verdict === 'unknown') return false
  if (verdict === 'daylight-saving') return true
  const sharp = spread_min <= SHARP.spread_min && days >= SHARP.days
  return Math.abs(late_min) > (sharp ? SHARP.from_min : ASKED_FROM_MIN)
}

export const CLOCK_UNKNOWN: ClockReport = {
  verdict: 'unknown',
  sentence: 'The clock could not be checked against the sun.',
  late_min: NaN,
  spread_min: NaN,
  days: 0,
  corrections: [],
}
