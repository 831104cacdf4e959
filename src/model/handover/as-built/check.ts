import { agreement, type Agreement } from './agreement.ts'
import { isLarge, type Fault, type RealFault } from './causes.ts'
import { AS_DESIGNED, type Departure } from './departure.ts'
import { diagnose, type Diagnosis, type Explanation } from './diagnose.ts'
import type { AsBuiltInputs } from './inputs-type.ts'
import { inspections, type Inspection } from './inspection.ts'
import { checkLog } from './log.ts'
import { Observed } from './observed.ts'
import { heatShare, hourHeats, type HeatShare } from './shortfall.ts'
import { remaining, type Remaining } from './remaining.ts'
import { refuseSwapped } from './swapped.ts'

/** The built panel against its prediction. */
export interface AsBuiltResult {
  /** Hours judged, in the log's numbering. */
  readonly hours: readonly number[]
  readonly measuredOut_C: Float64Array
  /** As designed, and with the best explanation. */
  readonly predictedOut_C: Float64Array
  readonly explainedOut_C: Float64Array
  /** Heat given off, W, at the metered flow, else at the explained one; and as promised at the design flow. */
  readonly measuredHeat_W: Float64Array
  readonly predictedHeat_W: Float64Array
  readonly outlet: Agreement
  readonly outletExplained: Agreement
  readonly heat: Agreement
  /** Measured heat over what was promised, tested before any cause is looked for. */
  readonly shortfall: HeatShare
  /** The fault named first, or `none`. */
  readonly fault: Fault
  /** All faults named: none, one, or two at once. */
  readonly faults: readonly RealFault[]
  /** How strongly each cause is held, 0…1; two at once count for both. */
  readonly belief: Readonly<Record<Fault, number>>
  /** Causes, the most strongly held first. */
  readonly ranked: readonly RealFault[]
  readonly departure: Departure
  /** Hour from which shading is seen; null without, and for shade at the same hours each day. */
  readonly shadeFrom: number | null
  readonly inspections: readonly Inspection[]
  /** What is left of the promise with the faults named; null when none is. */
  readonly remaining: Remaining | null
}

/** Faults are named only when held at least this strongly that something is wrong. */
const NAMED_BELIEF = 0.9

/**
 * Judges a logger record: the heat against the promise, then the causes that would explain the log, ranked by
 * evidence, singly and two at once, with the departures that go with the best.
 * @throws ProblemError for a log that cannot be judged
 */
export function asBuiltCheck(inputs: AsBuiltInputs): AsBuiltResult {
  checkLog(inputs.log, inputs.weather.hours)
  refuseSwapped(inputs)
  const observed = new Observed(inputs)
  const diagnosis = diagnose(observed)
  const named = namedOf(diagnosis)
  const faults = named.causes.filter((cause) => isLarge(cause, named.departure))
  return resultOf(observed, diagnosis, named, faults)
}

/** The explanation to act on: the strongest with a cause if something is surely wrong and large, else the sound one. */
function namedOf({ explanations, belief }: Diagnosis): Explanation {
  const sound = explanations.find(({ causes }) => causes.length === 0)!
  const best = explanations.find(({ causes }) => causes.length > 0)!
  const large = best.causes.some((cause) => isLarge(cause, best.departure))
  return 1 - belief.none >= NAMED_BELIEF && large ? best : sound
}

/** Held at least so strongly, a sound panel clears a heat that is low but within its errors. */
const CLEARED_BELIEF = 0.8

function cleared(share: HeatShare, { belief }: Diagnosis): HeatShare {
  const clear = share.verdict === 'unclear' && share.share_frac !== null && belief.none >= CLEARED_BELIEF
  return clear ? { ...share, verdict: 'kept' } : share
}

function resultOf(
  observed: Observed,
  diagnosis: Diagnosis,
  best: Explanation,
  faults: readonly RealFault[],
): AsBuiltResult {
  const { inputs, hours } = observed
  const { log } = inputs
  const { departure } = best
  const outOf = (from: Departure) => {
    const rows = observed.predict(from)
    return Float64Array.from(hours, (hour, i) => log.panelIn_C[hour]! - rows[i]!)
  }
  const measuredOut_C = Float64Array.from(hours, (hour) => log.panelOut_C[hour]!)
  const predictedOut_C = outOf(AS_DESIGNED)
  const explainedOut_C = outOf(departure)
  const heats = hourHeats(inputs, Math.exp(departure.flowLog))
  const shortfall = cleared(heatShare(inputs, heats), diagnosis)
  const first = diagnosis.ranked.find((cause) => faults.includes(cause))
  const dated = faults.includes('shading') && departure.dayShadeTo_h === 0
  return {
    hours,
    measuredOut_C,
    predictedOut_C,
    explainedOut_C,
    measuredHeat_W: heats.measured_W,
    predictedHeat_W: heats.promised_W,
    outlet: agreement(predictedOut_C, measuredOut_C),
    outletExplained: agreement(explainedOut_C, measuredOut_C),
    heat: agreement(heats.promised_W, heats.measured_W),
    shortfall,
    fault: first ?? 'none',
    faults,
    belief: diagnosis.belief,
    ranked: diagnosis.ranked,
    departure,
    shadeFrom: dated ? departure.shadeFrom : null,
    inspections: inspections(observed, diagnosis, best, faults, shortfall),
    remaining: faults.length === 0 ? null : remaining(inputs, departure, faults),
  }
}
