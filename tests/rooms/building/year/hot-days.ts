import { designOf } from '#model/design/assembly'
import { type Scenario, defaultScenario, withField } from '#model/design/scenario'
import { Stages } from '#studies/stages.ts'
import { sampleWeather } from '../../../../src/shell/samples.ts'

/** One memory for all of them: what two pairs share is the same object. */
const stages = new Stages()

/** A damp room under concrete in its first hot days, 14 m² of panel, a store and what delivers from it. */
export function hotDays(kind: string, by: string, storeVolume_m3: number) {
  let scenario: Scenario = defaultScenario()
  const set: Record<string, string> = {
    'store.kind': kind,
    'store.deliveryKind': by,
    'room.roofBuild': 'concreteOut',
    'room.moisture_kgh': '0.1',
    'plan.setpoint_C': '23',
    'target.limit_C': '26',
  }
  for (const [field, value] of Object.entries(set)) scenario = withField(scenario, field, value)
  const prepared = stages.prepare(scenario, sampleWeather('mediterranean-coast'))
  const { inputs } = designOf(prepared, { area_m2: 14, storeVolume_m3, flow_kgsm2: 0.01 })
  return { inputs, first_h: prepared.yardstick.hotDayStarts_h[0]! }
}
