import type { Problem } from '#model/problem.ts'
import { spreadOfAreas } from '#model/scenario/draws.ts'
import type { UncertaintyResult } from '#model/sizing/result.ts'
import type { WeatherRecord } from '#model/weather/record.ts'
import { LongRun } from '#live/long-run.svelte.ts'
import type { RangeQuestion } from '#live/tasks.ts'

/** The draws of a range, shared out between two workers and joined. */
export class RangeRun {
  result = $state.raw<UncertaintyResult | null>(null)
  /** What the result answers: compare by identity with what is described now. */
  resultFor = $state.raw<RangeQuestion | null>(null)
  readonly #shares = [new LongRun('draws'), new LongRun('draws')] as const

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

  async start(question: RangeQuestion, weather: WeatherRecord): Promise<void> {
    const { draws } = question
    const half = Math.ceil(draws / 2)
    const parts = [
      { ...question, from: 0, to: half },
      { ...question, from: half, to: draws },
    ] as const
    await Promise.all(this.#shares.map((one, i) => one.start(parts[i]!, weather)))
    if (this.#shares.some((one, i) => one.resultFor !== parts[i])) return
    this.result = spreadOfAreas(
      question.scenario,
      this.#shares.flatMap((one) => one.result ?? []),
    )
    this.resultFor = question
  }

  stop(): void {
    for (const one of this.#shares) one.stop()
  }
}
