import { Matrix, solve } from 'ml-matrix'
import { choleskyFactor, whitenedBy, type ErrorBlock } from '#model/basis/numbers'
import { dayRows } from './errors.ts'
import { loggedFall_K, type Explanation } from './hypotheses.ts'
import { runningHours } from './log.ts'
import { departedHours, predictedFall_K, type AsBuiltInputs, type Departure } from './plant.ts'

/** Days needed before and after a date for it to be found. */
const FEWEST_DAYS = 2

/** The date from which shading would explain the log best, and how many dates were tried. */
export interface ShadingDate {
  readonly shadeFrom: number
  readonly tried: number
}

/**
 * Looks for the date by straight-line least squares about the sound explanation: one column per fitted departure, and
 * one of a little shading from that date on. Null when the log is too short for a before and an after.
 */
export function shadingDate(
  inputs: AsBuiltInputs,
  blocks: readonly ErrorBlock[],
  sound: Explanation,
): ShadingDate | null {
  const hours = runningHours(inputs.log)
  const days = dayRows(hours)
  if (days.length < 2 * FEWEST_DAYS) return null
  const factors = blocks.map(({ rows, covariance }) => ({ rows, factor: choleskyFactor(covariance) }))
  const whiten = (column: Float64Array) => whitenedBy(factors, column)
  const columns = departureColumns(inputs, sound)
  const measured = loggedFall_K(inputs)
  const residual = whiten(measured.map((value, i) => value - sound.result.predicted[i]!))
  const known = columns.known.map(whiten)
  let best = { shadeFrom: 0, gain: -Infinity }
  for (let day = FEWEST_DAYS; day <= days.length - FEWEST_DAYS; day++) {
    const shadeFrom = hours[days[day]![0]!]!
    const late = columns.shade.map((value, i) => (hours[i]! >= shadeFrom ? value : 0))
    const gain = gainOf([...known, whiten(late)], residual)
    if (gain > best.gain) best = { shadeFrom, gain }
  }
  return { shadeFrom: best.shadeFrom, tried: days.length - 2 * FEWEST_DAYS + 1 }
}

/** Slopes of the fall with each departure of the sound explanation (in prior widths) and with shading (of 0.35). */
function departureColumns(inputs: AsBuiltInputs, sound: Explanation) {
  const widths: Partial<Record<keyof Departure, number>> = {
    windLog: 0.35,
    sky_Wm2: 6,
    offset_K: 0.1,
    flowLog: 0.08,
  }
  const move = (name: keyof Departure, width: number) => {
    const step = 0.2 * width
    const departure = { ...sound.departure, [name]: sound.departure[name] + step }
    const moved = predictedFall_K(inputs, departedHours(inputs, departure), departure)
    return moved.map((value, i) => (value - sound.result.predicted[i]!) / 0.2)
  }
  return {
    known: sound.fitted.map((name) => move(name, widths[name] ?? 0.1)),
    shade: move('shade_frac', 0.35),
  }
}

/** Fall of χ² + penalty when all columns are fitted with priors of unit width; the last column must be positive. */
function gainOf(columns: readonly Float64Array[], residual: Float64Array): number {
  const dot = (a: Float64Array, b: Float64Array) => a.reduce((sum, v, i) => sum + v * b[i]!, 0)
  const normal = new Matrix(columns.map((a, i) => columns.map((b, j) => dot(a, b) + (i === j ? 1 : 0))))
  const right = Matrix.columnVector(columns.map((a) => dot(a, residual)))
  const step = solve(normal, right)
  if (step.get(columns.length - 1, 0) <= 0) return 0
  return right.transpose().mmul(step).get(0, 0)
}
