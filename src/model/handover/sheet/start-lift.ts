import { liftOf_m } from '#model/handover/drawing'
import { rowsOf, type Plant } from './plant.ts'

/**
 * Height that the pump of a drain-back loop lifts water through empty pipe each time it starts, m: from the water in the tank
 * to the top of the panels, or what the description says where that is more. null where the loop stays full.
 */
export function startLift_m(plant: Plant): number | null {
  const { loopSpec, tank, answer } = plant
  const { plan, panel, loop } = answer.scenario
  if (loopSpec.fluid !== 'water' || plan.freeze !== 'drainBack' || tank === null) return null
  const facts = {
    rows: rowsOf(plant),
    moduleLength_m: loopSpec.moduleLength_m,
    moduleWidth_m: loopSpec.moduleWidth_m,
    tilt_deg: panel.tilt_deg,
    panelHeight_m: panel.height_m,
  }
  const lift_m = Math.max(loop.lift_m, liftOf_m(facts, tank.height_m))
  return lift_m > 0 ? lift_m : null
}
