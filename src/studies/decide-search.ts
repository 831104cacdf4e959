/** The order in which combinations are tried, and which need not be. */
import type { Measure } from '#model/design/measures'
import type { PlantKind } from './decide-machines.ts'
import type { Combination, Trials } from './decide-trial.ts'
import { missed } from './decide-ways.ts'

/** Sets of measures whose rooms are the same. */
export type Group = readonly (readonly Measure[])[]

/** How much better than guessed a panel may turn out once it is sized as built: share of cost and electricity, K or K·h. */
const BETTER_COST = 0.8
const BETTER_ELECTRICITY = 0.7
const BETTER_MISS = 0.5

interface Guessed {
  readonly set: readonly Measure[]
  readonly hopeful: Combination
}

/**
 * A combination is left out only where one known already meets the target without electricity or water, at a lower price
 * than its own without anything simulated, and needs no roof work that it does without; or where some hot weeks show that
 * it misses the target by more than a cheaper one that draws nothing: it can then be neither on the front nor a named way.
 * Panels are guessed first. Where the largest area is far from enough they are left so; of the rest, what might be best
 * with some luck is sized as it would be built.
 */
export class Search {
  readonly done: Combination[] = []
  /** Combinations there are of the sets gone through, with those that were seen to lose and those that need no machine. */
  looked = 0
  private guessed: Guessed[] = []
  private readonly free: Combination[] = []
  private readonly trials: Trials
  private readonly plants: readonly PlantKind[]
  private readonly mostBesidePlant: number
  private readonly skips: boolean

  constructor(trials: Trials, plants: readonly PlantKind[], mostBesidePlant: number, skips: boolean) {
    this.trials = trials
    this.plants = plants
    this.mostBesidePlant = mostBesidePlant
    this.skips = skips
  }

  /** Every combination of the sets of a group, with every plant. */
  group(group: Group): void {
    for (const set of group) {
      const withPlants = set.length <= this.mostBesidePlant
      this.looked += withPlants ? 1 + this.plants.length : 1
      if (this.loses(set, 'none')) continue
      if (this.skips && !withPlants && group.length === 1 && this.missesMore(set)) continue
      const prepared = this.trials.with(set)
      const alone = this.trials.run(prepared, set, 'none')
      this.add(alone)
      // nothing is left for a machine to do
      if (alone.meets || !withPlants) continue
      for (const plant of this.plants) {
        if (this.loses(set, plant)) continue
        if (plant !== 'panels' || set.length === 0) this.add(this.trials.run(prepared, set, plant))
        else {
          const rough = this.trials.run(prepared, set, plant, 'rough')
          const best = hopeful(rough)
          if (best.meets && !this.skips) this.add(this.trials.run(prepared, set, plant))
          else if (best.meets) this.guessed.push({ set, hopeful: best })
          else this.add(rough)
        }
      }
    }
  }

  /**
   * Sizes as built what would be wanted with some luck, until nothing guessed is; yields how many are waiting.
   * @param wanted  those of some combinations that matter
   */
  *refine(wanted: (tried: readonly Combination[]) => readonly Combination[]): Generator<number> {
    for (;;) {
      const hoped = new Set(wanted([...this.done, ...this.guessed.map((one) => one.hopeful)]))
      const waiting = this.guessed.filter((one) => hoped.has(one.hopeful))
      const next = waiting[0]
      if (next === undefined) return
      this.guessed = this.guessed.filter((one) => one !== next)
      this.add(this.trials.run(this.trials.with(next.set), next.set, 'panels'))
      yield waiting.length
    }
  }

  private add(one: Combination): void {
    this.done.push(one)
    if (one.meets && one.electric_J === 0 && one.water_m3 === 0 && one.yearlyCost === 0) this.free.push(one)
  }

  /** True where measures alone are seen to miss the target by more than others do that cost less and draw nothing. */
  private missesMore(set: readonly Measure[]): boolean {
    const price = this.trials.leastFirstCost(set, 'none')
    const cheaper = this.done.filter(
      (known) =>
        known.plant === 'none' &&
        known.electric_J === 0 &&
        known.firstCost <= price &&
        Math.round(known.totalCost) < Math.round(price),
    )
    return cheaper.length > 0 && this.trials.missesBy(set, Math.min(...cheaper.map(missed)))
  }

  private loses(set: readonly Measure[], plant: PlantKind): boolean {
    if (!this.skips || set.length === 0) return false
    const least = this.trials.leastFirstCost(set, plant)
    const onRoof = plant === 'panels' || set.some((measure) => measure.onRoof)
    return this.free.some((known) => known.firstCost < least && (onRoof || !known.onRoof))
  }
}

/** What a guessed combination may come to at best. */
function hopeful(rough: Combination): Combination {
  const miss = rough.miss - BETTER_MISS
  return {
    ...rough,
    miss,
    meets: miss <= 0,
    firstCost: BETTER_COST * rough.firstCost,
    totalCost: BETTER_COST * rough.totalCost,
    electric_J: BETTER_ELECTRICITY * rough.electric_J,
  }
}
