import { designOf, taskOf } from '#model/scenario/design.ts'
import { energyPriced, type HeldDesign } from '#model/scenario/map-design.ts'
import type { Prepared } from '#model/scenario/prepared.ts'
import type { MapTask } from '#model/sizing/design-map.ts'
import { exceedance } from '#model/sizing/exceedance.ts'
import { judged } from '#model/sizing/size.ts'
import { simulateYear } from '#model/year/simulate.ts'

/** The task the design map works on: only the season that decides, unless the pump's energy of the year is asked for. */
export function mapTaskOf(prepared: Prepared, held: HeldDesign): MapTask {
  if (!energyPriced(prepared.scenario)) {
    const task = taskOf(prepared)
    return { ...held, yearOf: (candidate) => ({ ...judged(task, candidate), electric_J: 0 }) }
  }
  return {
    ...held,
    yearOf: (candidate) => {
      const year = simulateYear(designOf(prepared, candidate).inputs, { lean: true })
      return { ...exceedance(year.room_C, prepared.yardstick), electric_J: year.ledger.pumpHeat_J }
    },
  }
}
