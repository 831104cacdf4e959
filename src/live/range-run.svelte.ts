import type { Problem } from '#model/basis/words'
import type { UncertaintyResult } from '#model/design/sizing'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { Input } from '#live/messages.ts'
import { SharedRun } from '#live/shared-run.svelte.ts'
import { joinRange } from '#studies/range.ts'
import { USUAL_DRAWS } from '#studies/usual.ts'

/** The draws of a range, shared out between two workers and joined. */
export class RangeRun {
  result = $state.raw<UncertaintyResult | null>(null)
  /** What the result answers: compare by identity with what is described now. */
  resultFor = $state.raw<Input<'range'> | null>(null)
  readonly #run = new SharedRun('drawAreas', 2)

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

  async start(question: Input<'range'>, weather: WeatherRecord): Promise<void> {
    const { draws = USUAL_DRAWS } = question
    const half = Math.ceil(draws / 2)
    const parts = [
      { ...question, draws, from: 0, to: half },
      { ...question, draws, from: half, to: draws },
    ]
    const shares = await this.#run.all(parts, weather)
    if (shares === null) return
    this.result = joinRange(question.scenario, weather, shares)
    this.resultFor = question
  }

  stop(): void {
    this.#run.stop()
  }
}
