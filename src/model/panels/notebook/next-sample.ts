import { gaussian, seededRandom } from '#model/basis/numbers'
import { stop } from '#model/basis/words'
import { amountOf, variedKeys } from './amounts.ts'
import { powers, response, spread, type Response, type ResponsePoint } from './response.ts'
import type { PaintSample, Property } from './sample.ts'

/** A sample worth making: what to change, to what, and what it would tell about where the best is. */
export interface SampleProposal {
  readonly key: string
  readonly x: number
  /** Expected information about the best amount, bit. */
  readonly information_bit: number
  /** What the curve expects there. */
  readonly expected: number
}

const DRAWS = 1500
const BINS = 8
const CANDIDATES = 21
/** Reach beyond what was tried, share of its range on either side; amounts never fall under 0. */
const BEYOND_FRAC = 0.35

/** Samples as points of a property against an amount. */
export function pointsOf(samples: readonly PaintSample[], key: string, property: Property): ResponsePoint[] {
  return samples.flatMap((sample) => {
    const y = sample.measured[property]
    return y === undefined ? [] : [{ x: amountOf(sample, key), y }]
  })
}

/** Range a response is looked at in: what was tried and a third beyond. Null where one amount was tried. */
export function rangeOf(points: readonly ResponsePoint[]): readonly [from: number, to: number] | null {
  const xs = points.map(({ x }) => x)
  const [low, high] = [Math.min(...xs), Math.max(...xs)]
  if (!(high > low)) return null
  const beyond = BEYOND_FRAC * (high - low)
  return [Math.max(0, low - beyond), high + beyond]
}

/**
 * The amount at which one more sample says most about where the property is largest: the mutual information of its
 * measurement y and the best amount, by draws of the curve,
 *   I = ½ log₂ Var(y) − Σ_b p_b ½ log₂ Var(y | best in bin b)
 * Source: Lindley 1956, On a measure of the information provided by an experiment (from memory); y taken as normal.
 * @throws ProblemError where nothing was varied or measured
 */
export function nextSample(samples: readonly PaintSample[], property: Property): SampleProposal {
  const proposals = variedKeys(samples).flatMap((key) => {
    const points = pointsOf(samples, key, property)
    const range = points.length < 2 ? null : rangeOf(points)
    return range === null ? [] : [{ ...nextAmount(response(points, ...range)), key }]
  })
  const best = proposals.sort((a, b) => b.information_bit - a.information_bit)[0]
  if (best !== undefined) return best
  throw stop(
    'notebook-nothing-varied',
    'No amount differs between two samples on which this was measured.',
    'Copy a sample, change one thing by about a third, paint it and measure it.',
  )
}

/** The amount that says most about where a response is largest. */
export function nextAmount(curve: Response): Omit<SampleProposal, 'key'> {
  const { from, to, coefficients, covariance, sampleSd } = curve
  const grid = Array.from({ length: CANDIDATES }, (_, i) => from + ((to - from) * i) / (CANDIDATES - 1))
  const rows = grid.map((x) => powers(x, from, to))
  const factor = lowerFactor(covariance)
  const random = seededRandom(23)
  const curves = Array.from({ length: DRAWS }, () => {
    const z = factor.map(() => gaussian(random))
    const drawn = factor.map((row, i) => row.reduce((sum, l, j) => sum + l * z[j]!, coefficients[i]!))
    return rows.map((row) => row.reduce((sum, a, i) => sum + a * drawn[i]!, 0))
  })
  const bins = curves.map((values) => {
    const best = values.indexOf(Math.max(...values))
    return Math.min(BINS - 1, Math.floor((BINS * best) / CANDIDATES))
  })
  const said = rows.map((row, i) => {
    const noise = sampleSd ** 2
    let within = 0
    for (let bin = 0; bin < BINS; bin++) {
      const ys = curves.filter((_, k) => bins[k] === bin).map((values) => values[i]!)
      if (ys.length < 2) continue
      within += (ys.length / DRAWS) * 0.5 * Math.log2(variance(ys) + noise)
    }
    return 0.5 * Math.log2(spread(row, covariance) + noise) - within
  })
  const at = said.indexOf(Math.max(...said))
  const expected = rows[at]!.reduce((sum, a, i) => sum + a * coefficients[i]!, 0)
  return { x: grid[at]!, information_bit: Math.max(0, said[at]!), expected }
}

function variance(values: readonly number[]): number {
  const mean = values.reduce((sum, v) => sum + v, 0) / values.length
  return values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / values.length
}

/** Lower triangle whose square is a covariance (Cholesky). */
function lowerFactor(covariance: readonly (readonly number[])[]): number[][] {
  const lower = covariance.map((row) => row.map(() => 0))
  covariance.forEach((row, i) => {
    for (let j = 0; j <= i; j++) {
      let rest = row[j]!
      for (let k = 0; k < j; k++) rest -= lower[i]![k]! * lower[j]![k]!
      lower[i]![j] = i === j ? Math.sqrt(Math.max(0, rest)) : rest / lower[j]![j]!
    }
  })
  return lower
}
