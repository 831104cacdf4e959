import type { Stages } from './stages.ts'
import type { Scenario } from '#model/design/scenario'
import type { SizingResult } from '#model/design/sizing'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { Study } from './study.ts'

/** The short answer to a changed description. */
export interface Trial {
  readonly kind: SizingResult['kind']
  readonly area_m2: number
  readonly peak_C: number
  readonly hours_h: number
}

interface Tried {
  readonly scenarios: readonly Scenario[]
  readonly weather: WeatherRecord
}

/** What a few changed descriptions would need, in their order. */
export function* trials(stages: Stages, { scenarios, weather }: Tried): Study<readonly Trial[]> {
  const result: Trial[] = []
  for (const scenario of scenarios) {
    yield { share: result.length / scenarios.length }
    const { kind, area_m2, withPanels } = stages.answer(scenario, weather).sizing
    result.push({ kind, area_m2, peak_C: withPanels.peak_C, hours_h: withPanels.hours_h })
  }
  return { result, remarks: [] }
}
