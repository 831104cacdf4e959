import { AIR_MEASURES, BUILDING_MEASURES, type Measure } from '#model/design/measures'
import type { Scenario } from '#model/design/scenario'
import { wayDrawings, type Drawing } from '#model/handover/drawing'
import { DEMO_JOB, DEMO_RECIPE } from '#model/panels/paint'
import { wayFactsOf } from './way-facts-of.ts'
import type { Work } from './work.ts'
import { worksOf } from './works.ts'

const MEASURES: readonly Measure[] = [...BUILDING_MEASURES, ...AIR_MEASURES]

/** Measures of a way, by the names it is written with. */
export function measuresOf({ job }: Pick<Scenario, 'job'>): readonly Measure[] {
  const names = job.way.split(' + ')
  return MEASURES.filter(({ name }) => names.includes(name))
}

/** What is built beside the panels: measures chosen together with them, none of those taken before. */
export function besidePanels(scenario: Scenario): {
  readonly works: readonly Work[]
  readonly drawings: readonly Drawing[]
} {
  const measures = scenario.job.way.includes('panels') ? measuresOf(scenario).map(({ id }) => id) : []
  if (measures.length === 0) return { works: [], drawings: [] }
  const asked = { scenario, measures, machine: null, recipe: DEMO_RECIPE, coat: DEMO_JOB }
  return { works: worksOf(asked), drawings: wayDrawings(wayFactsOf(asked)) }
}
