import type { Scenario } from '#model/design/scenario'
import { loopSpecOf } from './to-specs.ts'
import { flowKnee, type SizingResult } from '#model/design/sizing'

/** Pump power is judged for the knee of the flow at this panel area, whatever is built, m². */
const REFERENCE_AREA_m2 = 12

export interface DesignFlow {
  readonly flow_kgsm2: number
  readonly flowRows: SizingResult['flowKnee']
}

/** Flow per panel area that a scenario is designed, and its built panel judged, with: the knee or the user's own. */
export function designFlow(scenario: Scenario): DesignFlow {
  const { autoFlow, flow_kgsm2 } = scenario.loop
  const knee = flowKnee(loopSpecOf(scenario), REFERENCE_AREA_m2)
  return { flow_kgsm2: autoFlow ? knee.flow_kgsm2 : flow_kgsm2, flowRows: knee.rows }
}
