import { Stages } from '#studies/stages.ts'
import { designOf, type Prepared } from '#model/design/assembly'
import { type Scenario, withField, defaultScenario } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { YearInputs } from '#model/building/year'
import { sampleWeather } from '../../src/shell/samples.ts'

/** What every line of the bench is measured on: the default shed in a climate where the target can be met. */
export interface Made {
  readonly stages: Stages
  readonly scenario: Scenario
  readonly record: WeatherRecord
  readonly prepared: Prepared
  readonly inputs: YearInputs
}

export function makeCase(): Made {
  let scenario = withField(defaultScenario(), 'target.limit_C', '27')
  scenario = withField(scenario, 'cover.kind', 'bare')
  const record = sampleWeather('continental')
  const stages = new Stages()
  const prepared = stages.prepare(scenario, record)
  const { inputs } = designOf(prepared, { area_m2: 10, storeVolume_m3: 1, flow_kgsm2: 0.01 })
  return { stages, scenario, record, prepared, inputs }
}
