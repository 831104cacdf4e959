import type { WeatherRecord } from '#model/outdoors/weather'
import type { Verb } from '#studies/index.ts'
import { Engine, Stopped } from '#live/engine.ts'
import type { Input, Output } from '#live/messages.ts'

export interface Question<V extends Verb> {
  readonly input: Input<V>
  readonly weather: WeatherRecord
}

/** What a `LatestWins` reports to. `newest`: nothing newer waits. */
export interface Listener<V extends Verb> {
  readonly take: (output: Output<V>, question: Question<V>, newest: boolean) => void
  readonly fail: (reason: unknown, newest: boolean) => void
  readonly rest: () => void
}

/**
 * A worker with a queue of one: one question is with it, at most one waits, the newest. Those between are never
 * asked. An answer in weather that has changed since is stale and dropped.
 */
export class LatestWins<V extends Verb> {
  readonly #engine: Engine
  readonly #verb: V
  readonly #listener: Listener<V>
  #busy = false
  #next: Question<V> | null = null

  /** @param engine  shared by queues whose questions build on one another */
  constructor(verb: V, listener: Listener<V>, engine = new Engine()) {
    this.#engine = engine
    this.#verb = verb
    this.#listener = listener
  }

  /** True while a question waits for its answer. */
  get busy(): boolean {
    return this.#busy
  }

  ask(question: Question<V>): void {
    this.#next = question
    if (!this.#busy) void this.#work()
  }

  async #work(): Promise<void> {
    this.#busy = true
    while (this.#next) {
      const question: Question<V> = this.#next
      this.#next = null
      try {
        const output = await this.#engine.run(this.#verb, question.input, question.weather)
        const waiting = this.#next as Question<V> | null
        if (waiting === null || waiting.weather === question.weather) {
          this.#listener.take(output, question, waiting === null)
        }
      } catch (reason) {
        if (!(reason instanceof Stopped)) this.#listener.fail(reason, this.#next === null)
      }
    }
    this.#busy = false
    this.#listener.rest()
  }
}
