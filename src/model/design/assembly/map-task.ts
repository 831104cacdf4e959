import { designOf, taskOf } from './design.ts'
import { energyPriced, type HeldDesign } from '#model/design/scenario'
import type { Prepared } from './prepared.ts'
import { type Candidate, type MapTask, judgedAlso, seasonAtRisk } from '#model/design/sizing'
import { simulateYear, USUAL_YEAR } from '#model/building/year'

/**
 * Hours of the room left alone this far under their limit are run where the season of the search does not settle a design that
 * is well under its limit, K: less than half the year, and enough on all but the coolest corner of a map.
 */
const WIDE_MARGIN_K = 2.5

/** The task the design map works on, every place as it would be built, so that a place says what the answer there says: only the season that decides, and whole years for the electricity where it has a price. */
export function mapTaskOf(prepared: Prepared, { storeVolume_m3 }: HeldDesign): MapTask {
  const task = taskOf(prepared, USUAL_YEAR.stepsPerHour, 'built')
  const wide = seasonAtRisk(prepared.doNothing.room_C, prepared.yardstick, WIDE_MARGIN_K)
  const electric_J = ({ ledger }: { readonly ledger: { readonly pumpHeat_J: number } }): number =>
    ledger.pumpHeat_J
  return {
    storeVolume_m3,
    flow_kgsm2: prepared.flow_kgsm2,
    judgedAt: judgedAlso(task, wide),
    electric_J: energyPriced(prepared.scenario)
      ? (candidate: Candidate) =>
          electric_J(simulateYear(designOf(prepared, candidate, 'built').inputs, { lean: true }))
      : null,
  }
}
