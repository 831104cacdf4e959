import * as v from 'valibot'
import { fewAndShort, likest, ProblemError, stop, type Problem } from '#model/basis/words'
import { crossFieldProblems, unusualValues } from './checks.ts'
import type { Scenario } from './fields.ts'
import { olderWayIn, withOlderWay, type WithOlderWay } from './older-way.ts'
import { retiredField } from './retired-fields.ts'
import { defaultScenario, fieldAt, fieldPaths, fieldSchema, GROUPS, SCENARIO_VERSION } from './schema.ts'

/** What reading a scenario gave: the scenario, or null and why; warnings either way. */
export interface ParsedScenario {
  readonly scenario: Scenario | null
  readonly problems: readonly Problem[]
}

/** Marks a scenario file; its value is the version. */
export const FILE_MARK = 'duskbankScenario'

/**
 * Reads a scenario from a parsed JSON value. Missing fields take their defaults; unknown names, wrong types and
 * values out of range are refused, each with its field. Never throws.
 */
export function parseScenario(value: unknown, file?: string): ParsedScenario {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return refused(
      'scenario-not-an-object',
      'This is not a scenario.',
      'Give a JSON object with groups such as "panel" and "room".',
      file,
    )
  }
  const version = Object.hasOwn(value, FILE_MARK)
    ? (value as Record<string, unknown>)[FILE_MARK]
    : SCENARIO_VERSION
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return refused(
      'scenario-version',
      `The version ${shown(version)} is not a number Duskbank knows.`,
      'Save the scenario again from the app.',
      file,
    )
  }
  if (version > SCENARIO_VERSION) {
    return refused(
      'scenario-newer',
      `This scenario was written by a newer Duskbank (version ${version}; this one reads up to ${SCENARIO_VERSION}).`,
      'Open it with the newer Duskbank; nothing was changed.',
      file,
    )
  }
  return readGroups(olderWayIn(value as Record<string, unknown>, version), file)
}

const ENOUGH_PROBLEMS = 200 // more than any file of ours has

function refused(code: string, message: string, remedy: string, file?: string): ParsedScenario {
  const place = file === undefined ? {} : { file }
  return { scenario: null, problems: [{ code, severity: 'error', message, remedy, place }] }
}

function readGroups({ rest: value, older }: WithOlderWay, file?: string): ParsedScenario {
  const problems: Problem[] = []
  const retired: Problem[] = []
  const result = mutable(defaultScenario())
  for (const group of Object.keys(value)) {
    if (problems.length > ENOUGH_PROBLEMS) break
    if (group === FILE_MARK) continue
    if (!(GROUPS as string[]).includes(group)) {
      problems.push(unknown(group, file, GROUPS))
      continue
    }
    const fields = value[group]
    if (typeof fields !== 'object' || fields === null || Array.isArray(fields)) {
      problems.push(problem('scenario-group', group, 'must be a group of fields.', file))
      continue
    }
    for (const [name, given] of Object.entries(fields)) {
      const path = `${group}.${name}`
      const old = retiredField(path, given, file)
      if (old === null) readField(result, path, given, problems, file)
      else {
        Object.assign(result[group]!, old.values)
        retired.push(old.warning)
      }
      if (problems.length > ENOUGH_PROBLEMS) break
    }
  }
  if (problems.length > 0) return { scenario: null, problems: fewAndShort(problems) }
  const { scenario, warnings } = withOlderWay(result as unknown as Scenario, older, file)
  const crossed = crossFieldProblems(scenario, file)
  const fatal = crossed.some((found) => found.severity === 'error')
  return {
    scenario: fatal ? null : scenario,
    problems: [...retired, ...warnings, ...crossed, ...unusualValues(scenario, file)],
  }
}

type MutableScenario = Record<string, Record<string, unknown>>

function mutable(scenario: Scenario): MutableScenario {
  return Object.fromEntries(Object.entries(scenario).map(([group, fields]) => [group, { ...fields }]))
}

function readField(
  result: MutableScenario,
  path: string,
  given: unknown,
  problems: Problem[],
  file?: string,
): void {
  const found = fieldAt(path)
  if (found === null) {
    problems.push(unknown(path, file, fieldPaths()))
    return
  }
  const parsed = v.safeParse(fieldSchema(found.field), given)
  if (parsed.success) result[found.group]![found.name] = parsed.output
  else
    problems.push(
      problem('scenario-value', path, `${sentenceStart(given)} ${parsed.issues[0].message}`, file),
    )
}

/** The value that was refused, short enough to print. */
function sentenceStart(given: unknown): string {
  const text = shown(given)
  return `${text.length > 40 ? `${text.slice(0, 40)}…` : text}:`
}

