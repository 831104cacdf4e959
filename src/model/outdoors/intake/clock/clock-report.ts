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

export const CLOCK_UNKNOWN: ClockReport = {
  verdict: 'unknown',
  sentence: 'The clock could not be checked against the sun.',
  late_min: NaN,
  spread_min: NaN,
  days: 0,
  corrections: [],
}
