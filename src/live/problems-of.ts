import { ProblemError, type Problem } from '#model/basis/words'

/** The problems inside anything that was thrown, so that each is shown with its sentence. */
export function problemsOf(reason: unknown): readonly Problem[] {
  if (reason instanceof ProblemError) return reason.problems
  const message = reason instanceof Error ? reason.message : String(reason)
  return [
    {
      code: 'unexpected',
      severity: 'error',
      message: `Something went wrong: ${message}.`,
      remedy: 'Undo the last change and try again.',
      place: {},
    },
  ]
}
