import type { ComparisonRow } from './cases.ts'
import type { CoverReasons } from './cover-reasons.ts'

/** Differences smaller than this count as none: the area itself is found to 0.3 %, the tank's knee is coarser. */
const EVEN_SHARE = 0.03
const EVEN_K = 0.1

/** What decided: area needed, who reaches the target at all, or the hottest hour. */
export type DecidedBy = 'area' | 'reach' | 'peak'

/** Two designs weighed for the same target in the same climate. */
export interface Verdict {
  readonly first: ComparisonRow
  readonly second: ComparisonRow
  readonly decidedBy: DecidedBy
  /** The one that needs less panel, alone reaches the target, or stays cooler. */
  readonly better: 'first' | 'second' | 'even'
  /** First over second; null unless both have an area that meets the target. */
  readonly areaRatio: number | null
  /** First over second; null when the second's pump never runs. */
  readonly pumpHoursRatio: number | null
  /** First minus second, K. */
  readonly peakDifference_K: number
}

/** Film or bare, and why. */
export interface CoverVerdict extends Verdict {
  readonly reasons: CoverReasons | null
}

/**
 * Night-only (first) against all-day (second).
 * @throws RangeError when the rows are not the plans named
 */
export function nightOrAllDay(night: ComparisonRow, allDay: ComparisonRow): Verdict {
  assertIs('plan', night.plan, 'nightOnly')
  assertIs('plan', allDay.plan, 'allDay')
  return weighed(night, allDay)
}

/**
 * Bare (first) against film (second).
 * @throws RangeError when the rows are not the covers named
 */
export function filmOrBare(
  bare: ComparisonRow,
  film: ComparisonRow,
  reasons: CoverReasons | null,
): CoverVerdict {
  assertIs('cover', bare.cover, 'bare')
  assertIs('cover', film.cover, 'film')
  return { ...weighed(bare, film), reasons }
}

/** A changed building (first) against the one described (second): what a load cut or a baseline is worth. */
export function cutOrNot(changed: ComparisonRow, described: ComparisonRow): Verdict {
  return weighed(changed, described)
}

function assertIs(what: string, found: string, wanted: string): void {
  if (found !== wanted) throw new RangeError(`verdict: ${what} is ${found}, must be ${wanted}`)
}

function weighed(first: ComparisonRow, second: ComparisonRow): Verdict {
  const peakDifference_K = first.peak_C - second.peak_C
  const common = { first, second, peakDifference_K, pumpHoursRatio: ratio(first.pumpRun_h, second.pumpRun_h) }
  const areas = [sizedArea_m2(first), sizedArea_m2(second)] as const
  if (areas[0] !== null && areas[1] !== null)
    return {
      ...common,
      decidedBy: 'area',
      better: byArea(areas[0], areas[1]),
      areaRatio: ratio(areas[0], areas[1]),
    }
  if (first.kind !== 'own' && second.kind !== 'own' && (areas[0] === null) !== (areas[1] === null)) {
    return { ...common, decidedBy: 'reach', better: areas[0] === null ? 'second' : 'first', areaRatio: null }
  }
  const better = Math.abs(peakDifference_K) < EVEN_K ? 'even' : peakDifference_K < 0 ? 'first' : 'second'
  return { ...common, decidedBy: 'peak', better, areaRatio: null }
}

/** Area that meets the target; 0 where none is needed, null where none is enough or the area is the user's own. */
export function sizedArea_m2(row: ComparisonRow): number | null {
  return row.kind === 'own' ? null : row.area_m2
}

function byArea(first_m2: number, second_m2: number): Verdict['better'] {
  if (Math.abs(first_m2 - second_m2) <= EVEN_SHARE * Math.max(first_m2, second_m2)) return 'even'
  return first_m2 < second_m2 ? 'first' : 'second'
}

function ratio(first: number, second: number): number | null {
  return second > 0 ? first / second : null
}

/** True when two rows differ in nothing but one part, so that a verdict on that part is fair. */
export function sameBut(
  what: 'climate' | 'plan' | 'coating' | 'cover' | 'building',
  a: ComparisonRow,
  b: ComparisonRow,
): boolean {
  return (['climate', 'plan', 'coating', 'cover', 'building'] as const).every(
    (part) => part === what || a[part] === b[part],
  )
}
