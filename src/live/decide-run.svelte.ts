import type { Problem } from '#model/basis/words'
import type { Scenario } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { Decision } from '#studies/decide.ts'
import { SharedRun } from '#live/shared-run.svelte.ts'

/** More workers than this wait for each other's memory. */
const MOST_WORKERS = 4

/** The search over combinations, shared out over the machine's cores. */
export class DecideRun {
  /** Once every share is done. */
  decision = $state.raw<Decision | null>(null)
  /** The description it was asked for. */
  #for: Scenario | null = $state.raw(null)
  readonly #run = new SharedRun('decide', workers())

  get running(): boolean {
    return this.#run.running
  }

  /** 0…1 while running. */
  get share(): number {
    return this.#run.share
  }

  get problems(): readonly Problem[] {
    return this.#run.problems
  }

  /** False once the description has changed since. */
  isFor(scenario: Scenario): boolean {
    return this.#for === scenario
  }

  async start(scenario: Scenario, weather: WeatherRecord): Promise<void> {
    const { joinDecisions } = await import('#studies/decide.ts')
    this.#for = scenario
    this.decision = null
    const of = this.#run.workers
    const parts = Array.from({ length: of }, (_, index) => ({ scenario, part: { index, of } }))
    // A share that was stopped or failed has only what it had so far: that is no decision.
    const shares = await this.#run.all(parts, weather)
    if (shares !== null) this.decision = joinDecisions({ scenario }, shares)
  }

  stop(): void {
    this.#run.stop()
  }
}

const workers = (): number =>
  Math.max(1, Math.min(MOST_WORKERS, globalThis.navigator?.hardwareConcurrency ?? 2))
