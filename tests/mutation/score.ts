import type { Stryker } from '@stryker-mutator/core'

export type Mutant = Awaited<ReturnType<Stryker['runMutationTest']>>[number]

/** How the tests did against some mutants. */
export interface Score {
  readonly mutants: number
  readonly killed: number
}

/** Left out by rule (`error-words.js`). */
export const leftOut = ({ status }: Mutant): boolean => status === 'Ignored'

/** Not in the sample (`sample.js`): a checker of Stryker's has no other word for it. */
export const undrawn = ({ status }: Mutant): boolean => status === 'CompileError'

/** Not seen by any test: run and passed by all, or not even run. */
export const survived = ({ status }: Mutant): boolean => status === 'Survived' || status === 'NoCoverage'

/** A mutant is killed by a test that fails, by tests that no longer end, or by a test file that no longer loads. */
export function scoreOf(mutants: readonly Mutant[]): Score {
  const counted = mutants.filter((mutant) => !leftOut(mutant) && !undrawn(mutant))
  return { mutants: counted.length, killed: counted.filter((mutant) => !survived(mutant)).length }
}

export const pct = ({ mutants, killed }: Score): number => (100 * killed) / mutants

export const words = (score: Score): string =>
  `${score.mutants} mutants, ${score.killed} killed, ${pct(score).toFixed(1)} %`
