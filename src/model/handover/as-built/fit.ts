import { Matrix, solve, LuDecomposition } from 'ml-matrix'
import { choleskyFactor, whitenedBy } from '#model/basis/numbers'
import type { Free } from './causes.ts'
import type { Departure } from './departure.ts'
import { HOUR_ERRORS } from './errors.ts'
import type { Observed } from './observed.ts'

/** One explanation of the log, fitted. */
export interface Fitted {
  readonly departure: Departure
  readonly keys: readonly (keyof Departure)[]
  /** Whitened residuals (rows) and slopes with each key, per prior width. */
  readonly residual: Float64Array
  readonly columns: readonly Float64Array[]
  readonly chiSquare: number
  readonly penalty: number
  /** Logarithm of the evidence: how well it explains, less what its freedom costs. */
  readonly logEvidence: number
  /** Covariance of the departures in units of their prior widths. */
  readonly covariance: Matrix
  readonly whitener: Whitener
  /** Slopes of all rows with each key, per unit. */
  readonly slope: ReadonlyMap<keyof Departure, Float64Array>
}

export interface Whitener {
  readonly logDeterminant: number
  whiten(column: Float64Array): Float64Array
}

/** The stated errors count like this many readings when scatter is judged. */
const STATED_FREEDOM = 20
/** Rounds of the fit: the slopes of a cause are taken again in each, those of doubts once. */
const ROUNDS = 3
/** Step of the slopes, in prior widths. */
const STEP = 0.04
/** Scatter of the airy share over its mean, from hour to hour. Common practice, no source. */
const AIR_SCATTER = 0.6

/** Slopes of all rows with these departures about a point, per unit of each. */
export function slopes(
  observed: Observed,
  about: Departure,
  free: Free,
  keys: readonly (keyof Departure)[],
  base: Float64Array,
): Map<keyof Departure, Float64Array> {
  return new Map(
    keys.map((key) => {
      const { sd, max } = free[key]!
      const step = about[key] + STEP * sd > max ? -STEP * sd : STEP * sd
      const moved = observed.predict({ ...about, [key]: about[key] + step })
      return [key, moved.map((value, i) => (value - base[i]!) / step)] as const
    }),
  )
}

/**
 * Errors of the rows: hour and night errors of sky, wind and sun shared by what they move, each row's own noise, and
 * what air does from hour to hour.
 */
export function whitenerOf(
  observed: Observed,
  about: Departure,
  slope: ReadonlyMap<keyof Departure, Float64Array>,
): Whitener {
  const { rows, inputs } = observed
  const [sky, wind, sun] = (['sky_Wm2', 'windLog', 'sunGain_frac'] as const).map((key) => slope.get(key)!)
  const airy = slope.get('airy_frac')
  const air = (i: number) => AIR_SCATTER * about.airy_frac * (airy?.[i] ?? 0)
  const nights = new Map<number, number[]>()
  rows.forEach(({ night }, i) => nights.set(night, [...(nights.get(night) ?? []), i]))
  const covariance = (i: number, j: number) => {
    const day = sky![i]! * sky![j]! * HOUR_ERRORS.skyDay_Wm2 ** 2
    const own = i === j ? rows[i]!.noise ** 2 : 0
    const { hour } = rows[i]!
    if (hour < 0 || hour !== rows[j]!.hour) return day + own
    const cloud = HOUR_ERRORS.cloudSky_Wm2 * inputs.weather.cloud_frac[hour]!
    const skyHour_Wm2 = Math.hypot(HOUR_ERRORS.skyHour_Wm2, cloud)
    return (
      day +
      own +
      sky![i]! * sky![j]! * skyHour_Wm2 ** 2 +
      wind![i]! * wind![j]! * HOUR_ERRORS.windLog ** 2 +
      sun![i]! * sun![j]! * HOUR_ERRORS.sun_frac ** 2 +
      air(i) * air(j)
    )
  }
  const factors = [...nights.values()].map((block) => ({
    rows: block,
    factor: choleskyFactor(new Matrix(block.map((i) => block.map((j) => covariance(i, j))))),
  }))
  let logDeterminant = 0
  for (const { factor } of factors)
    for (let i = 0; i < factor.rows; i++) logDeterminant += 2 * Math.log(factor.get(i, i))
  return { logDeterminant, whiten: (column) => whitenedBy(factors, column) }
}

/**
 * Fits one explanation from a start by Gauss and Newton with priors of unit width, and weighs it: the readings are
 * taken as drawn from a Student distribution whose scale the stated errors know about as well as twenty readings
 * would, the fitted departures integrated out by Laplace's approximation.
 * @param near  a fit whose errors and slopes of doubts are taken over: for a second cause beside a first
 * Source: MacKay 2003, Information Theory, Inference, and Learning Algorithms, ch. 24, 27 and 28.
 */
