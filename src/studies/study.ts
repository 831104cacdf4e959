import type { Problem } from '#model/basis/words'
import type { Scenario } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'

/** How far a study is: 0…1 done, and what there is of the result so far where that can be shown. */
export interface Step<SoFar = never> {
  readonly share: number
  readonly soFar?: SoFar
}

/** What a study comes to, and what is to be said about it. */
export interface Reply<Result> {
  readonly result: Result
  readonly remarks: readonly Problem[]
}

/**
 * A question to the program, worked out step by step: a generator, so that whoever asks can show progress, pause between
 * steps, or stop by asking for no further one. @throws ProblemError for what a person can mend
 */
export type Study<Result, SoFar = never> = Generator<Step<SoFar>, Reply<Result>>

/** A scenario in a climate: what most studies are asked about. */
export interface Asked {
  readonly scenario: Scenario
  readonly weather: WeatherRecord
}

/** Runs a study to its end. */
export function finish<Result, SoFar>(
  study: Study<Result, SoFar>,
  onStep: (step: Step<SoFar>) => void = () => {},
): Reply<Result> {
  for (;;) {
    const next = study.next()
    if (next.done === true) return next.value
    onStep(next.value)
  }
}

/** A generator that counts what is done, as the steps of a study. */
export function* counted<Result>(
  work: Generator<number, Result>,
  total: number,
): Generator<Step<never>, Result> {
  for (;;) {
    const next = work.next()
    if (next.done === true) return next.value
    yield { share: next.value / total }
  }
}
