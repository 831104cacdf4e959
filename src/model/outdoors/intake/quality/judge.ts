import type { SunHours } from '#model/outdoors/sun'
import { QUANTITIES, type Quantity } from '../column/quantity.ts'
import type { ProblemList } from '../problems.ts'
import { findClosure } from './closure.ts'
import { measureCoverage } from './coverage.ts'
import { findFrozen } from './frozen.ts'
import { correctHumidity } from './humidity.ts'
import { removeImpossible } from './impossible.ts'
import type { Coverage, Finding } from './report.ts'
import type { HourlySeries, HourNames } from './series.ts'
import { findSpikes } from './spikes.ts'

/** The series without what cannot be, and all that was found. */
export interface Judged {
  readonly series: HourlySeries
  readonly findings: readonly Finding[]
  readonly coverage: readonly Coverage[]
}

/** Judges the hours as read, before anything is filled. Impossible values become gaps; the rest is only reported. */
export function judge(read: HourlySeries, sun: SunHours, names: HourNames, problems: ProblemList): Judged {
  for (const quantity of Object.keys(read) as Quantity[]) {
    if (!read[quantity]!.every(Number.isNaN)) continue
    problems.warn(
      'weather-column-empty',
      `${QUANTITIES[quantity].label} has no value in any hour.`,
      'Choose another column for it in the mapping.',
      { column: QUANTITIES[quantity].label },
    )
  }
  const possible = removeImpossible(read, sun, names)
  const humid = correctHumidity(possible.series, names)
  const findings = [
    ...possible.findings,
    ...humid.findings,
    ...findSpikes(humid.series, names),
    ...findFrozen(humid.series, sun, names),
    ...findClosure(humid.series, sun, names),
  ]
  return { series: humid.series, findings, coverage: measureCoverage(humid.series, names) }
}
