import {
  withField,
  differences,
  FILE_MARK,
  requireScenario,
  defaultScenario,
  SCENARIO_VERSION,
  type Scenario,
} from '#model/design/scenario'
import { stop } from '#model/basis/words'

/** A design and where it is: what a link, a file and the autosave carry. */
export interface PlacedDesign {
  readonly scenario: Scenario
  /** Id of the climate, as in `ClimateChoice`. */
  readonly climate: string
}

/**
 * The part of a link after `#`: the climate and every field that is not at its default, in plain words, e.g.
 * `climate=hot-desert&room.roofU_Wm2K=0.2`. It never leaves the browser: servers do not see this part. Commas and
 * colons are kept as they are, so that a printed link can be read and typed.
 */
export function linkHash({ scenario, climate }: PlacedDesign): string {
  const words = new URLSearchParams({ climate, version: String(SCENARIO_VERSION) })
  for (const [group, fields] of Object.entries(differences(scenario))) {
    for (const [name, value] of Object.entries(fields)) words.set(`${group}.${name}`, String(value))
  }
  return words.toString().replaceAll('%2C', ',').replaceAll('%3A', ':')
}

/**
 * Reads what `linkHash` wrote; null when the hash carries no design.
 * @throws ProblemError naming the field that cannot be read
 */
export function readLinkHash(hash: string): PlacedDesign | null {
  const words = new URLSearchParams(hash.replace(/^#/, ''))
  const climate = words.get('climate')
  if (climate === null) return null
  words.delete('climate')
  requireVersion(Number(words.get('version') ?? SCENARIO_VERSION))
  words.delete('version')
  let scenario = defaultScenario()
  for (const [path, text] of words) scenario = withField(scenario, path, text)
  return { scenario: requireScenario(scenario).scenario, climate }
}

/** @throws ProblemError for a link of a version that this one cannot know */
function requireVersion(version: number): void {
  if (version <= SCENARIO_VERSION) return
  throw stop(
    'link-newer',
    `The link was made by a newer version (${version}; this one reads up to ${SCENARIO_VERSION}).`,
    'Reload the page to get the newer version, or ask for a link of this one.',
  )
}

/** Text for the autosave and for named designs: every field, so that a later default changes nothing in it. */
export function placedText({ scenario, climate }: PlacedDesign): string {
  return JSON.stringify({ climate, scenario: { [FILE_MARK]: SCENARIO_VERSION, ...scenario } })
}

/** Reads what `placedText` wrote. @throws ProblemError when it is damaged */
export function readPlacedText(text: string): PlacedDesign {
  const damaged = () =>
    stop('kept-design-damaged', 'The kept design cannot be read.', 'Start from a preset or open a file.')
  let value: { climate?: unknown; scenario?: unknown } | null
  try {
    value = JSON.parse(text) as typeof value
  } catch {
    throw damaged()
  }
  if (value?.scenario === undefined) throw damaged()
  const climate = typeof value.climate === 'string' ? value.climate : ''
  return { scenario: requireScenario(value.scenario).scenario, climate }
}
