import type { Scenario } from '#model/design/scenario'
import { loopSpecOf } from './to-specs.ts'
import { chosenFlow } from '#model/design/sizing'

/** Areas at which the knee is worked out are this factor apart, among them this one, m². */
const APART = 2
const AMONG_m2 = 12
/** Smaller areas take the flow of this one, m². */
const LEAST_m2 = 0.05

/** Flow per panel area at an area, kg/s m². */
export type DesignFlow = (area_m2: number) => number

/**
 * Flow per panel area that a design of a scenario is run with at an area, searched or built: the user's own, or that at the
 * knee of heat against pump power. The knee is worked out at areas a factor of two apart and read between them on
 * logarithms, so that it follows the area without a jump.
 */
export function designFlow(scenario: Scenario): DesignFlow {
  const { autoFlow, flow_kgsm2 } = scenario.loop
  if (!autoFlow) return () => flow_kgsm2
  const spec = loopSpecOf(scenario)
  const { startDifference_K, stopDifference_K } = scenario.plan
  const stop_frac = stopDifference_K / startDifference_K
  const known = new Map<number, number>()
  const logKnee = (place: number): number => {
    const found = known.get(place) ?? Math.log(chosenFlow(spec, AMONG_m2 * APART ** place, stop_frac))
    known.set(place, found)
    return found
  }
  return (area_m2) => {
    const place = Math.log(Math.max(area_m2, LEAST_m2) / AMONG_m2) / Math.log(APART)
    const below = Math.floor(place)
    const share = place - below
    return Math.exp((1 - share) * logKnee(below) + (share > 0 ? share * logKnee(below + 1) : 0))
  }
}
