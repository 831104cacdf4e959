import type { Drawing } from '../shapes.ts'
import { conditionerLines } from './conditioner-lines.ts'
import { coolerLoop } from './cooler-loop.ts'
import { detailsOf } from './details.ts'
import { shadeDetail } from './shade-detail.ts'
import { wayPlan } from './way-plan.ts'
import { waySection } from './way-section.ts'
import type { WayFacts } from './way-facts.ts'

/** All drawings of a way without panels, only of what was chosen: plan and section, then the details. */
export function wayDrawings(facts: WayFacts): Drawing[] {
  const { ceilingFan, jars, sealed, cooler, conditioner, shade, windows } = facts
  const details = [
    ...(shade === null || windows.length === 0 ? [] : [shadeDetail(facts)]),
    ...detailsOf(facts),
    ...(cooler === null ? [] : [coolerLoop(facts)]),
    ...(conditioner === null ? [] : [conditionerLines(facts)]),
  ]
  const inRoom = ceilingFan !== null || jars !== null || sealed
  return details.length > 0 || inRoom ? [wayPlan(facts), waySection(facts), ...details] : []
}
