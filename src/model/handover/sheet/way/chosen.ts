import { measureIdsOf } from '#model/design/scenario'
import { wayDrawings, type Drawing } from '#model/handover/drawing'
import { DEMO_JOB, DEMO_RECIPE } from '#model/panels/paint'
import type { SheetAnswer } from '../plant.ts'
import { wayFactsOf } from './way-facts-of.ts'
import type { Work } from './work.ts'
import { worksOf } from './works.ts'

/** What is built beside the panels: the measures of the way taken. */
export function besidePanels({ scenario, simulated }: Pick<SheetAnswer, 'scenario' | 'simulated'>): {
  readonly works: readonly Work[]
  readonly drawings: readonly Drawing[]
} {
  const measures = measureIdsOf(scenario)
  if (measures.length === 0) return { works: [], drawings: [] }
  const asked = {
    scenario: simulated,
    asItIs: scenario.room,
    measures,
    machine: null,
    recipe: DEMO_RECIPE,
    coat: DEMO_JOB,
  }
  return { works: worksOf(asked), drawings: wayDrawings(wayFactsOf(asked)) }
}
