import type { Quantity } from './column/quantity.ts'
import type { Said } from './said.ts'

/** The answer that leaves a reading as it is. */
export const AS_READ = 'as-read'
/** What can be asked about besides a quantity's unit; its answer is `as-read`, or another option of the opening. */
export const ASKED_BESIDE = ['columns', 'clock', 'latitude'] as const

/** One answer, and what it changes of the options the file is opened with. */
export interface QuestionChoice {
  readonly words: string
  readonly change: Said
}

/** What the reading can't settle: nobody should build on it before it is answered. */
export interface OpenQuestion {
  /** `units`: of several quantities at once; which, its choices say. */
  readonly about: Quantity | 'units' | (typeof ASKED_BESIDE)[number]
  readonly sentence: string
  /** The likeliest first. */
  readonly choices: readonly QuestionChoice[]
}

/** The choice that a reading is right as it is. */
export function asRead(about: (typeof ASKED_BESIDE)[number]): QuestionChoice {
  return { words: 'It is right as it is.', change: { answers: { [about]: AS_READ } } }
}

/** Options with one choice made. */
export function withChoice<T extends Said>(options: T, { change }: QuestionChoice): T {
  return {
    ...options,
    site: { ...options.site, ...change.site },
    time: { ...options.time, ...change.time },
    answers: { ...options.answers, ...change.answers },
  }
}
