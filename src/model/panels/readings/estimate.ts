import { benchFit, type BenchFit, type BenchRow } from './bench-fit.ts'
import { checkReadings } from './check-readings.ts'
import { benchWarnings } from './bench-warnings.ts'
import { infraredRemarks, isWet } from './doubtful-readings.ts'
import type { BenchReadings, WindClass } from './reading.ts'
import { studentHalfWidth, weightedFit, type FitResult } from '#model/basis/numbers'
import { classCoefficient_Wm2K } from './surface-temperature.ts'
import { stop, type Problem } from '#model/basis/words'

/** A fitted number with its 95 % interval. */
export interface Estimated {
  readonly value: number
  readonly low: number
  readonly high: number
  /** Share of what was unknown before that the readings took away, 0 (nothing) … 1. */
  readonly decided_frac: number
}

/** At 1 to three digits: no surface reaches it. */
const AT_LIMIT = 0.9995

/** The value to design with: the estimate, or the lower end of its interval where it rests at 1, which no surface reaches. */
export function designValue({ value, low }: Estimated): number {
  return value >= AT_LIMIT ? low : value
}

export interface SampleEstimate {
  readonly name: string
  readonly isReference: boolean
  readonly solarReflectance: Estimated
  readonly emittance: Estimated
}

/** Two coatings compared: first minus second. Errors they share are mostly gone. */
export interface PairEstimate {
  readonly first: string
  readonly second: string
  readonly solarReflectance: Estimated
  readonly emittance: Estimated
  /** Difference in absorbed irradiance at 1000 W/m², W/m²: positive when the first is the cooler. */
  readonly noonAdvantage_Wm2: number
}

export interface WindEstimate {
  readonly wind: WindClass
  /** Coefficient at the wind the class means (metered: 1 m/s), W/m²K. */
  readonly coefficient_Wm2K: Estimated
}

export interface BenchResidual {
  /** Moment, 0-based, and sample. */
  readonly moment: number
  readonly sample: number
  readonly shown_C: number
  readonly predicted_C: number
}

export interface BenchEstimate {
  readonly samples: readonly SampleEstimate[]
  readonly pairs: readonly PairEstimate[]
  readonly winds: readonly WindEstimate[]
  readonly residuals: readonly BenchResidual[]
  /** Scatter found over scatter stated: near 1 when the notes are as good as they claim. */
  readonly scatter_frac: number
  readonly warnings: readonly Problem[]
  /** For later stages: the fit itself. */
  readonly fit: BenchFit
  readonly result: FitResult
}

/**
 * Solar reflectance and thermal emittance of each sample, and the wind coefficient they share, from field notes, by
 * weighted least squares on the plate balance. Grey in the infrared: one emittance for both bands.
 * @throws ProblemError for notes that cannot be right, or with nothing dry to fit
 */
export function estimateCoatings(readings: BenchReadings): BenchEstimate {
  checkReadings(readings)
  const wet = (row: BenchRow) => isWet(readings.moments[row.moment]!, row.surface)
  const fit = benchFit(readings, wet)
  if (fit.rows.length < 2) {
    throw stop(
      'bench-nothing-to-fit',
      `Only ${fit.rows.length} dry surface reading is left: the others lie at or below the dew point, where dew hides the paint.`,
      'Read again on a drier night or by day.',
    )
  }
  const result = weightedFit(fit)
  const at = (k: number) => estimated(fit, result, k)
  const samples = readings.samples.map((sample, i) => ({
    name: sample.name,
    isReference: sample.known !== null,
    solarReflectance: within01(at(2 * i)),
    emittance: within01(at(2 * i + 1)),
  }))
  const residuals = fit.rows.map((row, i) => ({
    moment: row.moment,
    sample: row.surface.sample,
    shown_C: row.surface.shown_C,
    predicted_C: result.predicted[i]!,
  }))
  const winds = fit.unknowns.flatMap((unknown, k) =>
    unknown.kind === 'wind'
      ? [{ wind: unknown.wind, coefficient_Wm2K: coefficient(readings, unknown.wind, at(k)) }]
      : [],
  )
  return {
    samples,
    pairs: pairs(readings, fit, result),
    winds,
    residuals,
    scatter_frac: Math.sqrt(result.scale),
    warnings: [...benchWarnings(readings, fit, result), ...infraredRemarks(readings, fit, result)],
    fit,
    result,
  }
}

function estimated(fit: BenchFit, result: FitResult, k: number): Estimated {
  const half = studentHalfWidth(result.intervalFreedom) * result.standardErrors[k]!
  const value = result.values[k]!
  const prior = fit.parameters[k]!.priorSd
  return {
    value,
    low: value - half,
    high: value + half,
    decided_frac: Math.max(0, 1 - result.standardErrors[k]! / prior),
  }
}

function within01(e: Estimated): Estimated {
  return { ...e, low: Math.max(0, e.low), high: Math.min(1, e.high) }
}

function coefficient(readings: BenchReadings, wind: WindClass, log: Estimated): Estimated {
  const at = (value: number) => classCoefficient_Wm2K(readings.board, wind, value)
  return { value: at(log.value), low: at(log.low), high: at(log.high), decided_frac: log.decided_frac }
}

function pairs(readings: BenchReadings, fit: BenchFit, result: FitResult): PairEstimate[] {
  const found: PairEstimate[] = []
  for (let a = 0; a < readings.samples.length; a++) {
    for (let b = a + 1; b < readings.samples.length; b++) {
      const solarReflectance = difference(fit, result, 2 * a, 2 * b)
      found.push({
        first: readings.samples[a]!.name,
        second: readings.samples[b]!.name,
        solarReflectance,
        emittance: difference(fit, result, 2 * a + 1, 2 * b + 1),
        noonAdvantage_Wm2: 1000 * solarReflectance.value,
      })
    }
  }
  return found
}

function difference(fit: BenchFit, result: FitResult, i: number, j: number): Estimated {
  const { covariance } = result
  const variance = Math.max(0, covariance.get(i, i) + covariance.get(j, j) - 2 * covariance.get(i, j))
  const half = studentHalfWidth(result.intervalFreedom) * Math.sqrt(variance)
  const value = result.values[i]! - result.values[j]!
  const prior = Math.hypot(fit.parameters[i]!.priorSd, fit.parameters[j]!.priorSd)
  return {
    value,
    low: value - half,
    high: value + half,
    decided_frac: Math.max(0, 1 - Math.sqrt(variance) / prior),
  }
}
