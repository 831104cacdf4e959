import { hasTank, sameBesidesDesign } from '#model/scenario/map-design.ts'
import { FIELDS, type Scenario } from '#model/scenario/fields.ts'
import { mapAxes, type MapKind } from '#model/sizing/map-axes.ts'
import type { WeatherRecord } from '#model/weather/record.ts'
import { LongRun } from '#live/long-run.svelte.ts'
import type { LiveAnswer, MapQuestion } from '#live/tasks.ts'

/** Same flow or tank, but for rounding on its way through a field. */
const SAME_SHARE = 0.01
/** The map is drawn around at least this much panel, m². */
const LEAST_AREA_m2 = 1
const LEAST_STORE_m3 = 0.02

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
    return hasTank(scenario) ? ['store', 'flow'] : ['flow']
  }

  /** True when the map there is holds for this answer. */
  isFor(kind: MapKind, answer: LiveAnswer, weather: WeatherRecord | null): boolean {
    const question = this.run.resultFor
    if (!question || this.#weather !== weather || question.axes.kind !== kind) return false
    const held = question.held
    const [now, then] =
      kind === 'store'
        ? [answer.sizing.flow_kgsm2, held.flow_kgsm2]
        : [answer.storeVolume_m3, held.storeVolume_m3]
    const same = Math.abs(now - then) <= SAME_SHARE * then
    return same && sameBesidesDesign(question.scenario, answer.scenario)
  }
}

function questionOf(kind: MapKind, { scenario, sizing, area_m2, storeVolume_m3 }: LiveAnswer): MapQuestion {
  const held = { flow_kgsm2: sizing.flow_kgsm2, storeVolume_m3 }
  const field = kind === 'store' ? FIELDS.store.volume_m3 : FIELDS.loop.flow_kgsm2
  const other = kind === 'store' ? Math.max(storeVolume_m3, LEAST_STORE_m3) : held.flow_kgsm2
  const most_m2 = scenario.target.maxArea_m2
  const middle_m2 = Math.min(Math.max(area_m2, LEAST_AREA_m2), most_m2)
  return {
    scenario,
    held,
    axes: mapAxes(kind, middle_m2, other, { most_m2, least: field.min, most: field.max }),
  }
}