/** Any value in a few words, whatever it is. */
function shown(given: unknown): string {
  if (typeof given === 'string') return JSON.stringify(given)
  if (Array.isArray(given)) return `a list of ${given.length}`
  if (typeof given === 'object' && given !== null) return 'an object'
  return typeof given === 'function' ? 'a function' : String(given)
}

function problem(code: string, field: string, message: string, file?: string): Problem {
  return {
    code,
    severity: 'error',
    message,
    remedy: '',
    place: file === undefined ? { field } : { file, field },
  }
}

function unknown(name: string, file: string | undefined, known: readonly string[]): Problem {
  const near = nearest(name, known)
  return {
    ...problem('scenario-unknown-field', name, 'There is no such field.', file),
    remedy: near === null ? 'See the list of fields in the help.' : `Did you mean ${near}?`,
  }
}

/** The known name most like a mistyped one: with or without its group, or one that holds its first word. */
function nearest(name: string, known: readonly string[]): string | null {
  if (name === 'job.machine') return 'job.way, e.g. job.way=shade,airConditioner'
  const like = likest(name, known)
  if (like !== null) return like
  const bare = known.map((one) => one.split('.').at(-1)!)
  const field = likest(name.split('.').at(-1)!, bare)
  if (field !== null) return known[bare.indexOf(field)]!
  const word = name.toLowerCase().split('.').at(-1)!.split('_')[0]!
  if (word.length < 3) return null
  return known.find((candidate) => candidate.toLowerCase().includes(word)) ?? null
}

/**
 * A scenario with one field set from text, as typed on the command line or in a box.
 * @param path e.g. `panel.tilt_deg`; a day profile is 24 numbers with commas
 * @throws ProblemError naming the field
 */
export function withField(scenario: Scenario, path: string, text: string): Scenario {
  const old = retiredField(path, Number(text))
  if (old !== null) return { ...scenario, room: { ...scenario.room, ...old.values } }
  const found = fieldAt(path)
  if (found === null) throw new ProblemError([unknown(path, undefined, fieldPaths())])
  const value = valueFromText(found.field.type, text)
  const problems: Problem[] = []
  const result = mutable(scenario)
  readField(result, path, value, problems)
  if (problems.length > 0) throw new ProblemError(problems)
  return result as unknown as Scenario
}

function valueFromText(type: string, text: string): unknown {
  const trimmed = text.trim()
  if (type === 'number') return trimmed === '' ? text : numberOrText(trimmed)
  if (type === 'switch')
    return trimmed === 'true' || trimmed === 'on'
      ? true
      : trimmed === 'false' || trimmed === 'off'
        ? false
        : text
  if (type === 'several') return trimmed === '' ? [] : trimmed.split(/[\s,;+]+/)
  if (type === 'dayProfile') return trimmed.split(/[\s,;]+/).map(numberOrText)
  return text
}

function numberOrText(text: string): number | string {
  const value = Number(text)
  return Number.isNaN(value) ? text : value
}

/** The scenario, or a ProblemError with all that is wrong. Warnings are returned beside it. */
export function requireScenario(
  value: unknown,
  file?: string,
): { scenario: Scenario; warnings: readonly Problem[] } {
  const parsed = parseScenario(value, file)
  if (parsed.scenario === null) throw new ProblemError(parsed.problems)
  return { scenario: parsed.scenario, warnings: parsed.problems }
}

/** Reads a scenario file's text. @throws ProblemError when it is not JSON or not a scenario */
export function readScenarioFile(
  text: string,
  file: string,
): { scenario: Scenario; warnings: readonly Problem[] } {
  let value: unknown
  try {
    value = JSON.parse(text)
  } catch (error) {
    throw stop(
      'scenario-not-json',
      `This is not a scenario file (${(error as Error).message}).`,
      'Choose a .json file saved by Duskbank.',
      { file },
    )
  }
  return requireScenario(value, file)
}

/** The text of a scenario file: only what differs from the defaults when `short`. */
export function writeScenarioFile(scenario: Scenario, short = false): string {
  return `${JSON.stringify({ [FILE_MARK]: SCENARIO_VERSION, ...(short ? differences(scenario) : scenario) }, null, 2)}\n`
}

/** The groups and fields that differ from the defaults. */
export function differences(scenario: Scenario): Record<string, Record<string, unknown>> {
  const usual = defaultScenario() as unknown as MutableScenario
  const out: MutableScenario = {}
  for (const [group, fields] of Object.entries(scenario as unknown as MutableScenario)) {
    for (const [name, value] of Object.entries(fields)) {
      if (JSON.stringify(value) === JSON.stringify(usual[group]![name])) continue
      out[group] = { ...out[group], [name]: value }
    }
  }
  return out
}
