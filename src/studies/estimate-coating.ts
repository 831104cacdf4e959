import type { Stages } from './stages.ts'
import {
  estimateCoatings,
  type BenchEstimate,
  nextReading,
  type ReadingProposal,
  type BenchReadings,
} from '#model/panels/readings'
import type { Study } from './study.ts'

/** What field notes say, without the inside of the fit, and the one reading that would help most. */
export interface CoatingEstimate extends Omit<BenchEstimate, 'fit' | 'result'> {
  readonly next: ReadingProposal
}

/** Reflectance and emittance from field readings. */

export function* estimateCoating(
  _stages: Stages,
  { readings }: { readonly readings: BenchReadings },
): Study<CoatingEstimate> {
  const estimate = estimateCoatings(readings)
  const { samples, pairs, winds, residuals, scatter_frac, warnings } = estimate
  const next = nextReading(readings, estimate)
  return { result: { samples, pairs, winds, residuals, scatter_frac, warnings, next }, remarks: warnings }
}
