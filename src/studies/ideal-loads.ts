import { idealLoad, type IdealLoad } from '#model/building/year'
import type { Stages } from './stages.ts'
import type { Asked, Study } from './study.ts'

/** What an ideal plant has to give the room through the year, and what it is held between. */
export interface IdealLoads extends IdealLoad {
  readonly heat_C: number
  readonly cool_C: number
}

/**
 * Heat that holds the room's operative temperature between two limits, exactly what every step needs; windows shut. By
 * default cooled to the plan's setpoint and heated to the target's winter temperature, or to the setpoint where that is lower.
 */
export function* idealLoads(
  stages: Stages,
  {
    scenario,
    weather,
    cool_C = scenario.plan.setpoint_C,
    heat_C = Math.min(scenario.target.heatedTo_C, cool_C),
  }: Asked & { readonly cool_C?: number; readonly heat_C?: number },
): Study<IdealLoads> {
  const { room } = stages.prepare(scenario, weather)
  const held = { by: 'operative', heat_C, cool_C, stepsPerHour: 4, warmUp_h: 21 * 24 } as const
  return { result: { ...idealLoad(room, held), heat_C, cool_C }, remarks: [] }
}
