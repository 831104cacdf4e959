import type { LiveAnswer } from '#live/messages.ts'
import { HoursRun } from '#live/hours-run.svelte.ts'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { AreaRangeRun } from '#live/area-range.svelte.ts'
import type { HoursSpread } from '#studies/decide-sure.ts'
import { machineOf, measureIdsOf } from '#model/design/scenario'

/** Quiet time after an answer before its years are begun. */
const QUIET_MS = 500

/** What it needs of the workbench. */
interface Bench {
  readonly run: { readonly answer: LiveAnswer | null }
  readonly climate: { readonly record: WeatherRecord | null }
  readonly range: AreaRangeRun
  readonly busy: boolean
}

/** Hours too warm of the design as it is: its own year, and what all uncertain inputs make of it. One for all pages. */
export class OwnHours {
  readonly run = new HoursRun()
  /** The answer that was asked about last. */
  #asked = $state.raw<LiveAnswer | null>(null)

  /** Of exactly this answer; null while there is nothing. */
  of(answer: LiveAnswer): HoursSpread | null {
    return this.#asked === answer && !this.run.running ? (this.run.result?.[0] ?? null) : null
  }

  workingOn(answer: LiveAnswer): boolean {
    return this.#asked === answer && this.run.running
  }

  start(answer: LiveAnswer, { climate: { record } }: Pick<Bench, 'climate'>): void {
    if (record === null) return
    this.#asked = answer
    const { scenario, area_m2: panelArea_m2, storeVolume_m3 } = answer
    const plant = panelArea_m2 > 0 ? 'panels' : machineOf(scenario)
    const measures = measureIdsOf(scenario)
    void this.run.start(scenario, [{ measures, plant, panelArea_m2, storeVolume_m3 }], record)
  }

  /**
   * Begins once the answer rests, after the range of its area where it has one; call while a component is set up.
   * @param wanted  whether the page shows the hours of this answer
   */
  follow(bench: Bench, wanted: (answer: LiveAnswer) => boolean): void {
    $effect(() => {
      const { answer } = bench.run
      if (!answer || bench.busy || this.#asked === answer || !wanted(answer)) return
      if (bench.range.run.running || (bench.range.applies(answer) && !bench.range.isFor(answer))) return
      const timer = setTimeout(() => this.start(answer, bench), QUIET_MS)
      return () => clearTimeout(timer)
    })
    $effect(() => () => {
      if (!this.run.running) return
      this.run.stop()
      this.#asked = null
    })
  }
}
