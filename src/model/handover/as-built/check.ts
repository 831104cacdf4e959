import { agreement, type Agreement } from './agreement.ts'
import { dayBlocks } from './errors.ts'
import { explain, FAULTS, type Explanation, type Fault } from './hypotheses.ts'
import { inspections, meteredFlowShare, sawSun, type Inspection } from './inspection.ts'
import { checkLog, runningHours } from './log.ts'
import { AS_DESIGNED, departedHours, predictedFall_K, type AsBuiltInputs, type Departure } from './plant.ts'
import { heatShare, type HeatShare } from './shortfall.ts'
import { refuseSwapped } from './swapped.ts'
import { shadingDate } from './shading-date.ts'
import type { ErrorBlock } from '#model/basis/numbers'
import { loopDuty } from '#model/panels/loop'

/** The built panel against its prediction. */
export interface AsBuiltResult {
  /** Hours judged, in the log's numbering. */
  readonly hours: readonly number[]
  readonly measuredOut_C: Float64Array
  /** As designed, and with the best explanation. */
  readonly predictedOut_C: Float64Array
  readonly explainedOut_C: Float64Array
  /** Heat given off, W, at the metered flow, else at the design flow (measured) or the explained one. */
  readonly measuredHeat_W: Float64Array
  readonly predictedHeat_W: Float64Array
  readonly outlet: Agreement
  readonly outletExplained: Agreement
  readonly heat: Agreement
  /** Measured heat over what was promised, tested before any cause is looked for. */
  readonly shortfall: HeatShare
  /** The fault named, or `none`. */
  readonly fault: Fault
  /** How strongly each explanation is held, 0…1, adding to 1. */
  readonly belief: Readonly<Record<Fault, number>>
  readonly departure: Departure
  /** Hour from which shading is seen; null without. */
  readonly shadeFrom: number | null
  readonly inspections: readonly Inspection[]
}

/** Before looking: most new panels are sound. Common practice, no source. */
const PRIOR_BELIEF: Readonly<Record<Fault, number>> = { none: 0.7, lowFlow: 0.1, dirty: 0.1, shading: 0.1 }
/** A fault is named only when held this strongly … */
const NAMED_BELIEF = 0.9
/** … and when it is large enough to matter: flow, dirt (reflectance, emittance), shade. */
const WORTH_NAMING = { flowShare: 0.8, soil_frac: 0.03, veil_frac: 0.08, shade_frac: 0.1 } as const

/**
 * Judges a logger record: prediction as designed against what was logged, then the explanation that the log supports
 * best, with the departures that go with it.
 * @throws ProblemError for a log that cannot be judged
 */
export function asBuiltCheck(inputs: AsBuiltInputs): AsBuiltResult {
  checkLog(inputs.log, inputs.weather.hours)
  refuseSwapped(inputs)
  const blocks = dayBlocks(inputs)
  const sound = explain(inputs, blocks, 'none')
  const date = shadingDate(inputs, blocks, sound)
  const explanations: Explanation[] = [
    sound,
    explain(inputs, blocks, 'lowFlow'),
    explain(inputs, blocks, 'dirty'),
  ]
  if (date !== null) {
    const shaded = explain(inputs, blocks, 'shading', date.shadeFrom)
    explanations.push({ ...shaded, logEvidence: shaded.logEvidence - Math.log(date.tried) })
  }
  const belief = beliefs(explanations)
  const best = named(inputs, explanations, belief)
  const weighed = dayBlocks(inputs, best.departure)
  return resultOf(inputs, explain(inputs, weighed, best.fault, best.departure.shadeFrom), belief, blocks)
}

function beliefs(explanations: readonly Explanation[]): Record<Fault, number> {
  const top = Math.max(...explanations.map((e) => e.logEvidence))
  const weights = Object.fromEntries(FAULTS.map((fault) => [fault, 0])) as Record<Fault, number>
  for (const e of explanations) weights[e.fault] = PRIOR_BELIEF[e.fault] * Math.exp(e.logEvidence - top)
  const sum = FAULTS.reduce((total, fault) => total + weights[fault], 0)
  for (const fault of FAULTS) weights[fault] /= sum
  return weights
}

