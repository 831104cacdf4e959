import type { Problem } from '#model/basis/words'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { Verb } from '#studies/index.ts'
import { LongRun } from '#live/long-run.svelte.ts'
import type { Input, Output } from '#live/messages.ts'

/** One piece of long work, shared out between several workers. */
export class SharedRun<V extends Verb> {
  readonly #shares: readonly LongRun<V>[]

  #parts: readonly Input<V>[] = $state.raw([])

  constructor(verb: V, workers: number) {
    this.#shares = Array.from({ length: workers }, () => new LongRun(verb))
  }

  get workers(): number {
    return this.#shares.length
  }

  get running(): boolean {
    return this.#shares.some((one) => one.running)
  }

  /** 0…1 while running. */
  get share(): number {
    return this.#shares.reduce((sum, one) => sum + (one.running ? one.share : 1), 0) / this.workers
  }

  get problems(): readonly Problem[] {
    return this.#shares.flatMap((one) => one.problems).slice(0, 1)
  }

  /** Asks every worker its part; what they found, in order, or null where one was stopped, failed or asked anew. */
  async all(parts: readonly Input<V>[], weather: WeatherRecord): Promise<Output<V>[] | null> {
    this.#parts = parts
    const finished = await Promise.all(this.#shares.map((one, i) => one.start(parts[i]!, weather)))
    return finished.every(Boolean) ? this.#shares.map((one) => one.result!) : null
  }

  /** What the shares that were asked last have so far; of a share that has nothing yet, nothing. */
  get soFar(): Output<V>[] {
    return this.#shares.flatMap((one, i) =>
      one.result !== null && one.resultFor === this.#parts[i] ? [one.result] : [],
    )
  }

  stop(): void {
    for (const one of this.#shares) one.stop()
  }
}
