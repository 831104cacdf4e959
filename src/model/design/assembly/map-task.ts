import { designOf, taskOf } from './design.ts'
import { energyPriced, type HeldDesign } from '#model/design/scenario'
import type { Prepared } from './prepared.ts'
import { type MapTask, judged } from '#model/design/sizing'
import { exceedance } from '#model/design/target'
import { simulateYear } from '#model/building/year'

/** The task the design map works on: only the season that decides, unless the pump's energy of the year is asked for. */
export function mapTaskOf(prepared: Prepared, { storeVolume_m3 }: HeldDesign): MapTask {
  const held = { storeVolume_m3, flow_kgsm2: prepared.flow_kgsm2 }
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
