import { drainsBack, liftOf_m } from '#model/handover/drawing'
import { factsOf } from './facts-of.ts'
import type { Plant } from './plant.ts'

/**
 * Height that the pump of a drain-back loop lifts water through empty pipe each time it starts, m: from the water in tank or
 * vessel to the top of the panels, or what the description says where that is more. null where the loop stays full.
 */
export function startLift_m(plant: Plant): number | null {
  const facts = factsOf(plant)
  if (!drainsBack(facts)) return null
  const lift_m = Math.max(plant.answer.scenario.loop.lift_m, liftOf_m(facts) ?? 0)
  return lift_m > 0 ? lift_m : null
}
