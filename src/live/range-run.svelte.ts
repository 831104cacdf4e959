import type { Problem } from '#model/basis/words'
import type { UncertaintyResult } from '#model/design/sizing'
import type { WeatherRecord } from '#model/outdoors/weather'
import { LongRun } from '#live/long-run.svelte.ts'
import type { Input } from '#live/messages.ts'
import { joinRange } from '#studies/range.ts'
import { USUAL_DRAWS } from '#studies/usual.ts'

/** The draws of a range, shared out between two workers and joined. */
export class RangeRun {
  result = $state.raw<UncertaintyResult | null>(null)
  /** What the result answers: compare by identity with what is described now. */
  resultFor = $state.raw<Input<'range'> | null>(null)
  readonly #shares = [new LongRun('drawAreas'), new LongRun('drawAreas')] as const

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

  async start(question: Input<'range'>, weather: WeatherRecord): Promise<void> {
    const { draws = USUAL_DRAWS } = question
    const half = Math.ceil(draws / 2)
    const parts = [
      { ...question, draws, from: 0, to: half },
      { ...question, draws, from: half, to: draws },
    ] as const
    await Promise.all(this.#shares.map((one, i) => one.start(parts[i]!, weather)))
    if (this.#shares.some((one, i) => one.resultFor !== parts[i])) return
    this.result = joinRange(
      question.scenario,
      weather,
      this.#shares.map((one) => one.result ?? []),
    )
    this.resultFor = question
  }

  stop(): void {
    for (const one of this.#shares) one.stop()
  }
}
