import { describe, expect, test } from 'vitest'
import { defaultScenario, hold, type Scenario } from '#model/design/scenario'
import { createStudies, finish } from '#studies/index.ts'
import { sampleWeather } from '../../../../src/shell/samples.ts'

/* Label: exact. Water through a bore far too small is refused before a year is run; what is usual is not. */

const weather = sampleWeather('continental')
const studies = createStudies()
const usual = hold(defaultScenario(), { area_m2: 12 })
const narrow: Scenario = {
  ...usual,
  loop: { ...usual.loop, autoPipe: false, pipeInnerDiameter_m: 0.008, autoFlow: false, flow_kgsm2: 0.04 },
}
const answer = (scenario: Scenario) => finish(studies.size({ scenario, weather })).result

describe('a pump that warms the loop by more than more panel could cool it', () => {
  test('is refused with its power and pressure, at the field that causes it', () => {
    expect(() => answer(narrow)).toThrow(/The pump would need .*W to make .*poor night/)
  })
  test('is not refused where bore and flow are chosen, nor where the area is', () => {
    expect(answer(usual).area_m2).toBe(12)
    const sized = { ...narrow, target: { ...narrow.target, autoArea: true, limit_C: 60 } }
    expect(answer(sized).sizing.kind).toBe('notNeeded')
  })
})

describe('other things with which more could be worse', () => {
  const refused: readonly (readonly [string, Scenario, RegExp])[] = [
    [
      'a fan of a fifth of what it carries',
      { ...usual, store: { ...usual.store, delivery_WK: 100, deliveryPower_W: 200 } },
      /Fan and pump of the delivery take/,
    ],
  ]
  test.each(refused)('%s is refused for an own area', (_, scenario, says) => {
    expect(() => answer(scenario)).toThrow(says)
  })
})
