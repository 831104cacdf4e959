import type { BenchFit } from './bench-fit.ts'
import { infraredWarning } from './ir-thermometer.ts'
import type { BenchMoment, BenchReadings, SurfaceReading } from './reading.ts'
import { infraredView } from './surface-temperature.ts'
import type { FitResult } from '#model/basis/numbers'
import { said, type Problem } from '#model/basis/words'

/**
 * A surface at or below the dew point is wet: it radiates as water does and says nothing of its paint. An infrared
 * reading may be a kelvin or two low already, so it is called wet only well below.
 */
export function isWet(moment: BenchMoment, surface: SurfaceReading): boolean {
  const doubt_K = surface.thermometer === 'infrared' ? -1.5 : 0
  return surface.shown_C <= moment.dewPoint_C + doubt_K
}

/** One warning for the infrared reading that is farthest off, if any is; the fit has taken the error out. */
export function infraredRemarks(readings: BenchReadings, fit: BenchFit, result: FitResult): Problem[] {
  for (const row of fit.rows) {
    if (row.surface.thermometer !== 'infrared') continue
    const moment = readings.moments[row.moment]!
    const emittance = result.values[2 * row.surface.sample + 1]!
    const warning = infraredWarning(row.surface.shown_C, infraredView(readings, moment, emittance))
    if (warning === null) continue
    return [
      {
        code: 'bench-infrared',
        severity: 'warning',
        ...said(warning),
        remedy: 'The fit has taken this out as well as the emittance is known.',
        place: { line: row.moment + 1, field: 'shown_C' },
      },
    ]
  }
  return []
}
