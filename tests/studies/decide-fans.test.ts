/* What fans draw, and machines that are run in their season only. */
import { expect, test } from 'vitest'
import { createStudies, finish } from '#studies/index.ts'
import { machineInputs, machineYear } from '#studies/decide-machine-year.ts'
import { airConditionerOf, coolerOf, supplyHours } from '#studies/decide-machines.ts'
import { Stages } from '#studies/stages.ts'
import { Trials } from '#studies/decide-trial.ts'
import { equippedYear } from '#model/building/year'
import { AIR_MEASURES } from '#model/design/measures'
import { defaultScenario } from '#model/design/scenario'
import { exceedance } from '#model/design/target'
import { sampleWeather } from '../../src/shell/samples.ts'

const weather = sampleWeather('continental')
const base = defaultScenario()
const nightFan = AIR_MEASURES.find(({ id }) => id === 'nightFan')!

test('panels beside a night fan draw what pump and fan draw: the fan runs in the hours that windows would be open', () => {
  const { combinations } = finish(
    createStudies().decide({ scenario: base, weather, only: ['nightFan', 'panels'], winters: false }),
  ).result
  const both = combinations.find(({ plant, measures }) => plant === 'panels' && measures.length === 1)!
  const fanAlone = combinations.find(({ plant, measures }) => plant === 'none' && measures.length === 1)!
  // the same building whose windows open by themselves: the pump's power alone
  const opened = nightFan.apply(base, 1, weather)
  const pump = finish(
    createStudies().decide({ scenario: opened, weather, only: ['panels'], winters: false }),
  ).result.combinations.find(({ plant }) => plant === 'panels')!
  expect(both.panelArea_m2).toBe(pump.panelArea_m2)
  const fan_h = (both.electric_J - pump.electric_J) / 3600 / nightFan.power_W(base)
  const alone_h = fanAlone.electric_J / 3600 / nightFan.power_W(base)
  // a room that is colder is opened less often, but never far less
  expect(fan_h).toBeLessThanOrEqual(alone_h)
  expect(fan_h).toBeGreaterThan(0.5 * alone_h)
  expect(both.totalCost - pump.totalCost).toBeGreaterThan(nightFan.price(base))
})

test.each(['direct', 'indirect', 'airConditioner'] as const)('%s: its season is its year', (kind) => {
  const prepared = new Stages().prepare(base, weather, true)
  const cooled = kind === 'airConditioner' ? null : coolerOf(base, kind)
  const machine = {
    cooler: cooled === null ? null : { spec: cooled, supply: supplyHours(weather, cooled) },
    airConditioner: kind === 'airConditioner' ? airConditionerOf(base) : null,
    nightFan_W: 0,
  }
  const whole = equippedYear(machineInputs(prepared, machine).inputs)
  const season = machineYear(prepared, machine)
  expect(season.room_C).not.toEqual(whole.room_C)
  expect(season.electric_J / whole.electric_J).toBeCloseTo(1, 5)
  expect(season.water_kg).toBeCloseTo(whole.water_kg, 3)
  const [a, b] = [whole, season].map(({ room_C }) => exceedance(room_C, prepared.yardstick))
  expect(b!.hours_h).toBe(a!.hours_h)
  expect(b!.measure).toBeCloseTo(a!.measure, 6)
})

test('a cooler meets the weather that the room does: in more humid air it cools less', () => {
  const stressed = { ...base, site: { ...base.site, moreHumid_K: 4 } }
  const hours_h = (scenario: typeof base): number => {
    const trials = new Trials(new Stages(), scenario, weather)
    return trials.run(trials.with([]), [], 'direct').hoursOver_h
  }
  expect(hours_h(stressed)).toBeGreaterThan(hours_h(base))
})
