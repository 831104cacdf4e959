import type { Problem } from '#model/basis/words'
import type { Scenario } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { Deciding, Decision, KeptFor } from '#studies/decide.ts'
import { LongRun } from '#live/long-run.svelte.ts'

/** More workers than this wait for each other's memory. */
const MOST_WORKERS = 4

/** What is asked, beside the description. */
export interface DecideChoices {
  readonly keptFor: KeptFor
  /** Null: no limit. */
  readonly budget: number | null
}

type Part = Omit<Deciding, 'weather'>

/** The search over combinations, shared out over the machine's cores. */
export class DecideRun {
  readonly #shares: readonly LongRun<'decide'>[]
  /** Once every share is done. */
  decision = $state.raw<Decision | null>(null)
  /** The shares of the search under way or done; null once it is stopped. */
  #asked: readonly Part[] | null = null
  /** The description it was asked for. */
  #for: Scenario | null = $state.raw(null)

  constructor() {
    const cores = globalThis.navigator?.hardwareConcurrency ?? 2
    const count = Math.max(1, Math.min(MOST_WORKERS, cores))
    this.#shares = Array.from({ length: count }, () => new LongRun('decide'))
  }

  get running(): boolean {
    return this.#shares.some((one) => one.running)
  }

  /** 0…1 while running. */
  get share(): number {
    return this.#shares.reduce((sum, one) => sum + (one.running ? one.share : 1), 0) / this.#shares.length
  }

  get problems(): readonly Problem[] {
    return this.#shares.flatMap((one) => one.problems).slice(0, 1)
  }

  /** False once the description has changed since. */
  isFor(scenario: Scenario): boolean {
    return this.#for === scenario
  }

  async start(scenario: Scenario, weather: WeatherRecord, choices: DecideChoices): Promise<void> {
    const { joinDecisions } = await import('#studies/decide.ts')
    this.#for = scenario
    this.decision = null
    const of = this.#shares.length
    const parts: Part[] = this.#shares.map((_, index) => ({ scenario, ...choices, part: { index, of } }))
    this.#asked = parts
    await Promise.all(this.#shares.map((one, i) => one.start(parts[i]!, weather)))
    // A share that was stopped or failed has only what it had so far: that is no decision.
    if (this.#asked !== parts || this.problems.length > 0) return
    this.decision = joinDecisions(
      { scenario, budget: choices.budget },
      this.#shares.map(({ result }) => result!),
    )
  }

  stop(): void {
    this.#asked = null
    for (const one of this.#shares) one.stop()
  }
}
