import { expect, test } from 'vitest'
import { Stages } from '#studies/stages.ts'
import { asBuiltInputs } from '#model/handover/as-built'
import { emptyLog } from '#inside/model/handover/as-built/inputs.ts'
import { weatherSpan } from '#inside/model/handover/as-built/span.ts'
import { defaultScenario, withField } from '#model/design/scenario'
import { sampleWeather } from '../sheet/sheet-answers.ts'

const year = sampleWeather()
const days = weatherSpan(year, { logFrom: 0, weatherFrom: 180 * 24, hours: 48 })
const own = withField(withField(defaultScenario(), 'loop.autoFlow', 'false'), 'loop.flow_kgsm2', '0.011')

test.each([
  ['found by the program', defaultScenario()],
  ['given', own],
])('the check runs at the design’s flow at any area: %s', (_how, scenario) => {
  const { flow_kgsm2 } = new Stages().prepare(scenario, year)
  for (const area_m2 of [5, 12, 30, 120])
    expect(asBuiltInputs(scenario, days, emptyLog(48), area_m2).loop.flow_kgsm2).toBe(flow_kgsm2)
})
