/** What panels that were only guessed may come to once they are sized as built: bounds that are checked as the search goes on. */
import type { Combination } from './decide-trial.ts'

/** How much better: shares of cost and electricity, and of the distance from the target in its own unit, K or K·h. */
interface Slack {
  readonly cost: number
  readonly electricity: number
  readonly miss: number
}

type Guess = NonNullable<Combination['guess']>

/** Before any was sized: guessed steps end within these; the largest area is known, and only its tank is taken from another room. */
const FIRST: Readonly<Record<Guess, Slack>> = {
  enough: { cost: 0.2, electricity: 0.3, miss: 0.5 },
  floor: { cost: 0.03, electricity: 0.03, miss: 0.1 },
}
/** Once some were sized: no less than these, and several times the worst that was seen. */
const LEAST: Readonly<Record<Guess, Slack>> = {
  enough: FIRST.enough,
  floor: { cost: 0.003, electricity: 0.003, miss: 0.005 },
}
const SOME = 4
const TIMES_WORST = 3

/** The bounds of one search. */
export class Hopes {
  private readonly seen: Record<Guess, { count: number; worst: Slack }> = {
    enough: { count: 0, worst: { cost: 0, electricity: 0, miss: 0 } },
    floor: { count: 0, worst: { cost: 0, electricity: 0, miss: 0 } },
  }

  /** What a guessed combination may come to at best. */
  best(rough: Combination): Combination {
    const { cost, electricity, miss } = this.slack(rough.guess!)
    const least = rough.miss - Math.max(miss, cost * rough.miss)
    return {
      ...rough,
      miss: least,
      meets: least <= 0,
      firstCost: (1 - cost) * rough.firstCost,
      totalCost: (1 - cost) * rough.totalCost,
      electric_J: (1 - electricity) * rough.electric_J,
    }
  }

  /** One that was sized: where it is better than was hoped, all others may be so too. */
  compare(rough: Combination, built: Combination): void {
    const seen = this.seen[rough.guess!]
    seen.count++
    seen.worst = {
      cost: Math.max(
        seen.worst.cost,
        1 - built.totalCost / rough.totalCost,
        1 - built.firstCost / rough.firstCost,
      ),
      electricity: Math.max(seen.worst.electricity, 1 - built.electric_J / Math.max(1, rough.electric_J)),
      miss: Math.max(seen.worst.miss, Math.max(0, rough.miss) - Math.max(0, built.miss)),
    }
  }

  private slack(guess: Guess): Slack {
    const { count, worst } = this.seen[guess]
    const least = count < SOME ? FIRST[guess] : LEAST[guess]
    const times = guess === 'floor' ? TIMES_WORST : 1
    return {
      cost: Math.max(least.cost, times * worst.cost),
      electricity: Math.max(least.electricity, times * worst.electricity),
      miss: Math.max(least.miss, times * worst.miss),
    }
  }
}
