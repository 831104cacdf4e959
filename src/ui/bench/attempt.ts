import type { Problem } from '#model/basis/words'
import { problemsOf } from '#live/problems-of.ts'

/** What a calculation gives, or what is wrong with what it was given. */
export interface Attempt<T> {
  readonly result: T | null
  readonly problems: readonly Problem[]
}

export function attempt<T>(work: () => T): Attempt<T> {
  try {
    return { result: work(), problems: [] }
  } catch (reason) {
    return { result: null, problems: problemsOf(reason) }
  }
}
