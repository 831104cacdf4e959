import { sameBesidesDesign, type Scenario } from '#model/design/scenario'
import type { MapKind } from '#model/design/sizing'
import { isTank } from '#model/building/store'
import type { WeatherRecord } from '#model/outdoors/weather'
import { LongRun } from '#live/long-run.svelte.ts'
import type { Input, LiveAnswer } from '#live/messages.ts'

/** Same flow or tank, but for rounding on its way through a field. */
const SAME_SHARE = 0.01
/** The design map around an answer. Adopting one of its points leaves it true; changing the room does not. */
export class MapRun {
  readonly run = new LongRun('map')
  /** The kind asked for last. */
  wanted: MapKind = $state('store')
  #weather: WeatherRecord | null = $state.raw(null)

  /** Draws a map around an answer, afresh. */
  draw(kind: MapKind, answer: LiveAnswer, weather: WeatherRecord): void {
    this.#weather = weather
    void this.run.start(questionOf(kind, answer), weather)
  }

  /** Kinds of map that an answer can have: without a tank only the flow is left to vary. */
  kindsFor(scenario: Scenario): readonly MapKind[] {
    return isTank(scenario.store.kind) ? ['store', 'flow'] : ['flow']
  }

  /** True when the map there is holds for this answer. */
  isFor(kind: MapKind, answer: LiveAnswer, weather: WeatherRecord | null): boolean {
    const question = this.run.resultFor
    if (!question || this.#weather !== weather || question.kind !== kind) return false
    const [now, then] =
      kind === 'store'
        ? [ownFlow(answer.scenario), ownFlow(question.scenario)]
        : [answer.storeVolume_m3, question.around.storeVolume_m3]
    const same = Math.abs(now - then) <= SAME_SHARE * then
    return same && sameBesidesDesign(question.scenario, answer.scenario)
  }
}

/** The flow the user holds at every area, kg/s m²; 0 where each area has its own. */
function ownFlow({ loop }: Scenario): number {
  return loop.autoFlow ? 0 : loop.flow_kgsm2
}

function questionOf(kind: MapKind, answer: LiveAnswer): Input<'map'> {
  const { scenario, sizing, area_m2, storeVolume_m3 } = answer
  return { scenario, kind, around: { area_m2, storeVolume_m3, flow_kgsm2: sizing.flow_kgsm2 } }
}
