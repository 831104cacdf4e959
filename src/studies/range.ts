import type { Stages } from './stages.ts'
import { spreadOfAreas, type Scenario } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { SizingResult, UncertaintyResult } from '#model/design/sizing'
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
  const result = yield* counted(stages.uncertainty(scenario, weather, sizing, draws), draws)
  return { result, remarks: [] }
}

/** Areas of some of a range's draws, m²; null where none is enough. */
export type DrawnAreas = readonly (number | null)[]

/** A share of a range: draws `from` to `to` (not included), for a second worker. `joinRange` joins the shares. */
export function* drawAreas(
  stages: Stages,
  q: Ranged & { readonly draws: number; readonly from: number; readonly to: number },
): Study<DrawnAreas> {
  const { scenario, weather, sizing, draws, from, to } = q
  const work = stages.drawnAreas_m2(scenario, weather, sizing, draws, from, to)
  return { result: yield* counted(work, to - from), remarks: [] }
}

/** The range of all shares' areas, in the order of the draws. */
export function joinRange(
  scenario: Scenario,
  weather: WeatherRecord,
  shares: readonly DrawnAreas[],
): UncertaintyResult {
  return spreadOfAreas(scenario, weather, shares.flat())
}
