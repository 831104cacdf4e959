/** What panels that were only guessed may come to once they are sized as built: bounds that are checked as the search goes on. */
import type { Combination } from './decide-trial.ts'

/** How much better: shares of cost and electricity, and of the distance from the target in its own unit, K or K·h. */
interface Slack {
  readonly cost: number
  readonly electricity: number
  readonly miss: number
}

type Guess = NonNullable<Combination['guess']>

/**
 * Ways to be better. An area that is guessed may come out smaller, and all is better at once. The largest area is known, and
 * only its tank is not: one that costs less cools hardly better, one that cools better costs no less.
 */
type Turn = 'enough' | 'cheaper' | 'cooler'
const TURNS: Readonly<Record<Guess, readonly Turn[]>> = { enough: ['enough'], floor: ['cheaper', 'cooler'] }

/** Before any was sized: guessed steps end within these; of the largest area only the tank is taken from another room. */
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

const NONE: Slack = { cost: 0, electricity: 0, miss: 0 }

/** The bounds of one search. */
export class Hopes {
  private readonly count: Record<Guess, number> = { enough: 0, floor: 0 }
  private readonly worst: Record<Turn, Slack> = { enough: NONE, cheaper: NONE, cooler: NONE }

  /** What a guessed combination may come to at best: one of these. */
  best(rough: Combination): readonly Combination[] {
    return TURNS[rough.guess!].map((turn) => better(rough, this.slack(rough, turn)))
  }

  /** One that was sized: where it is better than was hoped, all others may be so too. */
  compare(rough: Combination, built: Combination): void {
    const guess = rough.guess!
    this.count[guess]++
    const cost = Math.max(1 - built.totalCost / rough.totalCost, 1 - built.firstCost / rough.firstCost)
    const turn: Turn = guess === 'enough' ? guess : cost > 0 ? 'cheaper' : 'cooler'
    const worst = this.worst[turn]
    this.worst[turn] = {
      cost: Math.max(worst.cost, cost),
      electricity: Math.max(worst.electricity, 1 - built.electric_J / Math.max(1, rough.electric_J)),
      miss: Math.max(worst.miss, Math.max(0, rough.miss) - Math.max(0, built.miss)),
    }
  }

  private slack(rough: Combination, turn: Turn): Slack {
    const guess = rough.guess!
    const least = this.count[guess] < SOME ? FIRST[guess] : LEAST[guess]
    const worst = this.worst[turn]
    const times = guess === 'floor' ? TIMES_WORST : 1
    // degree-hours may be many: of them at least the share that cost may be off by
    const miss = Math.max(least.miss, least.cost * rough.miss, times * worst.miss)
    const cost = Math.max(least.cost, times * worst.cost)
    const electricity = Math.max(least.electricity, times * worst.electricity)
    if (turn !== 'cooler') return { cost, electricity, miss }
    // where it may be enough after all, so may a smaller area
    return { cost: miss < rough.miss ? 0 : FIRST.enough.cost, electricity, miss }
  }
}

function better(rough: Combination, { cost, electricity, miss }: Slack): Combination {
  const least = rough.miss - miss
  return {
    ...rough,
    miss: least,
    meets: least <= 0,
    firstCost: (1 - cost) * rough.firstCost,
    totalCost: (1 - cost) * rough.totalCost,
    electric_J: (1 - electricity) * rough.electric_J,
  }
}
