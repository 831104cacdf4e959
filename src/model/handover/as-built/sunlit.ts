import type { AsBuiltInputs } from './inputs-type.ts'
import { runningHours } from './log.ts'

/** A log without sunlight cannot show dirt: it takes in sun, and hardly changes how the panel radiates. */
const SUNNY_WM2 = 200

/** Whether any judged hour had sun enough to show dirt. */
export function sawSun({ log, plane }: AsBuiltInputs): boolean {
  return runningHours(log).some((hour) => plane.total_Wm2[hour]! > SUNNY_WM2)
}
