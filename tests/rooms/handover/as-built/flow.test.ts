import { describe, expect, test } from 'vitest'
import { Stages } from '#studies/stages.ts'
import { asBuiltInputs } from '#model/handover/as-built'
import { emptyLog } from '#inside/model/handover/as-built/inputs.ts'
import { weatherSpan } from '#inside/model/handover/as-built/span.ts'
import { designFlow, mapTaskOf } from '#model/design/assembly'
import { defaultScenario, hold, withField } from '#model/design/scenario'
import { candidateAt } from '#model/design/sizing'
import { sampleWeather } from '../sheet/sheet-answers.ts'

const year = sampleWeather()
const days = weatherSpan(year, { logFrom: 0, weatherFrom: 180 * 24, hours: 48 })
const own = withField(withField(defaultScenario(), 'loop.autoFlow', 'false'), 'loop.flow_kgsm2', '0.011')

test.each([
  ['found by the program', defaultScenario()],
  ['given', own],
])('the check runs at the flow the design has at that area: %s', (_how, scenario) => {
  const { flow_kgsm2 } = new Stages().prepare(scenario, year)
  for (const area_m2 of [5, 12, 30, 120])
    expect(asBuiltInputs(scenario, days, emptyLog(48), area_m2).loop.flow_kgsm2).toBe(flow_kgsm2(area_m2))
})

describe('the flow of a design', () => {
  const thin = withField(
    withField(defaultScenario(), 'loop.autoPipe', 'false'),
    'loop.pipeInnerDiameter_m',
    '0.013',
  )
  test('is that of its own area: through a pipe that does not widen, more panel runs at less flow each', () => {
    const flow = designFlow(thin)
    const flows = [3, 6, 12, 24, 48].map((area_m2) => flow(area_m2))
    for (const [i, next] of flows.slice(1).entries()) expect(next).toBeLessThan(0.85 * flows[i]!)
  })
  test('follows the area without a jump', () => {
    for (const flow of [defaultScenario(), thin].map(designFlow))
      for (let area_m2 = 1; area_m2 < 100; area_m2 *= 1.01)
        expect(Math.abs(Math.log(flow(area_m2 * 1.01) / flow(area_m2)))).toBeLessThan(0.02)
  })
  test('is one number in answer, judgement, map and check of what was built', () => {
    const stages = new Stages()
    const answer = stages.answer(thin, year)
    const { area_m2, sizing, loop, storeVolume_m3 } = answer
    expect(area_m2).toBeGreaterThan(0)
    expect(loop.flow_kgs / area_m2).toBeCloseTo(sizing.flow_kgsm2, 12)
    const judged = stages.answer(hold(thin, { area_m2, storeVolume_m3 }), year)
    expect(judged.sizing.flow_kgsm2).toBe(sizing.flow_kgsm2)
    expect(judged.sizing.withPanels).toEqual(sizing.withPanels)
    const axes = { kind: 'store', area_m2: [1, area_m2], other: [0.5, 1] } as const
    const held = mapTaskOf(stages.prepare(thin, year), { storeVolume_m3 })
    expect(candidateAt(held, axes, area_m2, 0.5).flow_kgsm2).toBe(sizing.flow_kgsm2)
    expect(asBuiltInputs(thin, days, emptyLog(48), area_m2).loop.flow_kgsm2).toBe(sizing.flow_kgsm2)
  })
})
