import { describe, expect, test } from 'vitest'
import { gaussian, seededRandom } from '#model/basis/numbers'
import { ProblemError } from '#model/basis/words'
import { powerPlans, USUAL_REPEATABILITY } from '#model/panels/notebook'

/** Share of simulated trials in which two recipes are said to differ; every board is read in every moment. */
function found(difference: number, boards: number, moments: number, seed: number): number {
  const random = seededRandom(seed)
  const { board, moment } = USUAL_REPEATABILITY
  const mean = (n: number, make: () => number) =>
    Array.from({ length: n }, make).reduce((a, b) => a + b, 0) / n
  const recipe = (truth: number) =>
    mean(boards, () => {
      const own = truth + board * gaussian(random)
      return mean(moments, () => own + moment * gaussian(random))
    })
  const sd = Math.sqrt((2 * (board ** 2 + moment ** 2 / moments)) / boards)
  const TRIALS = 4000
  let hits = 0
  for (let i = 0; i < TRIALS; i++) if (Math.abs(recipe(difference) - recipe(0)) > 1.96 * sd) hits++
  return hits / TRIALS
}

describe('boards and moments that tell two recipes apart', () => {
  test.each(powerPlans(0.02, USUAL_REPEATABILITY))(
    '$boards boards in $moments moments find 0.02 as often as stated, and 5 % false',
    ({ boards, moments, power_frac }) => {
      // Three standard deviations of a share of 0.9 among 4000 are 1.4 %.
      expect(Math.abs(found(0.02, boards, moments, 31) - power_frac)).toBeLessThan(0.015)
      expect(power_frac).toBeGreaterThanOrEqual(0.9)
      expect(Math.abs(found(0, boards, moments, 32) - 0.05)).toBeLessThan(0.012)
    },
  )

  test('more boards need fewer moments; what cannot be seen is refused with what is left to do', () => {
    const plans = powerPlans(0.02, USUAL_REPEATABILITY)
    expect(plans.length).toBeGreaterThan(1)
    plans.slice(1).forEach(({ moments }, i) => expect(moments).toBeLessThan(plans[i]!.moments))
    expect(() => powerPlans(0.0001, USUAL_REPEATABILITY)).toThrow(ProblemError)
  })
})
