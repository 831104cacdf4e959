import type { Quantity } from '../column/quantity.ts'

/** Something the file's values show, with what was done about it. */
export interface Finding {
  readonly kind: 'impossible' | 'humidity' | 'pair' | 'spike' | 'frozen' | 'closure' | 'offset'
  readonly quantity: Quantity
  /** Hours it concerns. */
  readonly hours: number
  /** First hour of the record it concerns. */
  readonly firstHour: number
  /** One sentence: what, where first, what was done. */
  readonly sentence: string
}

/** A gap and what became of it. */
export interface Gap {
  readonly quantity: Quantity
  readonly firstHour: number
  readonly hours: number
  readonly how: 'interpolated' | 'neighbouring days' | 'left'
  readonly sentence: string
}

/** Share of the hours of each month that the file itself has values for. */
export interface Coverage {
  readonly quantity: Quantity
  /** By calendar month, January first; null where the record has no hour of that month. */
  readonly monthly_frac: readonly (number | null)[]
  readonly overall_frac: number
}

export interface QualityReport {
  readonly hours: number
  readonly coverage: readonly Coverage[]
  readonly findings: readonly Finding[]
  readonly gaps: readonly Gap[]
}

export const EMPTY_REPORT: QualityReport = { hours: 0, coverage: [], findings: [], gaps: [] }
