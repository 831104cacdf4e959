import { describe, expect, test } from 'vitest'
import { tankPlaceOf, tanksSoldAbout_m3 } from '#model/design/assembly'
import { defaultScenario, type Scenario, withField } from '#model/design/scenario'
import { Stages } from '#studies/stages.ts'
import { sampleWeather } from '../../../../src/shell/samples.ts'

/* Label: exact. What is chosen has a place, and what the place costs is said. */
const weather = sampleWeather('continental')
const stages = new Stages()
const scenarioWith = (fields: Readonly<Record<string, string>>): Scenario =>
  Object.entries(fields).reduce((s, [path, text]) => withField(s, path, text), defaultScenario())
const answerWith = (fields: Readonly<Record<string, string>>) => stages.answer(scenarioWith(fields), weather)

describe('the tank of a sizing', () => {
  const free = answerWith({ 'store.place': 'outside' })
  test.each([{ 'store.doorWidth_m': '0.813' }, { 'store.doorWidth_m': '0.6' }] as Record<string, string>[])(
    'fits its place, and so does the one that is bought: %j',
    (fields) => {
      const { sizing, storeVolume_m3, fit, warnings } = answerWith(fields)
      const { most_m3 } = tankPlaceOf(scenarioWith(fields))!
      expect(sizing.kind).toBe('met')
      expect(sizing.storeVolume_m3).toBeLessThanOrEqual(most_m3 * (1 + 1e-9))
      expect(storeVolume_m3).toBeLessThanOrEqual(most_m3 * (1 + 1e-9))
      expect(tanksSoldAbout_m3(storeVolume_m3)).toEqual([storeVolume_m3])
      expect(sizing.withPanels.measure).toBeLessThanOrEqual(0)
      // A narrow tank may need more panel than the roof has: of the tank nothing is amiss.
      expect(fit.misfits.filter(({ code }) => code !== 'panels-do-not-fit')).toEqual([])
      expect(sizing.placeLimit!.most_m3).toBe(most_m3)
      expect(sizing.placeLimit!.larger.measure).toBeLessThan(sizing.placeLimit!.most.measure)
      const said = warnings.find(({ code }) => code === 'place-limits-tank')
      expect(said!.message).toContain('The place of the tank limits it')
      console.log(`${sizing.area_m2.toFixed(2)} m², ${storeVolume_m3} m³: ${said!.message}`)
    },
  )
  test('is no heavier than a raised floor carries, and where that is too little the target is out of reach', () => {
    const { sizing, storeVolume_m3 } = answerWith({ 'room.floorKind': 'raised' })
    const { most_m3, limit } = tankPlaceOf(scenarioWith({ 'room.floorKind': 'raised' }))!
    expect([limit, sizing.kind]).toEqual(['load', 'floor'])
    expect(storeVolume_m3).toBeLessThanOrEqual(most_m3 * (1 + 1e-9))
    expect(sizing.placeLimit!.most_m3).toBe(most_m3)
  })
  test('that nothing limits is larger, needs less panel, and nothing is said', () => {
    expect(free.sizing.placeLimit).toBeNull()
    expect(free.sizing.storeVolume_m3).toBeGreaterThan(tankPlaceOf(scenarioWith({}))!.byDoor_m3)
    expect(free.warnings.map(({ code }) => code)).not.toContain('place-limits-tank')
  })
  test('needs less panel the wider its door', () => {
    const areas = ['0.45', '0.6', '0.813', '1.2'].map(
      (door) => answerWith({ 'store.doorWidth_m': door }).sizing.area_m2,
    )
    expect(areas).toEqual(areas.toSorted((a, b) => b - a))
    console.log(areas.map((area) => area.toFixed(2)).join(' > '))
  })
})
