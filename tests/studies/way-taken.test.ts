/* One way, one answer: the search, the design sized, its range and its sheet say the same. */
import { expect, test } from 'vitest'
import { createStudies, finish } from '#studies/index.ts'
import { joinHours } from '#studies/decide-sure.ts'
import type { Combination } from '#studies/decide-trial.ts'
import { wordingText } from '#model/basis/words'
import {
  defaultScenario,
  machineOf,
  measureIdsOf,
  partsOf,
  withField,
  withWayTaken,
} from '#model/design/scenario'
import { sampleWeather } from '../../src/shell/samples.ts'

const weather = sampleWeather('continental')
/** A brick room under dark felt: what a way once wrote over. */
const room = [
  ['room.wallBuild', 'brick'],
  ['room.roofReflectance_frac', '0.1'],
].reduce((s, [path, value]) => withField(s, path!, value!), defaultScenario())
const only = ['paintRoof', 'insulateWalls', 'nightFan', 'panels', 'direct', 'airConditioner'] as const
const studies = createStudies()
const decision = finish(studies.decide({ scenario: room, weather, only, skips: false })).result
const before = decision.combinations.find((one) => partsOf(one).length === 0)!

const wayWith = (plant: Combination['plant']): Combination =>
  decision.combinations.find(
    (one) =>
      one.plant === plant &&
      one.measures.join(' ') === (plant === 'none' ? 'paintRoof insulateWalls nightFan' : 'paintRoof'),
  )!

const plainly = (text: string): string => text.replaceAll('\u00a0', ' ')

test.each(['panels', 'none', 'direct', 'airConditioner'] as const)('with %s', (plant) => {
  const way = wayWith(plant)
  const scenario = withWayTaken(room, partsOf(way))
  expect(scenario.room).toEqual(room.room)
  const answer = finish(studies.size({ scenario, weather })).result
  const { withPanels } = answer.sizing
  // the design
  expect(withPanels.hours_h).toBe(way.hoursOver_h)
  expect(withPanels.peak_C).toBe(way.peak_C)
  expect(answer.area_m2).toBe(way.panelArea_m2)
  expect(answer.storeVolume_m3).toBe(way.storeVolume_m3)
  expect(answer.months.reduce((sum, { hoursOver_h }) => sum + hoursOver_h, 0)).toBeCloseTo(way.hoursOver_h, 9)
  const { asItIs, ...found } = answer.way!
  expect(found).toEqual({
    ...way,
    electric_J: found.electric_J,
    yearlyCost: found.yearlyCost,
    totalCost: found.totalCost,
  })
  expect(found.electric_J / way.electric_J || 1).toBeCloseTo(1, 9)
  expect(asItIs).toEqual({ hours_h: before.hoursOver_h, peak_C: before.peak_C })
  // the range: the year as described
  const { area_m2: panelArea_m2, storeVolume_m3 } = answer
  const asked = {
    measures: measureIdsOf(scenario),
    plant: panelArea_m2 > 0 ? ('panels' as const) : machineOf(scenario),
  }
  const [hours] = joinHours([
    finish(
      studies.drawHours({ scenario, weather, ways: [{ ...asked, panelArea_m2, storeVolume_m3 }], draws: 2 }),
    ).result,
  ])
  expect(hours!.own!.hours_h).toBe(way.hoursOver_h)
  // the sheet
  if (plant === 'panels') {
    const sheet = finish(studies.sheet({ answer })).result!
    const line = (label: string) =>
      plainly(wordingText(sheet.job.find((one) => one.label === label)!.value, 'si'))
    expect(line('Hours above the limit')).toMatch(new RegExp(`^${Math.round(way.hoursOver_h)};`))
    expect(line('The room as it is, without all that')).toContain(`${Math.round(before.hoursOver_h)} h above`)
    return
  }
  const sheet = finish(studies.waySheet({ scenario, weather, draws: 0 })).result!
  const line = (label: string) =>
    plainly(wordingText(sheet.job.find((one) => one.label === label)!.value, 'si'))
  expect(line('Hours above the limit')).toBe(
    `${Math.round(way.hoursOver_h)}; ${Math.round(before.hoursOver_h)} before`,
  )
  expect(line('Hottest hour')).toBe(`${way.peak_C.toFixed(1)} °C; ${before.peak_C.toFixed(1)} °C before`)
})

test('a search with a way taken is the search of the room as it is', () => {
  const scenario = withWayTaken(room, ['insulateWalls', 'airConditioner'])
  const few = ['insulateWalls', 'airConditioner'] as const
  const again = finish(studies.decide({ scenario, weather, only: few, winters: false })).result
  const first = finish(studies.decide({ scenario: room, weather, only: few, winters: false })).result
  expect(again.combinations).toEqual(first.combinations)
  expect(again.pool).toEqual(first.pool)
})
