import { figure, ProblemError, said, words, type Problem, type Text } from '#model/basis/words'
import { isTank } from '#model/building/store'
import { RATED_DIFFERENCE_K } from '#model/building/year'
import { builtDuty } from '#model/panels/loop'
import type { Scenario } from '#model/design/scenario'
import type { Prepared } from './prepared.ts'
import { loopSpecOf } from './to-specs.ts'

/** What a panel sheds on a poor night, W/m² (common practice, no source: a fifth of a clear one), and how much warmer than its plate at rest it then is, K. */
const NIGHT_HEAT_Wm2 = 10
const NIGHT_DIFFERENCE_K = 2.5
/** A pump's power rises with the cube of the flow in pipes of one bore: what more panel costs is this many times its mean. */
const CUBE = 3
/** Heat of a delivery's own fan and pump, at most this share of what it carries at its rating (common practice, no source: 2 to 5 %). */
const FAN_frac = 0.1

type Ranged = Pick<Prepared, 'scenario' | 'flow_kgsm2'>

/**
 * An own area whose plant is out of range before it is run: one in which more panel, or more insulation, could give less cold.
 * @returns the first problem, or null where there is none or the area is not given
 */
export function outOfRange(ranged: Ranged): Problem | null {
  const { autoArea, area_m2 } = ranged.scenario.target
  if (autoArea || area_m2 <= 0) return null
  return pumpProblem(ranged) ?? fanProblem(ranged.scenario)
}

/**
 * The pump would warm the loop by more than more panel could cool it. What A panels shed is q A, less by what lies in
 * series with them: the plate's own conductance, and the pipes in a mass or the coil in the air where there is no tank,
 * q A/(1 + A u/UA). More panel gives more cold while the slope of that is above the slope of the pump's power, on a poor
 * night as well.
 */
function pumpProblem({ scenario, flow_kgsm2 }: Ranged): Problem | null {
  const { area_m2 } = scenario.target
  const duty = builtDuty({ ...loopSpecOf(scenario), flow_kgsm2: flow_kgsm2(area_m2) }, area_m2)
  const plate_Wm2K = NIGHT_HEAT_Wm2 / NIGHT_DIFFERENCE_K
  const panel_Wm2K = 1 / (1 / plate_Wm2K + 1 / duty.fluidToPlate_Wm2K)
  const { kind, delivery_WK } = scenario.store
  const behind = isTank(kind) ? 0 : (panel_Wm2K * area_m2) / delivery_WK
  const shed_W = (panel_Wm2K * NIGHT_DIFFERENCE_K * area_m2) / (1 + behind)
  const more_Wm2 = (panel_Wm2K * NIGHT_DIFFERENCE_K) / (1 + behind) ** 2
  if (CUBE * duty.pumpPower_W > more_Wm2 * area_m2)
    return problem(
      'pump-out-of-range',
      words`The pump would need ${figure(duty.pumpPower_W, 'W')} to make ${figure(duty.pressureDrop_Pa, 'Pa')} in this loop, and all of it warms the fluid: too much beside the ${figure(shed_W, 'W')} that ${figure(area_m2, 'm2')} of panel shed through it on a poor night, so that more panel would give less cold.`,
      'Let bore and flow be chosen, or use wider or shorter pipes, less flow, less panel, or more delivery into the mass.',
      'loop.pipeInnerDiameter_m',
    )
  return null
}

function fanProblem({ store }: Scenario): Problem | null {
  const carried_W = store.delivery_WK * RATED_DIFFERENCE_K
  if (carried_W <= 0 || store.deliveryPower_W <= FAN_frac * carried_W) return null
  return problem(
    'fan-out-of-range',
    words`Fan and pump of the delivery take ${figure(store.deliveryPower_W, 'W')}, all of it heat to the room: more than a tenth of the ${figure(carried_W, 'W')} that it carries at ${figure(RATED_DIFFERENCE_K, 'K')} of difference, so that colder water could leave the room hotter.`,
    'Give less power, or a delivery that carries more.',
    'store.deliveryPower_W',
  )
}

const problem = (code: string, wording: Text, remedy: string, field: string): Problem => ({
  code,
  severity: 'error',
  ...said(wording),
  remedy,
  place: { field },
})

/** @throws ProblemError where an own area is out of range */
export function refuseOutOfRange(prepared: Prepared): void {
  const found = outOfRange(prepared)
  if (found !== null) throw new ProblemError([found])
}
