import { linearFit } from '#model/basis/numbers'
import type { AreasOfDraws, UncertainInput } from './spread.ts'

/** Draws simulated before it is seen whether the others can be read from a fit. */
export const FIRST_DRAWS = 32
/** A fit is good enough where it misses draws left out of it by no more than this share of their area, root mean square. */
const GOOD_MISS_FRAC = 0.03
/** So many draws that all need no panel, or all have no area that is enough, speak for the rest. */
const AGREED_DRAWS = 64

/** Draws to have simulated next: the first 32, then twice as many each time, then all. */
export function drawsToSimulate(simulated: number, draws: number): number {
  return Math.min(draws, simulated === 0 ? FIRST_DRAWS : 2 * simulated)
}

/**
 * The areas of all draws from those of the first: read from a straight fit of the logarithm of the area over the inputs where that
 * is good enough; where some need no panel or have none that is enough, and where the fit leaves the areas tried, it never is.
 * @param first_m2  areas of the first draws, m²
 * @param values    draws × inputs, the values drawn
 * @returns null where more draws are to be simulated
 */
export function areasFromFirst(
  first_m2: readonly (number | null)[],
  inputs: readonly UncertainInput[],
  values: readonly (readonly number[])[],
  most_m2: number,
): AreasOfDraws | null {
  const simulated = first_m2.length
  if (simulated >= values.length) return { areas_m2: first_m2, simulated, miss_frac: null }
  const alike = first_m2.every((area) => area === first_m2[0]) && !first_m2[0]
  if (alike && simulated >= AGREED_DRAWS)
    return { areas_m2: values.map(() => first_m2[0]!), simulated, miss_frac: null }
  const areas_m2 = first_m2.filter((area): area is number => area !== null && area > 0)
  if (areas_m2.length < simulated) return null
  const varied = inputs.flatMap(({ low, high }, i) => (high > low ? [i] : []))
  const scaled = values.map((draw) =>
    varied.map((i) => (draw[i]! - inputs[i]!.low) / (inputs[i]!.high - inputs[i]!.low) - 0.5),
  )
  const fit = linearFit(scaled.slice(0, simulated), areas_m2.map(Math.log))
  if (fit === null) return null
  const miss_frac = Math.sqrt(fit.missed.reduce((sum, miss) => sum + miss * miss, 0) / simulated)
  if (miss_frac > GOOD_MISS_FRAC) return null
  const all_m2 = scaled.map((point, i) => areas_m2[i] ?? Math.exp(fit.at(point)))
  return all_m2.some((area) => area > most_m2) ? null : { areas_m2: all_m2, simulated, miss_frac }
}
