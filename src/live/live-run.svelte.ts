import type { Problem } from '#model/problem.ts'
import type { Scenario } from '#model/scenario/fields.ts'
import type { WeatherRecord } from '#model/weather/record.ts'
import { Engine, Stopped } from '#live/engine.ts'
import { problemsOf } from '#live/problems-of.ts'
import type { LiveAnswer } from '#live/tasks.ts'

interface Question {
  readonly scenario: Scenario
  readonly weather: WeatherRecord
}

/**
 * The answer that follows the description. One question is with the worker, at most one waits: the newest;
 * those between are never asked. An answer stays on screen, marked `updating`, until the next one is there.
 */
export class LiveRun {
  answer = $state.raw<LiveAnswer | null>(null)
  problems = $state.raw<readonly Problem[]>([])
  /** True while what is shown is not yet the answer to what is described. */
  updating = $state(false)
  /** Milliseconds the last answer took, worker and way included. */
  took_ms = $state(0)

  readonly #engine = new Engine()
  #asked: Question | null = null
  #next: Question | null = null

  ask(scenario: Scenario, weather: WeatherRecord): void {
    this.#next = { scenario, weather }
    this.updating = true
    if (!this.#asked) void this.#work()
  }

  async #work(): Promise<void> {
    while (this.#next) {
      const question = this.#next
      this.#asked = question
      this.#next = null
      const begun = performance.now()
      try {
        const answer = await this.#engine.run('answer', question.scenario, question.weather)
        if (this.#stillWanted(question)) {
          this.answer = answer
          this.problems = []
          this.took_ms = performance.now() - begun
        }
      } catch (reason) {
        if (reason instanceof Stopped) continue
        if (!this.#next) this.problems = problemsOf(reason)
      }
    }
    this.#asked = null
    this.updating = false
  }

  /** A newer question in other weather makes this answer stale; in the same weather it is a step on the way. */
  #stillWanted(question: Question): boolean {
    return this.#next === null || this.#next.weather === question.weather
  }
}
