import { LuDecomposition, Matrix } from 'ml-matrix'
import {
  weightedFit,
  type ErrorBlock,
  type FitParameter,
  type FitProblem,
  type FitResult,
} from '#model/basis/numbers'
import { runningHours } from './log.ts'
import { AS_DESIGNED, departedHours, predictedFall_K, type AsBuiltInputs, type Departure } from './plant.ts'
import type { PanelHours } from '#model/panels/plate'

/** What may be wrong with a built panel. */
export const FAULTS = ['none', 'lowFlow', 'dirty', 'shading'] as const
export type Fault = (typeof FAULTS)[number]

/** One explanation of the log, fitted. */
export interface Explanation {
  readonly fault: Fault
  readonly departure: Departure
  /** Names of the fitted departures, in the order of the fit. */
  readonly fitted: readonly (keyof Departure)[]
  readonly result: FitResult
  /** Logarithm of the evidence (Laplace): how well it explains, less what its freedom costs. */
  readonly logEvidence: number
}

type Known = Pick<FitParameter, 'priorSd' | 'min' | 'max'>

/** Doubts every sound panel has: shelter, sky formula, sensor pair. */
const ALWAYS: Partial<Record<keyof Departure, Known>> = {
  windLog: { priorSd: 0.35, min: -1.5, max: 1.2 },
  sky_Wm2: { priorSd: 6, min: -30, max: 30 },
  offset_K: { priorSd: 0.1, min: -0.5, max: 0.5 },
}
/** Flow of a sound panel: near the design, nearer with a meter. Common practice, no source. */
const SOUND_FLOW: Known = { priorSd: 0.08, min: -0.3, max: 0.3 }
const METERED_FLOW: Known = { priorSd: 0.04, min: -0.15, max: 0.15 }
/** What each fault sets free, and how far it usually goes. Common practice, no source. */
const SET_FREE: Readonly<Record<Fault, Partial<Record<keyof Departure, Known>>>> = {
  none: {},
  lowFlow: { flowLog: { priorSd: 0.6, min: -2.5, max: 0.3 } },
  dirty: {
    soil_frac: { priorSd: 0.1, min: 0, max: 0.6 },
    veil_frac: { priorSd: 0.1, min: 0, max: 0.8 },
  },
  shading: { shade_frac: { priorSd: 0.35, min: 0, max: 1 } },
}

/** Fits one explanation. `shadeFrom`: hour the shading begins (only for `shading`). */
export function explain(
  inputs: AsBuiltInputs,
  blocks: readonly ErrorBlock[],
  fault: Fault,
  shadeFrom = 0,
): Explanation {
  const problem = problemOf(inputs, blocks, fault, shadeFrom)
  const result = weightedFit(problem)
  return {
    fault,
    fitted: problem.fitted,
    departure: problem.departureOf(result.values),
    result,
    logEvidence: logEvidence(result),
  }
}

/**
 * Laplace's approximation, priors of unit width: −½ (χ² + penalty) − ½ ln det(I + 1), but for constants that all
 * explanations share. Source: MacKay 2003, Information Theory, Inference, and Learning Algorithms, ch. 27–28.
 */
function logEvidence(result: FitResult): number {
  const information = result.readingInformation
  const determinant = new LuDecomposition(Matrix.add(information, Matrix.eye(information.rows))).determinant
  return -0.5 * (result.chiSquare + result.priorPenalty) - 0.5 * Math.log(determinant)
}

interface LogProblem extends FitProblem {
  readonly fitted: readonly (keyof Departure)[]
  departureOf(values: readonly number[]): Departure
}

function problemOf(
  inputs: AsBuiltInputs,
  blocks: readonly ErrorBlock[],
  fault: Fault,
  shadeFrom: number,
): LogProblem {
  const soundFlow = inputs.log.flow_kgs === null ? SOUND_FLOW : METERED_FLOW
  const free = { ...ALWAYS, flowLog: soundFlow, ...SET_FREE[fault] }
  const fitted = Object.keys(free) as (keyof Departure)[]
  const parameters = fitted.map((name) => ({ name, priorMean: 0, ...free[name]! }))
  const departureOf = (values: readonly number[]): Departure => ({
    ...AS_DESIGNED,
    shadeFrom,
    ...Object.fromEntries(fitted.map((name, i) => [name, values[i]!])),
  })
  const hoursOf = rememberedHours(inputs)
  return {
    fitted,
    departureOf,
    parameters,
    measured: loggedFall_K(inputs),
    predict: (values) => {
      const departure = departureOf(values)
      return predictedFall_K(inputs, hoursOf(departure), departure)
    },
    errorBlocks: () => blocks,
  }
}

/** Panel hours of the last departure, kept while only flow or sensors change. */
function rememberedHours(inputs: AsBuiltInputs): (departure: Departure) => PanelHours {
  let key = ''
  let kept: PanelHours | null = null
  return (departure) => {
    const { windLog, sky_Wm2, soil_frac, veil_frac, shade_frac } = departure
    const wanted = [windLog, sky_Wm2, soil_frac, veil_frac, shade_frac].join(' ')
    if (kept === null || wanted !== key) {
      kept = departedHours(inputs, departure)
      key = wanted
    }
    return kept
  }
}

/** Measured temperature fall of the fluid (in − out) in the running hours, K. */
export function loggedFall_K(inputs: AsBuiltInputs): Float64Array {
  const { log } = inputs
  return Float64Array.from(runningHours(log), (hour) => log.panelIn_C[hour]! - log.panelOut_C[hour]!)
}
