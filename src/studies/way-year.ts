/** The year of the way taken: what the room is with its measures and its plant, and what it was before. */
import { HOUR_S } from '#model/basis/hours'
import type { YearResult } from '#model/building/year'
import type { Built, Prepared, TakenWay } from '#model/design/assembly'
import { asItIs, takenMeasures } from '#model/design/measures'
import { plantOf, type Scenario } from '#model/design/scenario'
import { exceedance } from '#model/design/target'
import type { WeatherRecord } from '#model/outdoors/weather'
import { Trials } from './decide-trial.ts'
import type { Preparing } from './preparing.ts'

/** What `Stages` has for descriptions with a way. */
export type WayYear = typeof wayYear

/** The way that a description has taken, and its year. */
export function wayYear(
  stages: Preparing,
  scenario: Scenario,
  record: WeatherRecord,
  prepared: Prepared,
  { design, year }: Built,
): { readonly taken: TakenWay; readonly year: YearResult } {
  const trials = new Trials(stages, scenario, record)
  const measures = takenMeasures(scenario)
  const { area_m2: panelArea_m2, storeVolume_m3 } = design.candidate
  const plant = panelArea_m2 > 0 ? 'panels' : withoutPanels(scenario)
  const electric_J = year.electric_W.reduce((sum, watts) => sum + watts, 0) * HOUR_S
  const built = { ...year, electric_J, water_kg: 0, mostHumid_frac: 0, panelArea_m2, storeVolume_m3 }
  const ran = trials.yearOf(prepared, measures, plant, built)
  const before = stages.prepare(asItIs(scenario), record, true)
  const { hours_h, peak_C } = exceedance(before.doNothing.room_C, before.yardstick)
  const combination = trials.judged(prepared, measures, plant, ran)
  return {
    taken: { ...combination, asItIs: { hours_h, peak_C } },
    year: ran.room_C === year.room_C ? year : { ...year, room_C: ran.room_C },
  }
}

function withoutPanels(scenario: Scenario) {
  const plant = plantOf(scenario)
  return plant === 'panels' ? 'none' : plant
}
