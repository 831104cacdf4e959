import type { Stages } from './stages.ts'
import {
  estimateCoatings,
  type BenchEstimate,
  readingProposals,
  type ReadingProposal,
  type BenchReadings,
} from '#model/panels/readings'
import type { Study } from './study.ts'

/** What field notes say, without the inside of the fit, and the one reading that would help most. */
export interface CoatingEstimate extends Omit<BenchEstimate, 'fit' | 'result'> {
  readonly next: ReadingProposal
}

/** Share of the work that is done once the notes are fitted. */
const FITTED = 0.4

/** Reflectance and emittance from field readings. */
export function* estimateCoating(
  _stages: Stages,
  { readings }: { readonly readings: BenchReadings },
): Study<CoatingEstimate> {
  const estimate = estimateCoatings(readings)
  yield { share: FITTED }
  const { samples, pairs, winds, residuals, scatter_frac, warnings } = estimate
  const steps = readingProposals(readings, estimate)
  let step = steps.next()
  while (step.done !== true) {
    yield { share: FITTED + (1 - FITTED) * step.value }
    step = steps.next()
  }
  const next = step.value[0]!
  return { result: { samples, pairs, winds, residuals, scatter_frac, warnings, next }, remarks: warnings }
}
