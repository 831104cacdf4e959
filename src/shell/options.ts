import { readFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { likest, stop, ProblemError, problemSentence } from '#model/basis/words'
import {
  crossFieldProblems,
  type Scenario,
  readScenarioFile,
  withField,
  defaultScenario,
} from '#model/design/scenario'
import { FORMATS, note, type Format } from './output.ts'

/** What every subcommand takes, plus whatever its own option table adds. */
export interface Options {
  readonly scenario: Scenario
  readonly format: Format
  readonly out: string | undefined
  /** Raw values of all options that were given. */
  readonly values: Readonly<Record<string, string | boolean | (string | boolean)[] | undefined>>
}

export interface OptionSpec {
  readonly type: 'string' | 'boolean'
  readonly multiple?: boolean
  readonly help: string
}

/** Options of every subcommand. */
export const COMMON_OPTIONS: Readonly<Record<string, OptionSpec>> = {
  weather: { type: 'string', help: 'weather file, or the name of a sample climate' },
  town: { type: 'string', help: 'instead of a weather file: a town by name, "Kraków" or "Cordoba, AR"' },
  at: { type: 'string', help: 'instead of a weather file: latitude,longitude[,height in m]' },
  warming: { type: 'string', help: 'of a place: kelvin added to the means of 1961–1990' },
  hottest: { type: 'string', help: 'of a place: hottest hour of an ordinary year, °C, where you know it' },
  'hot-summer': { type: 'boolean', help: 'of a place: a summer as it comes once in ten years' },
  months: {
    type: 'string',
    help: 'of a place: table of months in place of the held ones, as “place NAME --out months.csv” writes it',
  },
  'another-year': { type: 'string', help: 'of a place: 1, 2, … for other years of the same months' },
  mapping: {
    type: 'string',
    help: 'mapping file for that weather table (saved on the Weather page of the app)',
  },
  'yes-to': {
    type: 'string',
    multiple: true,
    help: 'answer to a question about the weather file, NAME=VALUE, e.g. --yes-to windSpeed=km/h',
  },
  'save-mapping': {
    type: 'string',
    help: 'file that keeps how the weather table was read, answers included',
  },
  'accept-long-gaps': { type: 'boolean', help: 'go on although more than 48 h in a row are missing' },
  latitude: { type: 'string', help: 'degrees, north positive, where the weather file does not say' },
  longitude: { type: 'string', help: 'degrees, east positive, where the weather file does not say' },
  altitude: { type: 'string', help: 'm above the sea, where the weather file does not say' },
  'utc-offset': { type: 'string', help: 'local standard time minus UTC, h' },
  'clock-offset': { type: 'string', help: 'the weather file’s clock minus UTC, h' },
  'clock-shift': { type: 'string', help: 'added to every stamp of the weather file, h' },
  stamp: { type: 'string', help: 'what a stamp means: ending, beginning, centred or instant' },
  scenario: { type: 'string', help: 'scenario file (.json); default: the defaults of every field' },
  set: {
    type: 'string',
    multiple: true,
    help: 'field=value, any number of times, e.g. --set panel.tilt_deg=10',
  },
  format: { type: 'string', help: 'csv or json' },
  out: { type: 'string', help: 'file to write; default: standard output' },
}

/** Reads the words after the subcommand. @throws ProblemError in one clear sentence */
export function readOptions(
  words: readonly string[],
  own: Readonly<Record<string, OptionSpec>>,
  formats: readonly Format[] = FORMATS,
): Options {
  const specs = { ...COMMON_OPTIONS, ...own }
  const values = parsed(words, specs)
  const format = values['format'] ?? 'csv'
  if (typeof format !== 'string' || !(formats as readonly string[]).includes(format)) {
    throw stop('bad-format', `--format ${String(format)} is not known.`, `Use ${formats.join(' or ')}.`)
  }
  return {
    scenario: scenarioOf(values),
    format: format as Format,
    out: values['out'] as string | undefined,
    values,
  }
}

function parsed(words: readonly string[], specs: Readonly<Record<string, OptionSpec>>): Options['values'] {
  const options = Object.fromEntries(
    Object.entries(specs).map(([name, { type, multiple }]) => [name, { type, multiple: multiple ?? false }]),
  )
  try {
    return parseArgs({ args: withNegatives(words, specs), options, allowPositionals: false, strict: true })
      .values
  } catch (error) {
    const reason = (error as Error).message.split('. ')[0]!
    const known = Object.keys(specs)
    const near = likest(/'--([\w-]+)/.exec(reason)?.[1] ?? '', known)
    throw stop(
      'bad-option',
      `${reason}.`,
      `${near === null || reason.includes('argument') ? '' : `Did you mean --${near}? `}Known options: ${known.map((name) => `--${name}`).join(', ')}.`,
    )
  }
}

/** `--at -33.4,149` as `--at=-33.4,149`: a number below zero is a value, not an option. */
function withNegatives(words: readonly string[], specs: Readonly<Record<string, OptionSpec>>): string[] {
  const joined: string[] = []
  for (const word of words) {
    const before = joined.at(-1)
    const takesValue = before?.startsWith('--') === true && specs[before.slice(2)]?.type === 'string'
    if (takesValue && /^-([\d.]|$)/.test(word)) joined[joined.length - 1] = `${before}=${word}`
    else joined.push(word)
  }
  return joined
}

function scenarioOf(values: Options['values']): Scenario {
  let scenario = defaultScenario()
  const file = values['scenario']
  if (typeof file === 'string') {
    const read = readScenarioFile(textOf(file), file)
    for (const warning of read.warnings) note(`warning: ${problemSentence(warning)}`)
    scenario = read.scenario
  }
  for (const setting of (values['set'] ?? []) as string[]) {
    const at = setting.indexOf('=')
    if (at < 0)
      throw stop(
        'bad-set',
        `--set ${setting} has no “=”.`,
        'Write --set field=value, e.g. --set panel.tilt_deg=10.',
      )
    scenario = withField(scenario, setting.slice(0, at), setting.slice(at + 1))
  }
  const errors = crossFieldProblems(scenario).filter((problem) => problem.severity === 'error')
  if (errors.length > 0) throw new ProblemError(errors)
  return scenario
}

/** A text file's content. @throws ProblemError when it can't be read */
export function textOf(file: string): string {
  try {
    return readFileSync(file, 'utf8').replace(/^\ufeff/, '')
  } catch (error) {
    throw stop(
      'cannot-read',
      `The file could not be read (${(error as Error).message}).`,
      'Check the name and the path.',
      { file },
    )
  }
}
