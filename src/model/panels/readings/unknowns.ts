import type { BenchReadings, BenchSample, WindClass } from './reading.ts'
import type { FitParameter } from '#model/basis/numbers'

/** What the bench solves for. */
export type BenchUnknown =
  | { readonly kind: 'reflectance' | 'emittance'; readonly sample: number }
  | { readonly kind: 'wind'; readonly wind: WindClass }

/** Before any reading: a light-coloured paint, weakly. Common practice, no source. */
const UNKNOWN_REFLECTANCE = { mean: 0.8, sd: 0.2 }
/** Paints lie between 0.8 and 0.97 (handbook tables of total emittance); metals lower. */
const UNKNOWN_EMITTANCE = { mean: 0.88, sd: 0.12 }

/**
 * Wind at the board that each class is taken for, m/s, and how far off its coefficient may be (standard deviation of the
 * natural logarithm). Metered wind keeps the doubt of the formula: outdoors a small plate exchanges 1 to 1.5 times what
 * the laminar plate does (leaves: Schuepp 1972), so 0.25. The coefficient goes with the root of the wind: a class off by a
 * factor of 1.8 adds 0.3.
 */
export const WIND_CLASS_MEANS: Readonly<Record<WindClass, { wind_ms: number; logSd: number }>> = {
  metered: { wind_ms: NaN, logSd: 0.25 },
  calm: { wind_ms: 0.5, logSd: 0.4 },
  breezy: { wind_ms: 2, logSd: 0.35 },
}

/** The unknowns of these readings, in order: two for each sample, one for each wind class that occurs. */
export function benchUnknowns(readings: BenchReadings): BenchUnknown[] {
  const winds = [...new Set(readings.moments.map((moment) => moment.wind))]
  return [
    ...readings.samples.flatMap((_, sample): BenchUnknown[] => [
      { kind: 'reflectance', sample },
      { kind: 'emittance', sample },
    ]),
    ...winds.map((wind): BenchUnknown => ({ kind: 'wind', wind })),
  ]
}

/** The fit's parameter of an unknown; wind is the logarithm of a multiplier. */
export function unknownParameter(unknown: BenchUnknown, samples: readonly BenchSample[]): FitParameter {
  const name = unknownName(unknown, samples)
  if (unknown.kind === 'wind') {
    const { logSd } = WIND_CLASS_MEANS[unknown.wind]
    return { name, priorMean: 0, priorSd: logSd, min: -2.5, max: 2 }
  }
  const known = samples[unknown.sample]!.known
  if (unknown.kind === 'reflectance') {
    return {
      name,
      priorMean: known?.solarReflectance_frac ?? UNKNOWN_REFLECTANCE.mean,
      priorSd: known?.solarReflectanceSd_frac ?? UNKNOWN_REFLECTANCE.sd,
      min: 0,
      max: 1,
    }
  }
  return {
    name,
    priorMean: known?.emittance_frac ?? UNKNOWN_EMITTANCE.mean,
    priorSd: known?.emittanceSd_frac ?? UNKNOWN_EMITTANCE.sd,
    min: 0.05,
    max: 1,
  }
}

const WIND_NAMES: Readonly<Record<WindClass, string>> = {
  metered: 'the wind coefficient',
  calm: 'the wind coefficient in calm air',
  breezy: 'the wind coefficient in a breeze',
}

/** The unknown in words. */
export function unknownName(unknown: BenchUnknown, samples: readonly BenchSample[]): string {
  if (unknown.kind === 'wind') return WIND_NAMES[unknown.wind]
  const property = unknown.kind === 'reflectance' ? 'solar reflectance' : 'emittance'
  return `the ${property} of ${samples[unknown.sample]!.name}`
}

/** True when an unknown can move a reading of this sample in this wind class. */
export function touches(unknown: BenchUnknown, sample: number, wind: WindClass): boolean {
  return unknown.kind === 'wind' ? unknown.wind === wind : unknown.sample === sample
}
