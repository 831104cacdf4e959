import { rankCorrelation } from '#model/basis/numbers'
import type { UncertaintyResult } from './result.ts'

/** Areas that differ by less are the same one. */
const SAME_AREA_m2 = 1e-9

/** One uncertain input: its name, and the ends it is drawn between. */
export interface UncertainInput {
  readonly field: string
  readonly label: string
  readonly low: number
  readonly high: number
}

/** The areas of all draws (m²; null where none is enough), the number of them simulated, and how far the others' fit is off. */
export interface AreasOfDraws {
  readonly areas_m2: readonly (number | null)[]
  readonly simulated: number
  /** Share of the area by which the fit misses a draw left out of it, root mean square; null where there is no fit. */
  readonly miss_frac: number | null
}

/** In how many of the draws an area is enough. */
export function drawsMet({ areas_m2 }: Pick<UncertaintyResult, 'areas_m2'>, area_m2: number): number {
  return areas_m2.filter((one) => one !== null && one <= area_m2 + SAME_AREA_m2).length
}

/**
 * The 10/50/90 % areas of a set of draws and the inputs that move it most.
 * @param areas_m2  area of each draw; null where none is enough (they count as larger than all others)
 * @param values    draws × inputs, the values drawn
 * @param made      how many of them are simulated, and how far the fit of the others is off; all when left out
 */
export function spreadOf(
  areas_m2: readonly (number | null)[],
  inputs: readonly UncertainInput[],
  values: readonly (readonly number[])[],
  { simulated, miss_frac }: Omit<AreasOfDraws, 'areas_m2'> = { simulated: areas_m2.length, miss_frac: null },
): UncertaintyResult {
  const ranked = areas_m2.map((area) => area ?? Infinity)
  const sorted = [...ranked].sort((a, b) => a - b)
  const quantile = (share: number): number | null => {
    const value = sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!
    return Number.isFinite(value) ? value : null
  }
  const drivers = inputs.map((input, i) => ({
    ...input,
    correlation: rankCorrelation(
      values.map((draw) => draw[i]!),
      ranked,
    ),
  }))
  return {
    draws: areas_m2.length,
    areas_m2: sorted.map((area) => (Number.isFinite(area) ? area : null)),
    simulated,
    miss_frac,
    low_m2: quantile(0.1),
    middle_m2: quantile(0.5),
    high_m2: quantile(0.9),
    unreachable_frac: areas_m2.filter((area) => area === null).length / Math.max(1, areas_m2.length),
    drivers: drivers.toSorted((a, b) => Math.abs(b.correlation) - Math.abs(a.correlation)),
  }
}
