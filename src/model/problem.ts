/**
 * Problems that are for people: bad files, bad fields, physical nonsense.
 *
 * A room never throws a `Problem` for something a *programmer* did wrong (that is a `RangeError` at the
 * entrance of a stage); it throws or returns one where a user can mend it.
 */

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
  /** What was wrong, in one sentence, with the offending value. */
  readonly message: string
  /** What the user can do, in one sentence. */
  readonly remedy: string
  readonly place: Place
}

/** Carries one or more problems up to the edge (page or shell), where they are shown. */
export class ProblemError extends Error {
  readonly problems: readonly Problem[]
  constructor(problems: readonly Problem[]) {
    super(problems.map(problemSentence).join(' '))
    this.name = 'ProblemError'
    this.problems = problems
  }
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
export function stop(code: string, message: string, remedy: string, place: Place = {}): ProblemError {
  return new ProblemError([{ code, severity: 'error', message, remedy, place }])
}
