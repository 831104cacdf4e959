import { type Design, designFlow, designOf, outOfRange, type Prepared, taskOf } from '#model/design/assembly'
import type { Scenario } from '#model/design/scenario'
import type { Candidate } from '#model/design/sizing'
import { type Exceedance, exceedance } from '#model/design/target'
import { simulateYear } from '#model/building/year'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { Stages } from '#studies/stages.ts'

/** Tank of an own area where no volume is given, m³/m²: as the sizing has it, which every repeated scenario checks. */
const OWN_STORE_m3m2 = 0.08

/** A scenario's own area as it is built: the design whose year `size` prints. */
export interface OwnBuilt {
  readonly prepared: Prepared
  readonly design: Design
}

export function ownBuilt(stages: Stages, scenario: Scenario, weather: WeatherRecord): OwnBuilt {
  const prepared = stages.prepare(scenario, weather)
  const task = taskOf(prepared)
  const { area_m2 } = scenario.target
  const storeVolume_m3 = task.hasTank ? (task.storeVolume_m3 ?? OWN_STORE_m3m2 * area_m2) : 0
  const candidate: Candidate = { area_m2, storeVolume_m3, flow_kgsm2: task.flow_kgsm2(area_m2) }
  return { prepared, design: designOf(prepared, candidate, 'built') }
}

/** Code of the range check that refuses it before anything of it is run, or null. */
export function refusal(scenario: Scenario): string | null {
  return outOfRange({ scenario, flow_kgsm2: designFlow(scenario) })?.code ?? null
}

/**
 * Its year by the room's temperature alone, and how that does against the target: the same figures, sooner. Null where it
 * is refused before it runs.
 */
export function judgedLight(stages: Stages, scenario: Scenario, weather: WeatherRecord): Exceedance | null {
  if (refusal(scenario) !== null) return null
  const { prepared, design } = ownBuilt(stages, scenario, weather)
  const { room_C } = simulateYear(design.inputs, { lean: true, books: false })
  return exceedance(room_C, prepared.yardstick)
}
