import { drawnAreas_m2, uncertainty } from './drawn-areas.ts'
import type { Stages } from './stages.ts'
import { spreadOfAreas, type Scenario } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'
import { drawsToSimulate, type SizingResult, type UncertaintyResult } from '#model/design/sizing'
import { counted, type Asked, type Study } from './study.ts'
import { USUAL_DRAWS } from './usual.ts'

/** A sized answer to draw the range around. */
export interface Ranged extends Asked {
  readonly sizing: SizingResult
  readonly draws?: number
}

/** The area over the uncertain inputs. */
export function* range(
  stages: Stages,
  { scenario, weather, sizing, draws = USUAL_DRAWS }: Ranged,
): Study<UncertaintyResult> {
  const work = uncertainty(stages, scenario, weather, sizing, draws)
  for (let goal = 0; ;) {
    const next = work.next()
    if (next.done === true) return { result: next.value, remarks: [] }
    if (next.value > goal) goal = drawsToSimulate(goal, draws)
    yield { share: next.value / goal }
  }
}

/** Areas of some of a range's draws, m²; null where none is enough. */
export type DrawnAreas = readonly (number | null)[]

/** A share of a range: draws `from` to `to` (not included), for a second worker. `joinRange` joins the shares. */
export function* drawAreas(
  stages: Stages,
  q: Ranged & { readonly draws: number; readonly from: number; readonly to: number },
): Study<DrawnAreas> {
  const { scenario, weather, sizing, draws, from, to } = q
  const work = drawnAreas_m2(stages, scenario, weather, sizing, draws, from, to)
  return { result: yield* counted(work, to - from), remarks: [] }
}

/**
 * The range from the areas of the first draws, in their order; null where more of them are to be simulated.
 * @param scenario  what is simulated: with the way taken in its room
 */
export function joinRange(
  scenario: Scenario,
  weather: WeatherRecord,
  draws: number,
  first_m2: DrawnAreas,
): UncertaintyResult | null {
  return spreadOfAreas(scenario, weather, draws, first_m2)
}

/** The next draws to simulate, shared out between some workers: from which to which (not included) each. */
export function nextShares(
  simulated: number,
  draws: number,
  workers: number,
): { readonly from: number; readonly to: number }[] {
  const to = drawsToSimulate(simulated, draws)
  const edge = (i: number): number => simulated + Math.round(((to - simulated) * i) / workers)
  return Array.from({ length: workers }, (_, i) => ({ from: edge(i), to: edge(i + 1) }))
}
