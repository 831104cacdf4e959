import { figure, ProblemError, said, words, type Problem } from '#model/basis/words'
import { isTank } from '#model/building/store'
import { builtDuty } from '#model/panels/loop'
import type { Prepared } from './prepared.ts'
import { loopSpecOf } from './to-specs.ts'

/** What a panel sheds on an ordinary good night, W/m² (references of the evidence table: 40 to 100), and how much warmer than its plate at rest it then is, K. */
const NIGHT_HEAT_Wm2 = 40
const NIGHT_DIFFERENCE_K = 10
/** A pump's power rises with the cube of the flow in pipes of one bore: what more panel costs is this many times its mean. */
const CUBE = 3

/**
 * An own area that is out of range before it is run: its pump would warm the loop by more than more panel could cool it.
 * What A panels shed is q A, less by what lies in series with them: the plate's own conductance, and the pipes in a mass
 * or the coil in the air where there is no tank, q A/(1 + A u/UA). More panel gives more cold while the slope of that is
 * above the slope of the pump's power.
 * @returns the problem, or null where the pump is in range or the area is not given
 */
export function outOfRange({
  scenario,
  flow_kgsm2,
}: Pick<Prepared, 'scenario' | 'flow_kgsm2'>): Problem | null {
  const { autoArea, area_m2 } = scenario.target
  if (autoArea || area_m2 <= 0) return null
  const duty = builtDuty({ ...loopSpecOf(scenario), flow_kgsm2: flow_kgsm2(area_m2) }, area_m2)
  const plate_Wm2K = NIGHT_HEAT_Wm2 / NIGHT_DIFFERENCE_K
  const panel_Wm2K = 1 / (1 / plate_Wm2K + 1 / duty.fluidToPlate_Wm2K)
  const { kind, delivery_WK } = scenario.store
  const behind = isTank(kind) ? 0 : (panel_Wm2K * area_m2) / delivery_WK
  const shed_W = (panel_Wm2K * NIGHT_DIFFERENCE_K * area_m2) / (1 + behind)
  const more_Wm2 = (panel_Wm2K * NIGHT_DIFFERENCE_K) / (1 + behind) ** 2
  if (CUBE * duty.pumpPower_W <= more_Wm2 * area_m2) return null
  return {
    code: 'pump-out-of-range',
    severity: 'error',
    ...said(
      words`The pump would need ${figure(duty.pumpPower_W, 'W')} to make ${figure(duty.pressureDrop_Pa, 'Pa')} in this loop, and all of it warms the fluid: too much beside the ${figure(shed_W, 'W')} that ${figure(area_m2, 'm2')} of panel shed through it on a good night, so that more panel would give less cold.`,
    ),
    remedy:
      'Let bore and flow be chosen, or use wider or shorter pipes, less flow, less panel, or more delivery into the mass.',
    place: { field: 'loop.pipeInnerDiameter_m' },
  }
}

/** @throws ProblemError where an own area is out of range */
export function refuseOutOfRange(prepared: Prepared): void {
  const problem = outOfRange(prepared)
  if (problem !== null) throw new ProblemError([problem])
}
