import type { KeptFor } from './kept-for.ts'

export const TARGET_KINDS = ['peak', 'hours', 'degreeHours', 'adaptive'] as const
export type TargetKind = (typeof TARGET_KINDS)[number]

export const ADAPTIVE_STANDARDS = ['ashrae55', 'en16798'] as const
export type AdaptiveStandard = (typeof ADAPTIVE_STANDARDS)[number]

/** What the room must do. */
export interface TargetSpec {
  readonly kind: TargetKind
  readonly keptFor: KeptFor
  /** Speed of the air at people, m/s: it moves their limit. */
  readonly airSpeed_ms: number
  /** Limit of the operative temperature, °C (not for adaptive). */
  readonly limit_C: number
  /** Hours a year allowed above the limit (kind `hours`, `adaptive`). */
  readonly allowedHours_h: number
  /** Degree-hours a year allowed above the limit (kind `degreeHours`). */
  readonly allowedDegreeHours_Kh: number
  readonly adaptive: AdaptiveStandard
  /** Hours of the day that count, local standard time; from = until means all day. */
  readonly occupiedFrom_h: number
  readonly occupiedUntil_h: number
  /** The largest panel area there is room for, m². */
  readonly maxArea_m2: number
}
