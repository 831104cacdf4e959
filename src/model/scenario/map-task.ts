import { designOf } from '#model/scenario/design.ts'
import type { HeldDesign } from '#model/scenario/map-design.ts'
import type { Prepared } from '#model/scenario/prepared.ts'
import type { MapTask } from '#model/sizing/design-map.ts'
import { exceedance } from '#model/sizing/exceedance.ts'
import { simulateYear } from '#model/year/simulate.ts'

/** The task the design map works on. */
export function mapTaskOf(prepared: Prepared, held: HeldDesign): MapTask {
  return {
    ...held,
    yearOf: (candidate) => {
      const year = simulateYear(designOf(prepared, candidate).inputs, { lean: true })
      return { ...exceedance(year.room_C, prepared.yardstick), electric_J: year.ledger.pumpHeat_J }
    },
  }
}