export function fitted(
  observed: Observed,
  free: Free,
  doubts: Free,
  start: Departure,
  near?: Pick<Fitted, 'slope' | 'whitener'>,
): Fitted {
  const all: Free = { ...doubts, ...free }
  const keys = Object.keys(all) as (keyof Departure)[]
  const own = Object.keys(free) as (keyof Departure)[]
  let at = start
  let base = observed.predict(at)
  const known = near?.slope ?? new Map<keyof Departure, Float64Array>()
  const open = keys.filter((key) => own.includes(key) || !known.has(key))
  let slope = new Map([...known, ...slopes(observed, at, all, open, base)])
  const whitener = near?.whitener ?? whitenerOf(observed, at, slope)
  let columns = keys.map((key) => whitener.whiten(scaled(slope.get(key)!, all[key]!.sd)))
  for (let round = 0; round < ROUNDS; round++) {
    if (round > 0 && own.length > 0) {
      slope = new Map([...slope, ...slopes(observed, at, all, own, base)])
      columns = keys.map((key, k) =>
        own.includes(key) ? whitener.whiten(scaled(slope.get(key)!, all[key]!.sd)) : columns[k]!,
      )
    }
    const residual = whitener.whiten(minus(observed.measured, base))
    const step = boundedStep(columns, residual, keys, all, at)
    at = { ...at, ...Object.fromEntries(keys.map((key, k) => [key, at[key] + step[k]! * all[key]!.sd])) }
    base = observed.predict(at)
    if (Math.max(...step.map(Math.abs)) < 0.01) break
  }
  const residual = whitener.whiten(minus(observed.measured, base))
  return { ...weighed(at, keys, all, residual, columns, whitener), slope }
}

function weighed(
  departure: Departure,
  keys: readonly (keyof Departure)[],
  free: Free,
  residual: Float64Array,
  columns: readonly Float64Array[],
  whitener: Whitener,
): Omit<Fitted, 'slope'> {
  const chiSquare = dot(residual, residual)
  const penalty = keys.reduce((sum, key) => sum + (departure[key] / free[key]!.sd) ** 2, 0)
  const information = normal(columns)
  const determinant = new LuDecomposition(information).determinant
  const n = residual.length
  const logEvidence =
    -0.5 * whitener.logDeterminant -
    0.5 * Math.log(determinant) -
    0.5 * (STATED_FREEDOM + n) * Math.log1p((chiSquare + penalty) / STATED_FREEDOM)
  const covariance = solve(information, Matrix.eye(information.rows))
  return { departure, keys, residual, columns, chiSquare, penalty, logEvidence, covariance, whitener }
}

/** The step to the minimum of residuals and priors, held to the bounds, in prior widths. */
function boundedStep(
  columns: readonly Float64Array[],
  residual: Float64Array,
  keys: readonly (keyof Departure)[],
  free: Free,
  at: Departure,
): number[] {
  const information = normal(columns)
  const right = columns.map((column, k) => dot(column, residual) - at[keys[k]!] / free[keys[k]!]!.sd)
  const held = new Map<number, number>()
  for (;;) {
    const open = keys.map((_, k) => k).filter((k) => !held.has(k))
    const step = keys.map((_, k) => held.get(k) ?? 0)
    if (open.length > 0) {
      const matrix = new Matrix(open.map((i) => open.map((j) => information.get(i, j))))
      const rest = open.map(
        (i) => right[i]! - [...held].reduce((s, [j, v]) => s + information.get(i, j) * v, 0),
      )
      const solved = solve(matrix, Matrix.columnVector(rest))
      open.forEach((k, row) => (step[k] = solved.get(row, 0)))
    }
    const before = held.size
    for (const k of open) {
      const { sd, min, max } = free[keys[k]!]!
      const to = at[keys[k]!] + step[k]! * sd
      if (to < min) held.set(k, (min - at[keys[k]!]) / sd)
      else if (to > max) held.set(k, (max - at[keys[k]!]) / sd)
    }
    if (held.size === before) return step
  }
}

/** Fall of χ² and penalty if one more departure (a whitened column of unit prior width) were free as well. */
export function gainOfOneMore(
  { residual, columns, covariance }: Fitted,
  column: Float64Array,
): { readonly gain: number; readonly size: number } {
  const across = columns.map((own) => dot(own, column))
  const through = covariance.mmul(Matrix.columnVector(across))
  const rest = 1 + dot(column, column) - across.reduce((s, v, k) => s + v * through.get(k, 0), 0)
  const size = dot(column, residual) / rest
  return { gain: size * size * rest, size }
}

export const minus = (a: Float64Array, b: Float64Array) => a.map((value, i) => value - b[i]!)
export const scaled = (a: Float64Array, by: number) => a.map((value) => value * by)
export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!
  return sum
}

function normal(columns: readonly Float64Array[]): Matrix {
  return new Matrix(columns.map((a, i) => columns.map((b, j) => dot(a, b) + (i === j ? 1 : 0))))
}
