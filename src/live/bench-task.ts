import { estimateCoatings, type BenchEstimate } from '#model/bench/estimate.ts'
import { nextReading, type ReadingProposal } from '#model/bench/next-reading.ts'
import type { BenchReadings } from '#model/bench/reading.ts'

/** What field notes say, without the inside of the fit, and the one reading that would help most. */
export interface BenchReport extends Omit<BenchEstimate, 'fit' | 'result'> {
  readonly next: ReadingProposal
}

export function benchReport(readings: BenchReadings): BenchReport {
  const estimate = estimateCoatings(readings)
  const { samples, pairs, winds, residuals, scatter_frac, warnings } = estimate
  return { samples, pairs, winds, residuals, scatter_frac, warnings, next: nextReading(readings, estimate) }
}
