import { figure, ProblemError, said, words, type Problem, type Text } from '#model/basis/words'
import { isTank } from '#model/building/store'
import { RATED_DIFFERENCE_K, steadyBack_C } from '#model/building/year'
import { builtDuty, type LoopDuty } from '#model/panels/loop'
import type { Scenario } from '#model/design/scenario'
import type { Prepared } from './prepared.ts'
import { loopSpecOf } from './to-specs.ts'

/** A poor night: the plate in balance this much colder than the store, the air this much warmer, K, and the slope of its heat, W/m²K (common practice, no source: 10 W/m², a fifth of a clear night). */
const POOR_NIGHT_K = 2.5
const WARMER_AIR_K = 5
const POOR_SLOPE_Wm2K = 4
/** A better night has this many times the difference. */
const BETTER_NIGHTS = [1, 4] as const
/** More panel that must give no less cold. */
const MORE_AREA = [1.1, 1.5] as const
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

/** Pump and pipes would warm the loop by more than more panel could cool it, on a poor night or a better one. */
function pumpProblem({ scenario, flow_kgsm2 }: Ranged): Problem | null {
  const { area_m2 } = scenario.target
  const dutyAt = (share: number): LoopDuty => {
    const at_m2 = share * area_m2
    return builtDuty({ ...loopSpecOf(scenario), flow_kgsm2: flow_kgsm2(at_m2) }, at_m2)
  }
  const own = dutyAt(1)
  const more = MORE_AREA.map(dutyAt)
  const { kind, delivery_WK } = scenario.store
  const worse = BETTER_NIGHTS.find((times) => {
    const takes_W = (duty: LoopDuty): number =>
      steadyCold_W(duty, isTank(kind) ? Infinity : delivery_WK, times * POOR_NIGHT_K)
    const byPump_W = takes_W(withoutPipes(own))
    // Pipes let heat in by their length as well: a loop that brings nothing on a poor night is at rest in it.
    const atAll_W = takes_W(own)
    return more.some(
      (duty) => takes_W(withoutPipes(duty)) < byPump_W || (atAll_W > 0 && takes_W(duty) < atAll_W),
    )
  })
  if (worse === undefined) return null
  return problem(
    'pump-out-of-range',
    words`The pump would need ${figure(own.pumpPower_W, 'W')} to make ${figure(own.pressureDrop_Pa, 'Pa')} in this loop, all of it heat to the fluid, and pipes in warm air let in ${figure(own.pipeGain_WK * WARMER_AIR_K, 'W')}: too much beside what ${figure(area_m2, 'm2')} of panel shed on a ${worse === 1 ? 'poor' : 'fair'} night, so that more panel would give less cold.`,
    'Let bore and flow be chosen, or use wider, shorter or better insulated pipes, less flow, less panel, or more delivery into the mass.',
    'loop.pipeInnerDiameter_m',
  )
}

const withoutPipes = (duty: LoopDuty): LoopDuty => ({ ...duty, pipeGain_WK: 0 })

/** Cold that a loop brings steadily to a store, or to a mass through its pipes, on such a night, W; below 0 heat. */
function steadyCold_W(duty: LoopDuty, exchanger_WK: number, colder_K: number): number {
  const { capacityRate_WK } = duty
  const sinkShare = 1 - Math.exp(-exchanger_WK / capacityRate_WK)
  const back_C = steadyBack_C(duty, sinkShare, POOR_SLOPE_Wm2K, -colder_K, WARMER_AIR_K)
  return -capacityRate_WK * sinkShare * back_C
}

function fanProblem({ store }: Scenario): Problem | null {
  const carried_W = store.delivery_WK * RATED_DIFFERENCE_K
  if (carried_W <= 0 || store.deliveryPower_W <= FAN_frac * carried_W) return null
  return problem(
    'fan-out-of-range',
    words`Fan and pump of the delivery take ${figure(store.deliveryPower_W, 'W')}, all of it heat: more than a tenth of the ${figure(carried_W, 'W')} that it carries at ${figure(RATED_DIFFERENCE_K, 'K')} of difference, so that colder water could leave the room hotter.`,
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
