import { Spine } from '#model/answer.ts'
import { designOf } from '#model/scenario/design.ts'
import type { Scenario } from '#model/scenario/fields.ts'
import { withField } from '#model/scenario/parse.ts'
import type { Prepared } from '#model/scenario/prepared.ts'
import { defaultScenario } from '#model/scenario/schema.ts'
import type { WeatherRecord } from '#model/weather/record.ts'
import type { YearInputs } from '#model/year/inputs.ts'
import { sampleWeather } from '../../src/shell/samples.ts'

/** What every line of the bench is measured on: the default shed in a climate where the target can be met. */
export interface Made {
  readonly spine: Spine
  readonly scenario: Scenario
  readonly record: WeatherRecord
  readonly prepared: Prepared
  readonly inputs: YearInputs
}

export function makeCase(): Made {
  let scenario = withField(defaultScenario(), 'target.limit_C', '27')
  scenario = withField(scenario, 'cover.kind', 'bare')
  const record = sampleWeather('continental')
  const spine = new Spine()
  const prepared = spine.prepare(scenario, record)
  const { inputs } = designOf(prepared, { area_m2: 10, storeVolume_m3: 1, flow_kgsm2: 0.01 })
  return { spine, scenario, record, prepared, inputs }
}
