/**
 * Problems that are for people: bad files, bad fields, physical nonsense.
 *
 * A room never throws a `Problem` for something a *programmer* did wrong (that is a `RangeError` at the
 * entrance of a stage); it throws or returns one where a user can mend it.
 */
import type { UnitSystem } from '#model/basis/units'
import { wordingText } from './wording-text.ts'
import type { Text, Wording } from './wording.ts'

/** Where a problem sits: whichever of file, line (1-based), column and field is known. */
export interface Place {
  readonly file?: string
  readonly line?: number
  readonly column?: string
  readonly field?: string
}

/** A sentence for people with a stable code, the place, and what to do about it. */
export interface Problem {
  /** Stable kebab-case code, e.g. `weather-year-too-short`. */
  readonly code: string
  /** `error` stops the work; `warning` goes on and is shown. */
  readonly severity: 'error' | 'warning'
  /** What was wrong, in one sentence, with the offending value; in SI. */
  readonly message: string
  /** The message with its numbers kept as numbers, where it can be given in other units too. */
  readonly wording?: Wording
  /** What the user can do, in one sentence. */
  readonly remedy: string
  readonly place: Place
}

/** Carries one or more problems up to the edge (page or shell), where they are shown. */
export class ProblemError extends Error {
  readonly problems: readonly Problem[]
  constructor(problems: readonly Problem[]) {
    const shown = fewAndShort(problems)
    super(shown.map(problemSentence).join(' '))
    this.name = 'ProblemError'
    this.problems = shown
  }
}

const MOST_SHOWN = 40
const LONGEST_TEXT = 400

/** Problems fit to be shown whatever a file held: the first few, their texts cut to a readable length. */
export function fewAndShort(problems: readonly Problem[]): readonly Problem[] {
  const shown = problems.slice(0, MOST_SHOWN).map(shortened)
  const rest = problems.slice(MOST_SHOWN)
  if (rest.length === 0) return shown
  const severity = rest.some((problem) => problem.severity === 'error') ? 'error' : 'warning'
  const message = '… and more like these.'
  return [...shown, { code: 'more-problems', severity, message, remedy: '', place: {} }]
}

function shortened(problem: Problem): Problem {
  const { file, column, field, ...line } = problem.place
  const names = Object.entries({ file, column, field }).filter(([, text]) => text !== undefined)
  const place = { ...line, ...Object.fromEntries(names.map(([name, text]) => [name, cut(text!, 100)])) }
  if (problem.message.length <= LONGEST_TEXT) return { ...problem, place }
  // A wording is not cut, for its numbers; a message that is has none any more.
  const { code, severity, remedy } = problem
  return { code, severity, message: cut(problem.message, LONGEST_TEXT), remedy, place }
}

function cut(text: string, most: number): string {
  return text.length <= most ? text : `${text.slice(0, most)}…`
}

/** A message as a problem holds it: its SI text, and where it has numbers, the wording too. */
export function said(wording: Text): Pick<Problem, 'message' | 'wording'> {
  if (typeof wording === 'string') return { message: wording }
  return { message: wordingText(wording, 'si').replaceAll('\u00a0', ' '), wording }
}

/** The message in the reader's units, as far as it knows its numbers. */
export function messageIn({ message, wording }: Problem, system: UnitSystem): string {
  return wording === undefined ? message : wordingText(wording, system)
}

/** One line for a terminal or a message box: place, what was wrong, what to do. */
export function problemSentence(problem: Problem): string {
  const { file, line, column, field } = problem.place
  const where = [
    file,
    line === undefined ? undefined : `line ${line}`,
    column === undefined ? undefined : `column ${column}`,
    field,
  ]
    .filter((part) => part !== undefined)
    .join(', ')
  return `${where === '' ? '' : `${where}: `}${problem.message} ${problem.remedy}`.trim()
}

/** Shorthand for an error that stops the work. */
export function stop(code: string, message: Text, remedy: string, place: Place = {}): ProblemError {
  return new ProblemError([{ code, severity: 'error', ...said(message), remedy, place }])
}
