import type { Nodes } from './nodes.ts'
import type { Plant, YearInputs } from './inputs.ts'
import type { PlateCourse } from './plate-course.ts'

/** Water in a plate below this can freeze, °C. */
const FREEZING_C = 0

/** What a controller with the sensors of the sheet would decide at the beginning of a step. */
export class Controls {
  /** Plan, season and frost let the pump run; for how much of the step is `PumpDuty`. */
  mayPump = false
  /** Share of the step that the pump runs, 0…1. */
  pumpShare = 0
  delivering = false
  /** Freeze protection acted, or was needed, in this step. */
  freezing = false

  /** Decides pump and delivery from the temperatures at the beginning of a step. */
  decide(
    inputs: YearInputs,
    nodes: Nodes,
    temp_C: Float64Array,
    plate: PlateCourse | null,
    hour: number,
  ): void {
    const { plant } = inputs
    if (plant === null || plate === null) return
    this.delivering = nodes.tank && (!plant.store.drained || temp_C[nodes.port]! > temp_C[nodes.bottom]!)
    const allowed = plant.allowed[hour] === 1
    this.freezing = freezing(plant, plate.temp_C, allowed)
    this.mayPump =
      allowed && plant.loop.capacityRate_WK > 0 && (!this.freezing || plant.plan.freeze === 'glycol')
  }

  get pumping(): boolean {
    return this.pumpShare > 0
  }
}

/**
 * Drain-back acts at its limit while the loop could run; glycol is at risk below its limit at any time; a loop that
 * is stopped and drained only for the winter is at risk whenever its plate is below 0 °C in the season.
 */
function freezing(plant: Plant, plate_C: number, inSeason: boolean): boolean {
  const { freeze, freezeLimit_C } = plant.plan
  if (freeze === 'glycol') return plate_C < freezeLimit_C
  if (freeze === 'drainBack') return inSeason && plate_C < freezeLimit_C
  return inSeason && plate_C < Math.max(freezeLimit_C, FREEZING_C)
}
