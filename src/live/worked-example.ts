import { defaultScenario } from '#model/design/scenario'
import type { PlacedDesign } from '#live/design-link.ts'

/** The climate the page opens in: warm summers, clear nights between spells of cloud. */
const OPENING_CLIMATE = 'continental'

/** What the page opens with: the default workshop, named so that nobody takes it for a real one. */
export function workedExample(): PlacedDesign {
  const scenario = defaultScenario()
  const note = 'Invented to show how the page works. Change anything: the answer follows.'
  const job = { name: 'Worked example: an invented workshop', note, way: '', machine: 'none' as const }
  return { scenario: { ...scenario, job }, climate: OPENING_CLIMATE }
}
