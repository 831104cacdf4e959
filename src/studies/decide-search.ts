/** The order in which combinations are tried, and which need not be. */
import type { Measure } from '#model/design/measures'
import { Hopes } from './decide-hopes.ts'
import type { PlantKind } from './decide-machines.ts'
import { firstSized, type Guessed, NO_OTHERS, type OtherCores } from './decide-refine.ts'
import type { Combination, Trials } from './decide-trial.ts'
import { missed } from './decide-ways.ts'

/** Sets of measures whose rooms are the same. */
export type Group = readonly (readonly Measure[])[]

/**
 * A combination is left out only where one known already meets the target without electricity or water, at a lower price
 * than its own without anything simulated, and needs no roof work that it does without; or where some hot weeks show that
 * it misses the target by more than a cheaper one that draws nothing: it can then be neither on the front nor a named way.
 * Panels are guessed first, also where the largest area is not enough; what might be best with some luck (`Hopes`) is sized
 * as it would be built.
 */
export class Search {
  readonly done: Combination[] = []
  /** Combinations there are of the sets gone through, with those that were seen to lose and those that need no machine. */
  looked = 0
  guessed: Guessed[] = []
  private readonly hopes = new Hopes()
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

  /** Takes what was found by several searches. */
  take(done: readonly Combination[], guessed: readonly Guessed[]): void {
    for (const one of done) this.add(one)
    this.guessed.push(...guessed)
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
          if (rough.guess === undefined) this.add(rough)
          else if (!this.skips) this.add(this.trials.run(prepared, set, plant))
          else this.guessed.push({ set, rough })
        }
      }
    }
  }

  /**
   * Sizes as built what would be wanted with some luck, until nothing guessed is; yields how many are waiting.
   * The order in which they count is one and the same on any number of cores.
   * @param wanted  those of some combinations that matter
   */
  *refine(
    wanted: (tried: readonly Combination[]) => readonly Combination[],
    others: OtherCores = NO_OTHERS,
  ): Generator<number> {
    const here = new Map<Combination, Combination>()
    for (;;) {
      const hopeful = this.guessed.map(({ rough }) => this.hopes.best(rough))
      const hoped = new Set(wanted([...this.done, ...hopeful.flat()]))
      const waiting = this.guessed.filter((_, i) => hopeful[i]!.some((one) => hoped.has(one)))
      const next = waiting[0]
      if (next === undefined) return
      const sizing = firstSized(this.trials, waiting, here, others)
      let step = sizing.next()
      for (; step.done !== true; step = sizing.next()) yield waiting.length
      const built = step.value
      this.guessed = this.guessed.filter((one) => one !== next)
      this.hopes.compare(next.rough, built)
      this.add(built)
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
