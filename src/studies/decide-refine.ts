/** Panels that were guessed, sized as they would be built: here, or on other cores at the same time. */
import { MEASURES, type Measure } from '#model/design/measures'
import type { Combination, Trials } from './decide-trial.ts'

/** Panels beside a set of measures, guessed. */
export interface Guessed {
  readonly set: readonly Measure[]
  readonly rough: Combination
}

/** Where the largest area misses by more, K or K·h, it is looked at first when panels are sized. */
const GUESS_MISSED = 0.5

/** A guess that may have come from another core. */
export const guessedOf = (rough: Combination): Guessed => ({
  set: MEASURES.filter(({ id }) => rough.measures.includes(id)),
  rough,
})

/** The same as it would be built. */
export function sizedAsBuilt(trials: Trials, { set, rough }: Guessed): Combination {
  const sizing = rough.guess === 'floor' && rough.miss > GUESS_MISSED ? 'floor' : 'built'
  return trials.run(trials.with(set), set, 'panels', sizing)
}

/** Other cores that size what waits while this one does. What comes of it is the same, whoever sized it. */
export interface OtherCores {
  /** Those that wait, the next ones first: takes as many as there is room for. Asked anew after each that is sized. */
  offer(waiting: readonly Combination[]): void
  /** True for what was taken, sized by now or not. */
  took(rough: Combination): boolean
  /** What has come back of one that was taken; undefined until it has. */
  sized(rough: Combination): Combination | undefined
}

/** One core. */
export const NO_OTHERS: OtherCores = { offer() {}, took: () => false, sized: () => undefined }

/**
 * The first of those that wait, sized. While another core is at it, others that wait are sized here for later.
 * @param here  what was sized here so far
 * Yields whenever other cores may be heard.
 */
export function* firstSized(
  trials: Trials,
  waiting: readonly Guessed[],
  here: Map<Combination, Combination>,
  others: OtherCores,
): Generator<void, Combination> {
  const first = waiting[0]!.rough
  for (;;) {
    others.offer(waiting.map(({ rough }) => rough).filter((rough) => !here.has(rough)))
    const known = here.get(first) ?? others.sized(first)
    if (known !== undefined) return known
    const own = waiting.find(({ rough }) => !here.has(rough) && !others.took(rough))
    if (own !== undefined) here.set(own.rough, sizedAsBuilt(trials, own))
    yield
  }
}