/** The explanation to act on: the strongest fault if it is sure and large enough, else the sound one. */
function named(
  inputs: AsBuiltInputs,
  explanations: readonly Explanation[],
  belief: Readonly<Record<Fault, number>>,
): Explanation {
  const best = explanations.reduce((a, b) => (belief[b.fault] > belief[a.fault] ? b : a))
  // Without sun, dirt cannot be separated from a dead module or a poor bond: all only take heat away.
  const seen = best.fault !== 'dirty' || sawSun(inputs, runningHours(inputs.log))
  const sure = seen && belief[best.fault] >= NAMED_BELIEF && isLarge(best)
  return sure ? best : explanations[0]!
}

function isLarge({ fault, departure }: Explanation): boolean {
  switch (fault) {
    case 'none':
      return true
    case 'lowFlow':
      return Math.exp(departure.flowLog) < WORTH_NAMING.flowShare
    case 'dirty':
      return departure.soil_frac > WORTH_NAMING.soil_frac || departure.veil_frac > WORTH_NAMING.veil_frac
    case 'shading':
      return departure.shade_frac > WORTH_NAMING.shade_frac
  }
}

function resultOf(
  inputs: AsBuiltInputs,
  best: Explanation,
  belief: Readonly<Record<Fault, number>>,
  blocks: readonly ErrorBlock[],
): AsBuiltResult {
  const { log } = inputs
  const hours = runningHours(log)
  const designedFall = predictedFall_K(inputs, departedHours(inputs, AS_DESIGNED), AS_DESIGNED)
  const out = (fall_K: Float64Array) => fall_K.map((fall, i) => log.panelIn_C[hours[i]!]! - fall)
  const measuredOut_C = Float64Array.from(hours, (hour) => log.panelOut_C[hour]!)
  const predictedOut_C = out(designedFall)
  const explainedOut_C = out(best.result.predicted)
  const { rate_WK, designRate_WK } = heatRates(inputs, hours, best.departure)
  const measuredHeat_W = measuredOut_C.map((t, i) => rate_WK[i]! * (log.panelIn_C[hours[i]!]! - t))
  const predictedHeat_W = designedFall.map((fall, i) => designRate_WK[i]! * fall)
  const flowShare = meteredFlowShare(inputs)
  const lowMeter = flowShare !== null && flowShare < WORTH_NAMING.flowShare
  const fault = best.fault === 'none' && lowMeter ? 'lowFlow' : best.fault
  const shadeFrom = fault === 'shading' ? best.departure.shadeFrom : null
  const shortfall = heatShare(inputs, blocks, { rate_WK, measuredHeat_W, predictedHeat_W })
  return {
    hours,
    measuredOut_C,
    predictedOut_C,
    explainedOut_C,
    measuredHeat_W,
    predictedHeat_W,
    outlet: agreement(predictedOut_C, measuredOut_C),
    outletExplained: agreement(explainedOut_C, measuredOut_C),
    heat: agreement(predictedHeat_W, measuredHeat_W),
    shortfall,
    fault,
    belief,
    departure: best.departure,
    shadeFrom,
    inspections: inspections(inputs, fault, best, hours, shortfall),
  }
}

/** ṁc of each judged hour, W/K: as metered (or as explained where there is no meter), and as designed. */
function heatRates(inputs: AsBuiltInputs, hours: readonly number[], departure: Departure) {
  const designed = loopDuty(inputs.loop, inputs.area_m2)
  const perFlow = designed.capacityRate_WK / designed.flow_kgs
  const metered = inputs.log.flow_kgs
  const explained = designed.capacityRate_WK * Math.exp(departure.flowLog)
  return {
    rate_WK: hours.map((hour) => (metered === null ? explained : metered[hour]! * perFlow)),
    designRate_WK: hours.map((hour) =>
      metered === null ? designed.capacityRate_WK : metered[hour]! * perFlow,
    ),
  }
}
