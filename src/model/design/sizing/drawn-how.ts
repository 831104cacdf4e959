import { count, figure, words, type Wording } from '#model/basis/words'
import type { UncertaintyResult } from './result.ts'

/** How the draws behind a range were had, and how far those that are read from a fit are off. */
export function drawnHow({
  draws,
  simulated,
  miss_frac,
}: Pick<UncertaintyResult, 'draws' | 'simulated' | 'miss_frac'>): Wording {
  if (simulated === draws) return words`All ${count(draws)} draws are simulated.`
  if (miss_frac === null)
    return words`The first ${count(simulated)} of ${count(draws)} draws are simulated and come out alike.`
  return words`Of ${count(draws)} draws ${count(simulated)} are simulated and the others read from a fit, which misses a simulated draw left out of it by typically ${figure(100 * miss_frac, 'count', 2)} % of its area.`
}
