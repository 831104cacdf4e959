import type { Trial } from './area-search.ts'

/** Multiples of the area found at which it is looked whether the target is still met, close ones first. */
const LARGER = [Math.sqrt(1.25), 1.25, Math.sqrt(2.5), 2, Math.sqrt(8), 4]

/** What larger areas do to a target that is met. */
export interface LargerAreas {
  /** The smallest area looked at that misses the target again, m²; null where none does. */
  readonly missedAgainFrom_m2: number | null
  /** The larger areas looked at, rising, m². */
  readonly looked_m2: readonly number[]
  /** The widest step between the area found and those, as a share of the smaller. */
  readonly widestStep_frac: number
}

/**
 * Whether a target that is met at an area stays met at larger ones: at some multiples of it, and at those the search has
 * tried anyway. What lies between them is not known.
 * @param known    trials of the search, any area
 * @param most_m2  the largest area that may be tried
 */
export function largerAreas(
  found_m2: number,
  known: readonly Trial[],
  most_m2: number,
  measureAt: (area_m2: number) => number,
): LargerAreas {
  const most_times = LARGER.at(-1)!
  const seen = known.filter(({ area_m2 }) => area_m2 > found_m2 && area_m2 <= most_times * found_m2)
  const looks = LARGER.map((times) => times * found_m2)
    .filter((area_m2) => area_m2 <= most_m2 && seen.every((trial) => trial.area_m2 !== area_m2))
    .map((area_m2) => ({ area_m2, measure: measureAt(area_m2) }))
  const all = [...seen, ...looks].toSorted((a, b) => a.area_m2 - b.area_m2)
  const looked_m2 = all.map(({ area_m2 }) => area_m2)
  return {
    missedAgainFrom_m2: all.find(({ measure }) => measure > 0)?.area_m2 ?? null,
    looked_m2,
    widestStep_frac: Math.max(
      0,
      ...looked_m2.map((area_m2, i) => area_m2 / (looked_m2[i - 1] ?? found_m2) - 1),
    ),
  }
}
