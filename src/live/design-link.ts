import {
  withField,
  differences,
  FILE_MARK,
  GROUPS,
  requireScenario,
  defaultScenario,
  SCENARIO_VERSION,
  WAY_NAMES,
  withOlderWay,
  type OlderWay,
  type Scenario,
} from '#model/design/scenario'
import { stop, type Problem } from '#model/basis/words'

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

/** A design that was read, and what of an older version had to be worked out. */
export interface ReadDesign extends PlacedDesign {
  readonly older?: readonly Problem[]
}

/**
 * Reads what `linkHash` wrote, also as version 1 did; null when the hash carries no design.
 * @param here  climate of a link, typed or cut short, that has fields of a design and names no climate
 * @throws ProblemError naming the field that cannot be read
 */
export function readLinkHash(hash: string, here: string | null = null): ReadDesign | null {
  const words = new URLSearchParams(hash.replace(/^#/, ''))
  const named = words.get('climate')
  const climate = named ?? (namesFields(words) ? here : null)
  if (climate === null) return null
  words.delete('climate')
  const version = words.get('version')
  requireVersion(Number(version ?? SCENARIO_VERSION))
  words.delete('version')
  const older = olderWayIn(words, version)
  let scenario = defaultScenario()
  for (const [path, text] of words) scenario = withField(scenario, path, text)
  const read = withOlderWay(scenario, older)
  return {
    scenario: requireScenario(read.scenario).scenario,
    climate,
    ...withRemarks([...(named === null ? [NO_CLIMATE] : []), ...read.warnings]),
  }
}

const withRemarks = (older: readonly Problem[]): Pick<ReadDesign, 'older'> =>
  older.length > 0 ? { older } : {}

/** True where a hash has a field of a design, such as `job.way`. */
const namesFields = (words: URLSearchParams): boolean =>
  [...words.keys()].some(
    (path) => (GROUPS as readonly string[]).includes(path.split('.')[0]!) && path.includes('.'),
  )

const NO_CLIMATE: Problem = {
  code: 'link-no-climate',
  severity: 'warning',
  message: 'The link names no climate: its design was opened with the climate that was open here.',
  remedy: 'Choose the place on the Place step if it is another one.',
  place: {},
}

/** Takes off what version 1 said of a way: a machine by itself, and words; such a link may have no version. */
function olderWayIn(words: URLSearchParams, version: string | null): OlderWay {
  const [way, machine] = [words.get('job.way'), words.get('job.machine')]
  const parts = (way ?? '').split(',')
  const named = parts.every((part) => Object.hasOwn(WAY_NAMES, part))
  const isOlder = version === '1' || version === '2' || (version === null && (machine !== null || !named))
  if (!isOlder) return { way: '', machine: 'none' }
  words.delete('job.way')
  words.delete('job.machine')
  return { way: way ?? '', machine: machine ?? 'none' }
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
export function readPlacedText(text: string): ReadDesign {
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
  const { scenario, warnings } = requireScenario(value.scenario)
  const older = ofOlder(warnings)
  return { scenario, climate, ...(older.length > 0 ? { older } : {}) }
}

/** Of what was remarked on reading, what an older version did not say. */
export function ofOlder(warnings: readonly Problem[]): readonly Problem[] {
  return warnings.filter(({ code }) => code === 'scenario-older-way' || code === 'scenario-retired-field')
}
