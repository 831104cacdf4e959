import type { LiveAnswer } from '#live/messages.ts'
import type { Workbench } from '#live/workbench.svelte.ts'

/** What meets its target in fewer of the years tried is called unsure. */
const SURE_FRAC = 0.8

/** In how many of the years tried the target is met. */
export interface Met {
  readonly met: number
  readonly draws: number
}

/** True where it is known that too many of the years tried miss the target. */
export const isUnsure = (sure: Met | null): sure is Met => sure !== null && sure.met < SURE_FRAC * sure.draws

/** "in 15 of 32 years tried"; the same on every page. */
export const metIn = ({ met, draws }: Met): string =>
  `in ${met === 0 ? 'none' : String(met)} of ${draws} years tried`

/** How sure a design is whose area is not looked for: of its own years, or of those that the search tried; null: not known. */
export function sureOfAnswer(
  { hours, deciding }: Pick<Workbench, 'hours' | 'deciding'>,
  answer: LiveAnswer,
): Met | null {
  const { scenario, area_m2 } = answer
  if (area_m2 > 0 && scenario.target.autoArea) return null
  const spread = hours.of(answer) ?? deciding.sureOfTaken(scenario)
  return spread && { met: Math.round(spread.met_frac * spread.draws), draws: spread.draws }
}
