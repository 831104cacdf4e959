import type { ComparisonAxes } from '#model/design/comparison'
import type { Problem } from '#model/basis/words'
import type { Scenario } from '#model/design/scenario'
import { LOAD_CUTS } from '#model/design/measures'
import type { PlanKind } from '#model/building/year'
import type { ClimateChoice } from '#live/climate-choice.svelte.ts'
import { LongRun } from '#live/long-run.svelte.ts'
import { problemsOf } from '#live/problems-of.ts'

/** What is ticked: climates by id, the rest as in `ComparisonAxes`. */
export interface Ticked extends Omit<ComparisonAxes, 'climates'> {
  readonly climates: readonly string[]
}

/** Sets of one click. */
export type QuickSet = 'plans' | 'covers' | 'baselines'

/** Any set of climates, plans, coatings, covers and changes of the building, set side by side in a worker. */
export class CompareRun {
  readonly run = new LongRun('compare')
  ticked: Ticked = $state.raw({ climates: [], plans: [], coatings: ['own'], covers: [], cuts: [] })
  /** Towns added to the climates, by id. */
  towns: readonly string[] = $state.raw([])
  /** False until something was ticked for the first time. */
  opened = false
  /** What kept the climates from being read. */
  climateProblems = $state.raw<readonly Problem[]>([])
  /** How many designs the comparison that was begun last has. */
  total = $state(0)
  /** The scenario as it was when the comparison began. */
  #asked: Scenario | null = $state.raw(null)
  #turn = 0

  /** How many designs are ticked. */
  get count(): number {
    const { climates, plans, coatings, covers, cuts } = this.ticked
    return climates.length * plans.length * coatings.length * covers.length * (1 + cuts.length)
  }

  /** Ticks what answers one question and leaves the rest as described. */
  tickQuick(set: QuickSet | null, scenario: Scenario, climate: string): void {
    this.opened = true
    this.ticked = {
      climates: [climate],
      plans: set === 'plans' ? ['nightOnly', 'allDay'] : [scenario.plan.kind as PlanKind],
      coatings: ['own'],
      covers: set === 'covers' ? ['bare', 'film'] : [scenario.cover.kind],
      cuts: set === 'baselines' ? LOAD_CUTS.map(({ name }) => name) : [],
    }
  }

  /** Adds a town to the climates, ticked. */
  addTown(id: string): void {
    const withTown = (ids: readonly string[]) => (ids.includes(id) ? ids : [...ids, id])
    this.towns = withTown(this.towns)
    this.ticked = { ...this.ticked, climates: withTown(this.ticked.climates) }
  }

  /** Reads the climates and begins; the last start wins. */
  async start(scenario: Scenario, choice: ClimateChoice, nameOf: (id: string) => string): Promise<void> {
    const turn = ++this.#turn
    const { climates: ids, ...axes } = this.ticked
    this.climateProblems = []
    try {
      const climates = await Promise.all(
        ids.map(async (id) => ({ name: nameOf(id), weather: await choice.recordOf(id) })),
      )
      if (turn !== this.#turn || climates.length === 0) return
      this.#asked = scenario
      this.total = this.count
      void this.run.start({ scenario, axes: { climates, ...axes } }, climates[0]!.weather)
    } catch (reason) {
      if (turn === this.#turn) this.climateProblems = problemsOf(reason)
    }
  }

  stop(): void {
    this.#turn++
    this.run.stop()
  }

  /** False once the description has changed since. */
  isFor(scenario: Scenario): boolean {
    return this.#asked === scenario
  }
}
