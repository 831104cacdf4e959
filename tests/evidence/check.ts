import type { EvidenceKind } from '#ui/trust/evidence-row.ts'

export { NO_END } from '#ui/trust/evidence-row.ts'
import type { SourceKey } from './sources.ts'

export type Theme =
  | 'Sun'
  | 'Moist air'
  | 'Convection and gaps'
  | 'Sky'
  | 'Panel'
  | 'Panels in the field'
  | 'Film covers'
  | 'Room'
  | 'Store'
  | 'Loop and fluids'
  | 'Integration'
  | 'Whole systems'
  | 'Comfort'
  | 'Facts of the trade'
  | 'Measures beside panels'

/**
 * What the expected number is.
 * - published: printed in the source; measured: open measurements, judged by the error published for such models; exact: a closed form or identity; conservation: a balance that must close;
 * - independent calculation: worked out by someone else's program or by a second model that shares no code;
 * - common practice: what the trade observes, no source.
 */
export type Kind =
  'published' | 'measured' | 'exact' | 'conservation' | 'independent calculation' | 'common practice'

/** The three kinds of evidence, never mixed. */
export function evidenceKind({ kind }: Pick<Check, 'kind'>): EvidenceKind {
  if (kind === 'published' || kind === 'measured') return 'outside'
  return kind === 'independent calculation' || kind === 'exact' ? 'second' : 'regression'
}

/** One comparison of the project's own result with something outside it. */
export interface Check {
  readonly theme: Theme
  /** What is compared, with its conditions. Unique. */
  readonly quantity: string
  readonly unit: string
  readonly kind: Kind
  readonly source: SourceKey
  /** Table, example, equation or page inside the source. */
  readonly where?: string
  /** The expected value was recalled, not read from the source. */
  readonly fromMemory?: true
  /** Our value; runs the project's code. */
  readonly got: () => number
  /** The outside value, or the band it must fall in. */
  readonly want: number | readonly [number, number]
  /** Allowed distance from `want` in its unit; 0 for a band. */
  readonly within: number
  /** Why that close. */
  readonly because: string
  /** File of ../shared/data that the check reads; where absent, the last measured value is kept and said to be old. */
  readonly needs?: string
  /** A choice that was made on this data, and how it was kept from judging itself; absent: none was made. */
  readonly choice?: string
  /** The check is known to miss: what we think is the cause. */
  readonly miss?: string
}

/** Distance outside the allowed span: 0 or less when the check agrees. */
export function overshoot(check: Pick<Check, 'want' | 'within'>, ours: number): number {
  const [low, high] = span(check)
  if (!Number.isFinite(ours)) return Infinity
  return Math.max(low - ours, ours - high)
}

export function span({ want, within }: Pick<Check, 'want' | 'within'>): readonly [number, number] {
  return typeof want === 'number' ? [want - within, want + within] : [want[0] - within, want[1] + within]
}

/** A value worked out once and shared by several checks. */
export function once<T>(make: () => T): () => T {
  let made: { value: T } | undefined
  return () => (made ??= { value: make() }).value
}
