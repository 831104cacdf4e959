import { levenbergMarquardt } from 'ml-levenberg-marquardt'
import { Matrix, inverse } from 'ml-matrix'
import { choleskyFactor, whitenedBy } from './whitening.ts'

/** One unknown, with what is known of it before any reading. */
export interface FitParameter {
  readonly name: string
  readonly priorMean: number
  /** One standard deviation of the prior: wide where nothing is known. */
  readonly priorSd: number
  readonly min: number
  readonly max: number
}

/** A weighted least-squares problem whose reading errors may be shared between readings. */
export interface FitProblem {
  readonly parameters: readonly FitParameter[]
  readonly measured: ArrayLike<number>
  /** Predicted readings for these parameter values. */
  predict(values: readonly number[]): Float64Array
  /**
   * Error blocks: rows that share errors are in one block; rows of different blocks are independent. Each is the
   * covariance of its rows, in the unit of the reading squared, at these parameter values.
   */
  errorBlocks(values: readonly number[]): readonly ErrorBlock[]
  /** ∂predict/∂value, one array of rows per parameter; central differences of `predict` when left out. */
  slopes?(values: readonly number[]): Float64Array[]
}

export interface ErrorBlock {
  readonly rows: readonly number[]
  readonly covariance: Matrix
}

export interface FitResult {
  readonly values: number[]
  /** P × P, priors included, scaled by the scatter found. */
  readonly covariance: Matrix
  readonly standardErrors: number[]
  /** Information of the readings alone (no prior) in units of prior sd: P × P. */
  readonly readingInformation: Matrix
  /** (measured − predicted), whitened: unit variance when the stated errors are right. */
  readonly whitened: Float64Array
  readonly predicted: Float64Array
  /** Σ whitened². */
  readonly chiSquare: number
  /** Σ ((value − prior mean)/prior sd)². */
  readonly priorPenalty: number
  /** Readings less the parameters they really decided. */
  readonly freedom: number
  /** Scatter found over scatter stated, squared. */
  readonly scale: number
  /** Degrees of freedom for intervals: readings and the stated errors together. */
  readonly intervalFreedom: number
}

/** The stated reading errors count like this many earlier readings when scatter is judged. */
const STATED_ERROR_FREEDOM = 10

/** Most pairs of iterations, and the step (in prior standard deviations) below which the search rests. */
const BURSTS = 6
const STILL = 2e-3

/**
 * Generalised least squares with weak priors. The library's Levenberg–Marquardt runs on whitened readings plus one
 * row per prior, in units of each prior's standard deviation, twice: the errors' weights are taken again at the
 * first solution. Covariance = (JᵀΣ⁻¹J/s² + P⁻¹)⁻¹ with s² = (ν₀ + χ²)/(ν₀ + freedom).
 * Source: Gelman et al., Bayesian Data Analysis, 3rd ed., §14 (regression with unequal variances), from memory.
 */
export function weightedFit(problem: FitProblem): FitResult {
  let values = problem.parameters.map((p) => p.priorMean)
  for (let pass = 0; pass < 2; pass++) values = onePass(problem, values)
  return summary(problem, values)
}

function onePass(problem: FitProblem, at: readonly number[]): number[] {
  const { parameters } = problem
  const whiten = whitenerAt(problem, at)
  const rows = problem.measured.length
  const natural = (u: readonly number[]) =>
    u.map((v, i) => parameters[i]!.priorMean + v * parameters[i]!.priorSd)
  let u = at.map((v, i) => (v - parameters[i]!.priorMean) / parameters[i]!.priorSd)
  const targets = new Float64Array(rows + parameters.length)
  targets.set(whiten(Float64Array.from(problem.measured)))
  const data = { x: Array.from(targets, (_, i) => i), y: targets }
  const predictWhite = (v: readonly number[]) => {
    const predicted = whiten(problem.predict(natural(v)))
    return (row: number) => (row < rows ? predicted[row]! : v[row - rows]!)
  }
  const slopesWhite = (v: readonly number[]) => {
    const slopes = slopesAt(problem, natural(v)).map((column, k) =>
      whiten(column.map((slope) => slope * parameters[k]!.priorSd)),
    )
    return (row: number) => slopes.map((column, k) => (row < rows ? column[row]! : row - rows === k ? 1 : 0))
  }
  // The library goes on to its last iteration, so it is asked for two at a time until nothing moves.
  for (let burst = 0; burst < BURSTS; burst++) {
    const fitted = levenbergMarquardt(data, predictWhite, {
      initialValues: u,
      minValues: parameters.map((p) => (p.min - p.priorMean) / p.priorSd),
      maxValues: parameters.map((p) => (p.max - p.priorMean) / p.priorSd),
      jacobianFunction: slopesWhite,
      damping: 1e-3,
      errorTolerance: 1e-6,
      maxIterations: 2,
    })
    const moved = Math.max(...fitted.parameterValues.map((v, i) => Math.abs(v - u[i]!)))
    u = fitted.parameterValues
    if (moved < STILL) break
  }
  return natural(u)
}

