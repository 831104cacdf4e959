/* What a search looks at in a part of the year is what the whole year has there, or no more. */
import { describe, expect, test } from 'vitest'
import { simulateYear } from '#model/building/year'
import { taskOf } from '#model/design/assembly'
import { MEASURES } from '#model/design/measures'
import { defaultScenario, PRESETS, withPreset } from '#model/design/scenario'
import { exceedance } from '#model/design/target'
import { yearWith } from '#studies/decide-panels.ts'
import { Trials } from '#studies/decide-trial.ts'
import { Stages } from '#studies/stages.ts'
import { sampleWeather } from '../../src/shell/samples.ts'

/* Label: exact (the same hours of the same year). */

const setOf = (ids: readonly string[]) => MEASURES.filter(({ id }) => ids.includes(id))
const bedroom = withPreset(
  defaultScenario(),
  PRESETS.find(({ id }) => id === 'bedroom')!,
)

describe('some weeks of the room left alone are those of a room with all its rows', () => {
  test.each([
    ['in the middle of the record', 4000, 5008],
    ['at its beginning, warmed up from its end', 100, 500],
    ['over its end', 8600, 9000],
  ])('%s', (_, from, to) => {
    const stages = new Stages()
    const weather = sampleWeather('semi-arid-south')
    const scenario = new Trials(stages, bedroom, weather).described(setOf(['shade', 'nightOpening']))
    const { room, yardstick, nightVentStop_C } = stages.prepare(scenario, weather)
    const inputs = { room, plant: null, nightVentStop_C }
    const { room_C } = simulateYear(inputs, { lean: true, books: false, span: [from, to] })
    expect(stages.leftAlone(scenario, weather, [from, to])).toEqual(exceedance(room_C, yardstick))
  })
})

test('in its season alone a plant draws no more than in the year, and windows are open no longer', () => {
  const trials = new Trials(new Stages(), bedroom, sampleWeather('mediterranean-coast'))
  const prepared = trials.with(setOf(['nightFan']))
  const { season } = taskOf(prepared)
  expect(season).not.toBeNull()
  const candidate = { area_m2: 6, storeVolume_m3: 0.5, flow_kgsm2: prepared.flow_kgsm2(6) }
  const whole = yearWith(prepared, candidate, 'built')
  const part = yearWith(prepared, candidate, 'built', season)
  expect(part.electric_J).toBeGreaterThan(0)
  expect(part.electric_J).toBeLessThan(whole.electric_J)
  expect(part.vented_h).toBeGreaterThan(0)
  expect(part.vented_h).toBeLessThan(whole.vented_h)
  const hours = season!.spells.reduce((sum, [from, to]) => sum + to - from, 0)
  expect(part.room_C.filter((temp_C) => !Number.isNaN(temp_C)).length).toBe(hours)
  const [judged] = [exceedance(part.room_C, prepared.yardstick)]
  expect(judged.hours_h).toBe(exceedance(whole.room_C, prepared.yardstick).hours_h)
})
