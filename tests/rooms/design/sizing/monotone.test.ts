import { describe, expect, test } from 'vitest'
import { Stages } from '#studies/stages.ts'
import { designOf, taskOf } from '#model/design/assembly'
import { type Scenario, withField, defaultScenario } from '#model/design/scenario'
import { exceedance } from '#model/design/target'
import { areaOnly } from '#inside/model/design/sizing/size.ts'
import { simulateYear } from '#model/building/year'
import { sampleWeather } from '../../../../src/shell/samples.ts'

/*
 * Label: exact (orderings that the physics demands). Tolerances: the search ends within 0.3 % of its area on the met
 * side, so two searches may differ by that; an ordering may be broken by no more than it.
 */
const SEARCH = 1.004
const START = { ratio_m3m2: 0.08, guess_m2: 8, slope: null }
const AREAS_m2 = [1, 2, 4, 8, 16, 32, 60]

const climates = ['continental', 'semi-arid-south', 'mediterranean-coast'] as const
const weathers = Object.fromEntries(climates.map((name) => [name, sampleWeather(name)]))
const stages = new Stages()

function scenarioWith(settings: Readonly<Record<string, string>>): Scenario {
  return Object.entries(settings).reduce((s, [field, text]) => withField(s, field, text), defaultScenario())
}
function areaFor(climate: string, settings: Readonly<Record<string, string>>): number {
  return areaOnly(taskOf(stages.prepare(scenarioWith(settings), weathers[climate]!)), START) ?? Infinity
}

describe.each(climates)('%s', (climate) => {
  /*
   * The peak is read off one hour of the year, and the pump starts and stops at whole quarter hours: a larger field
   * may start a quarter hour otherwise on the eve of that hour. A quarter hour of a 10 m² field is 0.1 kWh, which is
   * 0.05 K in a shed with 2 kWh/K of room, fabric and slab: more than that no ordering of peaks may be broken by.
   */
  test.each([
    ['peak', 0.05],
    ['hours', 1],
    ['degreeHours', 1],
  ] as const)('more area never hurts: %s (slack %f of its unit)', (kind, slack) => {
    const settings = { 'target.kind': kind, 'target.limit_C': '27' }
    const prepared = stages.prepare(scenarioWith(settings), weathers[climate]!)
    const measures = AREAS_m2.map((area_m2) => {
      const candidate = {
        area_m2,
        storeVolume_m3: START.ratio_m3m2 * area_m2,
        flow_kgsm2: prepared.flow_kgsm2(area_m2),
      }
      const { room_C } = simulateYear(designOf(prepared, candidate).inputs, { lean: true })
      return exceedance(room_C, prepared.yardstick).measure
    })
    const without = exceedance(prepared.doNothing.room_C, prepared.yardstick).measure
    measures.forEach((measure, i) => {
      expect(measure - (measures[i - 1] ?? without), `${AREAS_m2[i]} m²`).toBeLessThanOrEqual(slack)
    })
    expect(measures.at(-1)!).toBeLessThan(without)
  })
})

describe('continental, hours above 26 °C', () => {
  const usual_m2 = areaFor('continental', {})

  test('has an area to compare with', () => expect(usual_m2).toBeLessThan(60))

  test.each([
    ['coating.windowEmittance_frac', '0.97'],
    ['coating.solarReflectance_frac', '0.97'],
    ['coating.soiling_1y', '0'],
    ['sky.deficitFactor_frac', '1.1'],
    ['site.horizon_deg', '0'],
    ['panel.fieldFactor_frac', '1'],
    ['room.shading_frac', '0.3'],
    ['room.roofReflectance_frac', '0.8'],
  ])('%s = %s is better, and never needs more area', (field, value) => {
    expect(areaFor('continental', { [field]: value })).toBeLessThanOrEqual(usual_m2 * SEARCH)
  })

  test.each([
    ['coating.windowEmittance_frac', '0.8'],
    ['panel.fieldFactor_frac', '0.8'],
    ['target.allowedHours_h', '20'],
    ['target.limit_C', '25.5'],
    ['site.hotSpell_K', '2'],
    ['site.moreHumid_K', '2'],
    ['loop.pipeLength_m', '60'],
    ['store.delivery_WK', '90'],
  ])('%s = %s is harder, and never needs less area', (field, value) => {
    expect(areaFor('continental', { [field]: value })).toBeGreaterThanOrEqual(usual_m2 / SEARCH)
  })

  test('a target already met without panels needs none', () => {
    expect(areaFor('continental', { 'target.limit_C': '40' })).toBe(0)
  })
})
