import { count, figure, words, type Wording } from '#model/basis/words'
import type { UncertaintyResult } from './result.ts'

/** How the draws behind a range were had, and how far those that are read from a fit are off. */
export function drawnHow({
  draws,
  simulated,
  miss_frac,
}: Pick<UncertaintyResult, 'draws' | 'simulated' | 'miss_frac'>): Wording {
  if (simulated === draws) return words`All ${count(draws)} draws are simulated hour by hour.`
  if (miss_frac === null)
    return words`The first ${count(simulated)} of ${count(draws)} draws are simulated hour by hour and come out alike; the others are taken to be the same.`
  return words`${count(simulated)} of the ${count(draws)} draws are simulated hour by hour; the area of the others is estimated from them, typically to ${figure(100 * miss_frac, 'count', 2)} % (as tried on draws that the estimate was not made from).`
}
