import { createStudies, finish } from '#studies/index.ts'
import type { DesignAnswer } from '#model/design/assembly'
import type { Scenario } from '#model/design/scenario'
import { sampleWeather } from './samples.ts'

/** What the first page says of a design before its worker has answered: the parts of an answer that a verdict is made of. */
export interface FirstAnswer {
  readonly site: string
  readonly area_m2: number
  readonly fit: DesignAnswer['fit']
  readonly way: DesignAnswer['way']
  readonly sizing: Pick<DesignAnswer['sizing'], 'kind' | 'withPanels' | 'doNothing' | 'limit'>
}

/** The answer to a scenario in a sample climate as `size` gives it, for the build to put into the page. */
export function firstAnswer(scenario: Scenario, climate: string): FirstAnswer {
  const weather = sampleWeather(climate)
  const { area_m2, fit, way, sizing } = finish(createStudies().size({ scenario, weather })).result
  const { kind, withPanels, doNothing } = sizing
  // What limits a design is part of the verdict only where panels are not enough.
  const limit = kind === 'floor' ? sizing.limit : null
  return { site: weather.site.name, area_m2, fit, way, sizing: { kind, withPanels, doNothing, limit } }
}
