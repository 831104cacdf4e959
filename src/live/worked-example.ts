import type { Scenario } from '#model/scenario/fields.ts'
import { defaultScenario } from '#model/scenario/schema.ts'

/** The climate the page opens in: warm summers, clear nights between spells of cloud. */
export const OPENING_CLIMATE = 'continental'

/** What the page opens with: the default workshop, named so that nobody takes it for a real one. */
export function workedExample(): Scenario {
  const scenario = defaultScenario()
  const note = 'Invented to show how the page works. Change anything: the answer follows.'
  return { ...scenario, job: { name: 'Worked example: an invented workshop', note } }
}
