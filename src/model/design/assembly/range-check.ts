import { figure, ProblemError, said, words, type Problem } from '#model/basis/words'
import { builtDuty } from '#model/panels/loop'
import type { Prepared } from './prepared.ts'
import { loopSpecOf } from './to-specs.ts'

/** What a panel sheds on an ordinary good night, W/m² (references of the evidence table: 40 to 100). */
const NIGHT_HEAT_Wm2 = 40
/**
 * The pump's share of that beyond which more panel gives less: in pipes of one bore its power rises with the cube of the
 * flow, and A q − P(A) is highest where P is a third of A q.
 */
const MOST_SHARE = 1 / 3

/**
 * An own area that is out of range before it is run: its pump would warm the loop by more than more panel could cool it.
 * @returns the problem, or null where the pump is in range or the area is not given
 */
export function outOfRange({
  scenario,
  flow_kgsm2,
}: Pick<Prepared, 'scenario' | 'flow_kgsm2'>): Problem | null {
  const { autoArea, area_m2 } = scenario.target
  if (autoArea) return null
  const duty = builtDuty({ ...loopSpecOf(scenario), flow_kgsm2: flow_kgsm2(area_m2) }, area_m2)
  if (duty.pumpPower_W <= MOST_SHARE * NIGHT_HEAT_Wm2 * area_m2) return null
  return {
    code: 'pump-out-of-range',
    severity: 'error',
    ...said(
      words`The pump would need ${figure(duty.pumpPower_W, 'W')} to make ${figure(duty.pressureDrop_Pa, 'Pa')} in this loop, and all of it warms the fluid: more than a third of what ${figure(area_m2, 'm2')} of panel shed on a good night, so that more panel would give less cold.`,
    ),
    remedy: 'Let bore and flow be chosen, or use wider or shorter pipes, or less flow.',
    place: { field: 'loop.pipeInnerDiameter_m' },
  }
}

/** @throws ProblemError where an own area is out of range */
export function refuseOutOfRange(prepared: Prepared): void {
  const problem = outOfRange(prepared)
  if (problem !== null) throw new ProblemError([problem])
}
