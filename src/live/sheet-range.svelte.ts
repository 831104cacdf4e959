import type { DesignRanges } from '#model/handover/sheet'
import type { WeatherRecord } from '#model/outdoors/weather'
import { LongRun } from '#live/long-run.svelte.ts'
import type { LiveAnswer } from '#live/messages.ts'
import type { Workbench } from '#live/workbench.svelte.ts'

/** Ranges of what the built design does, for the sheet. */
export class SheetRangeRun {
  readonly run = new LongRun('expected')
  #answer = $state.raw<LiveAnswer | null>(null)

  start(answer: LiveAnswer, weather: WeatherRecord): void {
    this.#answer = answer
    const { scenario, area_m2, storeVolume_m3, loop } = answer
    const built = { area_m2, storeVolume_m3, flow_kgsm2: loop.flow_kgs / area_m2 }
    void this.run.start({ scenario, built }, weather)
  }

  /** The ranges of exactly this answer, or null while there are none. */
  of(answer: LiveAnswer): DesignRanges | null {
    return this.#answer === answer && !this.run.running ? this.run.result : null
  }

  /**
   * Begins once the answer and the range of its area rest; call while a component is set up. Leaving the page, or a new
   * answer, ends what runs.
   */
  follow(bench: Workbench): void {
    $effect(() => {
      const { answer } = bench.run
      const { record } = bench.climate
      if (!answer || !record || bench.busy || !(answer.area_m2 > 0)) return
      if (bench.range.run.running || (bench.range.applies(answer) && !bench.range.isFor(answer))) return
      if (this.#answer !== answer) this.start(answer, record)
    })
    $effect(() => () => this.run.stop())
  }
}
