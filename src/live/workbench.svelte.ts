import { createContext } from 'svelte'
import { SvelteSet } from 'svelte/reactivity'
import type { Problem } from '#model/basis/words'
import type { WeatherRecord } from '#model/outdoors/weather'
import { ClimateChoice } from '#live/climate-choice.svelte.ts'
import type { ReadDesign } from '#live/design-link.ts'
import { DesignState } from '#live/design-state.svelte.ts'
import { Keeping } from '#live/keeping.svelte.ts'
import { KeptDesigns } from '#live/kept-designs.svelte.ts'
import { CompareRun } from '#live/compare-run.svelte.ts'
import { MapRun } from '#live/map-run.svelte.ts'
import { DecideRun } from '#live/decide-run.svelte.ts'
import { OwnHours } from '#live/own-hours.svelte.ts'
import { LiveRun } from '#live/live-run.svelte.ts'
import { AreaRangeRun } from '#live/area-range.svelte.ts'
import { ownId } from '#live/own-id.ts'
import { workedExample } from '#live/worked-example.ts'
import { NewVersion } from '#live/new-version.svelte.ts'
import { UnitChoice } from '#live/unit-choice.svelte.ts'

/** Everything the pages share: the description, the climate, the running answer and the choice of units. */
export class Workbench {
  readonly design = new DesignState(workedExample())
  readonly climate = new ClimateChoice()
  readonly run = new LiveRun()
  readonly range = new AreaRangeRun()
  readonly hours = new OwnHours()
  readonly maps = new MapRun()
  readonly comparing = new CompareRun()
  readonly deciding = new DecideRun()
  readonly units = new UnitChoice()
  readonly kept = new KeptDesigns()
  readonly keeping = new Keeping()
  readonly newVersion = new NewVersion()
  /** Asks the browser to install the app; null where it does not offer that. */
  install = $state.raw<(() => void) | null>(null)
  /** False until the page listens: controls stay disabled so that no click is lost. */
  ready = $state(false)
  /** False when the browser refuses to keep the design for the next visit. */
  autosaved = $state(true)
  /** A design that a link brought while another is being worked on: taken or left by the user. */
  offered = $state.raw<ReadDesign | null>(null)
  /** What was wrong with a link, a file or a kept design that was asked for. */
  openProblems = $state.raw<readonly Problem[]>([])
  /** What an older version did not say of the design that was opened. */
  olderRemarks = $state.raw<readonly Problem[]>([])

  /** Boxes whose text cannot be taken: the answer is that of the last good values. */
  readonly refused = new SvelteSet<string>()
  /** True while a number is being typed that is not taken yet. */
  typing = $state(false)

  /** True while what is shown is not yet the answer to what is described. */
  get busy(): boolean {
    return this.typing || this.run.updating || this.climate.loading
  }

  /** Opens a design in its climate (the present one where it names none); the one before is one undo away. */
  place({ scenario, climate, older = [] }: ReadDesign): void {
    this.openProblems = []
    this.olderRemarks = older
    this.offered = null
    this.design.place({ scenario, climate: climate || this.design.climate })
  }

  /** Moves the design into weather the user brought, and keeps that in this browser; false when it is not kept. */
  async useOwnWeather(record: WeatherRecord): Promise<boolean> {
    const kept = await this.climate.takeOwn(record)
    this.design.setClimate(ownId(record))
    return kept
  }
}

/** `workbench()` inside any component under the root layout, which provides it. */
export const [workbench, provideWorkbench] = createContext<Workbench>()
