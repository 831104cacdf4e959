import { isTaken, type Scenario } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { Decision, joinDecisions } from '#studies/decide.ts'
import type { Way } from '#studies/decide-ways.ts'
import { HoursRun } from '#live/hours-run.svelte.ts'
import type { HoursSpread } from '#studies/decide-sure.ts'
import { SharedRun } from '#live/shared-run.svelte.ts'

/** More workers than this wait for each other's memory. */
const MOST_WORKERS = 4

/** The search over combinations, shared out over the machine's cores. */
export class DecideRun extends SharedRun<'decide'> {
  /** Once every share is done. */
  decision = $state.raw<Decision | null>(null)
  /** How sure the ways of the decision are: begun once it is there. */
  readonly sure = new HoursRun()
  /** The description it was asked for. */
  #for: Scenario | null = $state.raw(null)
  #join: typeof joinDecisions | null = null

  constructor() {
    super('decide', workers())
  }

  /** False once the description has changed since, but for words, the way taken and an area of one's own. */
  isFor(scenario: Scenario): boolean {
    return this.#for !== null && searched(this.#for) === searched(scenario)
  }

  /** The ways that are worth naming, of what was looked at so far; none before there is anything. */
  get best(): readonly Way[] {
    const shares = this.running ? this.soFar : []
    return this.#for === null || shares.length === 0 || this.#join === null
      ? []
      : this.#join({ scenario: this.#for }, shares).ways
  }

  async start(scenario: Scenario, weather: WeatherRecord): Promise<void> {
    const { joinDecisions: join } = await import('#studies/decide.ts')
    this.#join = join
    this.#for = scenario
    this.decision = null
    this.sure.stop()
    const of = this.workers
    const parts = Array.from({ length: of }, (_, index) => ({ scenario, part: { index, of } }))
    // A share that was stopped or failed has only what it had so far: that is no decision.
    const shares = await this.all(parts, weather)
    if (shares === null) return
    this.decision = join({ scenario }, shares)
    void this.sure.start(
      scenario,
      this.decision.ways.map((way) => way.combination),
      weather,
    )
  }

  /** How sure the way of that place is; null until it is known. */
  sureOf(way: number): HoursSpread | null {
    return this.sure.result?.[way] ?? null
  }

  /** The same of the way that a description has taken, if it was found for just this description. */
  sureOfTaken(scenario: Scenario): HoursSpread | null {
    const { way } = scenario.job
    if (this.decision === null || !this.isFor(scenario)) return null
    const place = this.decision.ways.findIndex(({ combination }) => isTaken(combination, way))
    return place < 0 ? null : this.sureOf(place)
  }
}

/** What of a description a search depends on. */
function searched(scenario: Scenario): string {
  return JSON.stringify({
    ...scenario,
    job: null,
    target: { ...scenario.target, autoArea: true, area_m2: 0 },
  })
}

const workers = (): number =>
  Math.max(1, Math.min(MOST_WORKERS, globalThis.navigator?.hardwareConcurrency ?? 2))
