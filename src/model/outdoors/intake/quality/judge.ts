import type { SunHours } from '#model/sun/hours.ts'
import { QUANTITIES, type Quantity } from '#model/weather/column/quantity.ts'
import type { ProblemList } from '#model/weather/problems.ts'
import { findClosure } from '#model/weather/quality/closure.ts'
import { measureCoverage } from '#model/weather/quality/coverage.ts'
import { findFrozen } from '#model/weather/quality/frozen.ts'
import { correctHumidity } from '#model/weather/quality/humidity.ts'
import { removeImpossible } from '#model/weather/quality/impossible.ts'
import type { Coverage, Finding } from '#model/weather/quality/report.ts'
import type { HourlySeries, HourNames } from '#model/weather/quality/series.ts'
import { findSpikes } from '#model/weather/quality/spikes.ts'

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