function summary(problem: FitProblem, values: number[]): FitResult {
  const { parameters } = problem
  const whiten = whitenerAt(problem, values)
  const predicted = problem.predict(values)
  const whitened = whiten(Float64Array.from(problem.measured, (m, i) => m - predicted[i]!))
  const columns = slopesAt(problem, values).map((column, k) =>
    whiten(column.map((slope) => slope * parameters[k]!.priorSd)),
  )
  const readingInformation = gram(columns)
  const chiSquare = whitened.reduce((sum, r) => sum + r * r, 0)
  const freedom = whitened.length - decided(readingInformation)
  const scale = (STATED_ERROR_FREEDOM + chiSquare) / (STATED_ERROR_FREEDOM + freedom)
  const identity = Matrix.eye(parameters.length)
  const scaled = inverse(Matrix.add(Matrix.div(readingInformation, scale), identity))
  const covariance = new Matrix(
    parameters.map((p, i) => parameters.map((q, j) => scaled.get(i, j) * p.priorSd * q.priorSd)),
  )
  return {
    values,
    covariance,
    standardErrors: parameters.map((_, i) => Math.sqrt(covariance.get(i, i))),
    readingInformation,
    whitened,
    predicted,
    chiSquare,
    priorPenalty: values.reduce(
      (sum, v, i) => sum + ((v - parameters[i]!.priorMean) / parameters[i]!.priorSd) ** 2,
      0,
    ),
    freedom,
    scale,
    intervalFreedom: STATED_ERROR_FREEDOM + freedom,
  }
}

/**
 * Covariance that such readings would give at these values, priors included and errors as stated: what an extra
 * reading is worth before it is taken. `measured` is not looked at.
 */
export function expectedCovariance(problem: FitProblem, values: readonly number[]): Matrix {
  const { parameters } = problem
  const whiten = whitenerAt(problem, values)
  const columns = slopesAt(problem, values).map((column) => whiten(column))
  const prior = Matrix.diag(parameters.map((p) => 1 / p.priorSd ** 2))
  return inverse(Matrix.add(gram(columns), prior))
}

/** Parameters that readings rather than priors decide: trace of I (I + 1)⁻¹ in prior units. */
function decided(information: Matrix): number {
  const n = information.rows
  return information.mmul(inverse(Matrix.add(information, Matrix.eye(n)))).trace()
}

function gram(columns: readonly Float64Array[]): Matrix {
  return new Matrix(columns.map((a) => columns.map((b) => a.reduce((sum, v, i) => sum + v * b[i]!, 0))))
}

/** ∂predict/∂value by parameter, from the problem or by central differences of 1 % of the prior's width. */
export function slopesAt(problem: FitProblem, values: readonly number[]): Float64Array[] {
  if (problem.slopes) return problem.slopes(values)
  return problem.parameters.map((parameter, k) => {
    const { low, high } = stepAbout(parameter, values[k]!)
    const at = (value: number) => problem.predict(values.map((v, i) => (i === k ? value : v)))
    const below = at(low)
    return at(high).map((above, i) => (above - below[i]!) / (high - low))
  })
}

/** Ends of a small step about a value, 1 % of the prior's width to each side, held inside the limits. */
export function stepAbout(parameter: FitParameter, value: number): { low: number; high: number } {
  const step = 0.01 * parameter.priorSd
  return {
    low: Math.max(parameter.min, value - step),
    high: Math.min(parameter.max, value + step),
  }
}

function whitenerAt(problem: FitProblem, values: readonly number[]) {
  const factors = problem.errorBlocks(values).map(({ rows, covariance }) => ({
    rows,
    factor: choleskyFactor(covariance),
  }))
  return (residuals: Float64Array) => whitenedBy(factors, residuals)
}
