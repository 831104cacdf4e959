import { LinearSystem } from '#model/basis/numbers'
import type { SampleValue } from './sample.ts'

/** One sample's amount of what was varied, and the property measured on it. */
export interface ResponsePoint {
  readonly x: number
  readonly y: SampleValue
}

/** A quadratic with its doubt, over amounts brought to −1 … 1. */
export interface Response {
  /** Amounts that become −1 and 1. */
  readonly from: number
  readonly to: number
  readonly coefficients: readonly [number, number, number]
  /** Covariance of the coefficients. */
  readonly covariance: readonly (readonly number[])[]
  /** Error of one more sample, one standard deviation: its measurement and what differs from board to board. */
  readonly sampleSd: number
}

/**
 * Before any sample: a property moves by 0.1 over the range tried, and bends as much (one standard deviation); its
 * level is open. Common practice, no source.
 */
const PRIOR_SD = [1, 0.1, 0.1] as const
/** What differs between boards of one recipe, one standard deviation, –. Common practice, no source. */
const BOARD_SD = 0.004
/** Standard deviations to the ends of a 90 % interval. */
export const NINETY_SD = 1.645

/** A curve needs so many samples at so many different amounts. */
export const LEAST_SAMPLES = 4
export const LEAST_AMOUNTS = 3

/** Enough for a curve to be drawn. */
export const enough = (points: readonly ResponsePoint[]): boolean =>
  points.length >= LEAST_SAMPLES && new Set(points.map(({ x }) => x)).size >= LEAST_AMOUNTS

/**
 * Quadratic response by weighted least squares with weak priors (normal, of known errors):
 *   C = (XᵀW X + P⁻¹)⁻¹,  β = C (XᵀW y + P⁻¹ m)
 * Source: Gelman et al., Bayesian Data Analysis (from memory).
 * @throws RangeError without points or where from = to
 */
export function response(points: readonly ResponsePoint[], from: number, to: number): Response {
  if (points.length === 0 || !(to > from)) throw new RangeError('a response needs points and a range')
  const level = points.reduce((sum, { y }) => sum + y.value, 0) / points.length
  const normal = PRIOR_SD.map((sd, i) => PRIOR_SD.map((_, j) => (i === j ? 1 / sd ** 2 : 0)))
  const right = [level / PRIOR_SD[0] ** 2, 0, 0]
  for (const { x, y } of points) {
    const row = powers(x, from, to)
    const weight = 1 / sdOf(y) ** 2
    row.forEach((a, i) => {
      right[i]! += weight * a * y.value
      row.forEach((b, j) => (normal[i]![j]! += weight * a * b))
    })
  }
  const covariance = inverse(normal)
  const coefficients = covariance.map((row) => row.reduce((sum, c, j) => sum + c * right[j]!, 0))
  const sampleSd = points.reduce((sum, { y }) => sum + sdOf(y), 0) / points.length
  return { from, to, coefficients: coefficients as [number, number, number], covariance, sampleSd }
}

/** The curve at an amount with its 90 % band. */
export function responseAt({ from, to, coefficients, covariance }: Response, x: number): SampleValue {
  const row = powers(x, from, to)
  const value = row.reduce((sum, a, i) => sum + a * coefficients[i]!, 0)
  const half = NINETY_SD * Math.sqrt(spread(row, covariance))
  return { value, low: value - half, high: value + half }
}

/** Variance that a covariance of coefficients gives at a row. */
export const spread = (row: readonly number[], covariance: readonly (readonly number[])[]): number =>
  row.reduce((sum, a, i) => sum + row.reduce((inner, b, j) => inner + a * b * covariance[i]![j]!, 0), 0)

/** 1, u, u² of an amount brought to −1 … 1. */
export function powers(x: number, from: number, to: number): [number, number, number] {
  const u = (2 * (x - from)) / (to - from) - 1
  return [1, u, u * u]
}

const sdOf = ({ low, high }: SampleValue) => Math.hypot((high - low) / 2 / NINETY_SD, BOARD_SD)

/** Inverse of a positive definite matrix. */
function inverse(matrix: readonly (readonly number[])[]): number[][] {
  const size = matrix.length
  const system = new LinearSystem(size)
  matrix.forEach((row, i) => row.forEach((value, j) => (system.matrix[i * size + j] = value)))
  system.factor()
  return Array.from({ length: size }, (_, k) => {
    const unit = Float64Array.from({ length: size }, (_, i) => (i === k ? 1 : 0))
    const column = new Float64Array(size)
    system.solve(unit, column)
    return [...column]
  })
}
