import type { Problem } from '#model/basis/words'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { Verb } from '#studies/index.ts'
import { Engine, Stopped } from '#live/engine.ts'
import { problemsOf } from '#live/problems-of.ts'
import type { Input, Output } from '#live/messages.ts'

/**
 * Work that takes seconds (range, map, comparison), in a worker of its own so that dragging stays quick.
 * Starting again or stopping ends what was running at once.
 */
export class LongRun<V extends Verb> {
  /** Whole once `running` is false, unless it was stopped; of some tasks what there is so far, until then. */
  result = $state.raw<Output<V> | null>(null)
  /** What the result answers: compare by identity with what is described now to see if it is out of date. */
  resultFor = $state.raw<Input<V> | null>(null)
  problems = $state.raw<readonly Problem[]>([])
  running = $state(false)
  /** 0…1 while running. */
  share = $state(0)

  readonly #verb: V
  readonly #engine = new Engine()
  #turn = 0

  constructor(verb: V) {
    this.#verb = verb
  }

  /** True once it came to its end: not stopped, not failed, not started anew meanwhile. */
  async start(input: Input<V>, weather: WeatherRecord): Promise<boolean> {
    const turn = ++this.#turn
    if (this.running) this.#engine.stop()
    this.running = true
    this.share = 0
    this.problems = []
    try {
      const take = (result: Output<V>) => {
        this.result = result
        this.resultFor = input
      }
      const result = await this.#engine.run(this.#verb, input, weather, (share, soFar) => {
        if (turn !== this.#turn) return
        this.share = share
        if (soFar !== undefined) take(soFar)
      })
      if (turn !== this.#turn) return false
      take(result)
      return true
    } catch (reason) {
      if (turn === this.#turn && !(reason instanceof Stopped)) this.problems = problemsOf(reason)
      return false
    } finally {
      if (turn === this.#turn) this.running = false
    }
  }

  stop(): void {
    this.#turn++
    this.#engine.stop()
    this.running = false
  }
}
