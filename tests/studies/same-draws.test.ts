import { describe, expect, it } from 'vitest'
import { createStudies, finish } from '#studies/index.ts'
import { joinHours, type KnownWay } from '#studies/decide-sure.ts'
import { defaultScenario, drawnScenarios, firstDraws, USUAL_DRAWS } from '#model/design/scenario'
import { AIR_MEASURES, BUILDING_MEASURES } from '#model/design/measures'
import { FIRST_DRAWS } from '#model/design/sizing'
import { HOURS_DRAWS } from '#studies/usual.ts'
import { sampleWeather } from '../../src/shell/samples.ts'

const weather = sampleWeather('continental')
const studies = createStudies()
const DRAWS = 4

const hoursOf = (scenario: ReturnType<typeof defaultScenario>, way: KnownWay) =>
  joinHours([finish(studies.drawHours({ scenario, weather, ways: [way], draws: DRAWS })).result])[0]!

describe('one set of draws for one design', () => {
  const scenario = defaultScenario()

  it('hours are drawn as the area is: its first draws, which are a hypercube by themselves', () => {
    const all = drawnScenarios(scenario, weather, USUAL_DRAWS)
    expect(firstDraws(scenario, weather, HOURS_DRAWS)).toEqual(all.slice(0, HOURS_DRAWS))
    expect(HOURS_DRAWS).toBe(FIRST_DRAWS)
    const factors = all.slice(0, HOURS_DRAWS).map(({ panel }) => panel.fieldFactor_frac)
    const cells = factors.map((factor) => Math.floor(((factor - 0.7) / 0.3) * HOURS_DRAWS))
    expect(new Set(cells).size).toBe(HOURS_DRAWS)
  })

  it('the sheet’s hours of a built design are those that the range and the page of ways print', () => {
    const { sizing, area_m2, storeVolume_m3, loop } = finish(studies.size({ scenario, weather })).result
    expect(sizing.kind).toBe('met')
    const built = { area_m2, storeVolume_m3, flow_kgsm2: loop.flow_kgs / area_m2 }
    const sheet = finish(studies.expected({ scenario, weather, built, draws: DRAWS })).result
    const page = hoursOf(scenario, { measures: [], plant: 'panels', panelArea_m2: area_m2, storeVolume_m3 })
    expect(page.high_h).toBeGreaterThan(page.low_h)
    expect(sheet.hoursAbove_h.low).toBeCloseTo(page.low_h, 9)
    expect(sheet.hoursAbove_h.high).toBeCloseTo(page.high_h, 9)
  })

  it('a way has the hours of the design that it makes', () => {
    const ids = ['insulateRoof', 'shade'] as const
    const set = [...BUILDING_MEASURES, ...AIR_MEASURES].filter(({ id }) => ids.some((one) => one === id))
    const taken = set.reduce((s, measure) => measure.apply(s, 1, weather), scenario)
    const plant = { plant: 'panels', panelArea_m2: 8, storeVolume_m3: 0.6 } as const
    const before = hoursOf(scenario, { measures: ids, ...plant })
    const after = hoursOf(taken, { measures: [], ...plant })
    expect(before.all_h).toEqual(after.all_h)
    expect(before.own!.hours_h).toBe(after.own!.hours_h)
  })
})
