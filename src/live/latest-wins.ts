import type { WeatherRecord } from '#model/weather/record.ts'
import { Engine, Stopped } from '#live/engine.ts'
import type { TaskInput, TaskName, TaskOutput } from '#live/tasks.ts'

export interface Question<K extends TaskName> {
  readonly input: TaskInput<K>
  readonly weather: WeatherRecord
}

/** What a `LatestWins` reports to. `newest`: nothing newer waits. */
export interface Listener<K extends TaskName> {
  readonly take: (output: TaskOutput<K>, question: Question<K>, newest: boolean) => void
  readonly fail: (reason: unknown, newest: boolean) => void
  readonly rest: () => void
}

/**
 * A worker with a queue of one: one question is with it, at most one waits, the newest. Those between are never
 * asked. An answer in weather that has changed since is stale and dropped.
 */
export class LatestWins<K extends TaskName> {
  readonly #engine: Engine
  readonly #name: K
  readonly #listener: Listener<K>
  #busy = false
  #next: Question<K> | null = null

  /** @param engine  shared by queues whose questions build on one another */
  constructor(name: K, listener: Listener<K>, engine = new Engine()) {
    this.#engine = engine
    this.#name = name
    this.#listener = listener
  }

  /** True while a question waits for its answer. */
  get busy(): boolean {
    return this.#busy
  }

  ask(question: Question<K>): void {
    this.#next = question
    if (!this.#busy) void this.#work()
  }

  async #work(): Promise<void> {
    this.#busy = true
    while (this.#next) {
      const question: Question<K> = this.#next
      this.#next = null
      try {
        const output = await this.#engine.run(this.#name, question.input, question.weather)
        const waiting = this.#next as Question<K> | null
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
