import type { LiveAnswer } from '#live/messages.ts'
import { HoursRun } from '#live/hours-run.svelte.ts'
import type { Workbench } from '#live/workbench.svelte.ts'
import type { HoursSpread } from '#studies/decide-sure.ts'
import { AIR_MEASURES, BUILDING_MEASURES } from '#model/design/measures'

/** Quiet time after an answer before its years are begun. */
const QUIET_MS = 500

/** Hours too warm of a design whose area is not looked for: its own year, and what all uncertain inputs make of it. */
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

  start(answer: LiveAnswer, bench: Workbench): void {
    const { record } = bench.climate
    if (record === null) return
    this.#asked = answer
    const { machine, way } = answer.scenario.job
    const { area_m2: panelArea_m2, storeVolume_m3 } = answer
    const plant = panelArea_m2 > 0 ? 'panels' : machine
    const names = way.split(' + ')
    const already = [...BUILDING_MEASURES, ...AIR_MEASURES]
      .filter(({ name }) => names.includes(name))
      .map(({ id }) => id)
    void this.run.start(
      answer.scenario,
      [{ measures: [], plant, panelArea_m2, storeVolume_m3 }],
      record,
      already,
    )
  }

  /** Begins once the answer rests, where it has no range of its area; call while a component is set up. */
  follow(bench: Workbench): void {
    $effect(() => {
      const { answer } = bench.run
      if (!answer || bench.busy || bench.range.applies(answer) || this.#asked === answer) return
      const timer = setTimeout(() => this.start(answer, bench), QUIET_MS)
      return () => clearTimeout(timer)
    })
    $effect(() => () => this.run.stop())
  }
}
