import type { Spine } from '#model/answer.ts'
import { estimateCoatings, type BenchEstimate } from '#model/bench/estimate.ts'
import { nextReading, type ReadingProposal } from '#model/bench/next-reading.ts'
import type { BenchReadings } from '#model/bench/reading.ts'
import type { Study } from './study.ts'

/** What field notes say, without the inside of the fit, and the one reading that would help most. */
export interface CoatingEstimate extends Omit<BenchEstimate, 'fit' | 'result'> {
  readonly next: ReadingProposal
}

/** Reflectance and emittance from field readings. */

export function* estimateCoating(
  _stages: Spine,
  { readings }: { readonly readings: BenchReadings },
): Study<CoatingEstimate> {
  const estimate = estimateCoatings(readings)
  const { samples, pairs, winds, residuals, scatter_frac, warnings } = estimate
  const next = nextReading(readings, estimate)
  return { result: { samples, pairs, winds, residuals, scatter_frac, warnings, next }, remarks: warnings }
}
