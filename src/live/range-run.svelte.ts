import type { UncertaintyResult } from '#model/design/sizing'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { Input } from '#live/messages.ts'
import { SharedRun } from '#live/shared-run.svelte.ts'
import { joinRange, nextShares } from '#studies/range.ts'
import { USUAL_DRAWS } from '#studies/usual.ts'

/** The draws of a range, shared out between two workers and joined. */
export class RangeRun extends SharedRun<'drawAreas'> {
  result = $state.raw<UncertaintyResult | null>(null)
  /** What the result answers: compare by identity with what is described now. */
  resultFor = $state.raw<Input<'range'> | null>(null)

  constructor() {
    super('drawAreas', 2)
  }

  async start(question: Input<'range'>, weather: WeatherRecord): Promise<void> {
    const { draws = USUAL_DRAWS } = question
    const areas_m2: (number | null)[] = []
    for (;;) {
      const parts = nextShares(areas_m2.length, draws, this.workers)
      const shares = await this.all(
        parts.map((part) => ({ ...question, draws, ...part })),
        weather,
      )
      if (shares === null) return
      areas_m2.push(...shares.flat())
      const found = joinRange(question.scenario, weather, draws, areas_m2)
      if (found === null) continue
      this.result = found
      this.resultFor = question
      return
    }
  }
}
