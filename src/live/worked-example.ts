import { defaultScenario } from '#model/design/scenario'
import { placedText, type PlacedDesign } from '#live/design-link.ts'

/** The climate the page opens in: warm summers, clear nights between spells of cloud. */
const OPENING_CLIMATE = 'continental'
const TITLE = 'Worked example'
/** What a design is called once it is no longer the example, until it is given a name. */
const OWN_NAME = 'My room'

/** What the page opens with: the default workshop, named so that nobody takes it for a real one. */
export function workedExample(): PlacedDesign {
  const scenario = defaultScenario()
  const note = 'Invented to show how the page works. Change anything: the answer follows.'
  const job = { ...scenario.job, name: `${TITLE}: an invented workshop`, note }
  return { scenario: { ...scenario, job }, climate: OPENING_CLIMATE }
}

/** A design that differs from the example does not go under its name. */
export function ownNamed(placed: PlacedDesign): PlacedDesign {
  const { job } = placed.scenario
  if (!job.name.startsWith(TITLE)) return placed
  const example = workedExample()
  const { name, note } = example.scenario.job
  const asExample = { ...placed.scenario, job: { ...job, name, note } }
  if (placedText({ ...placed, scenario: asExample }) === placedText(example)) return placed
  const own = { ...job, name: OWN_NAME, note: job.note === note ? '' : job.note }
  return { ...placed, scenario: { ...placed.scenario, job: own } }
}
