import { describe, expect, test } from 'vitest'
import { yardstick } from '#inside/model/design/target/exceedance.ts'
import { sizePanels, type SizingTask } from '#model/design/sizing'
import { defaultScenario } from '#model/design/scenario'
import { sampleWeather } from '../../../../src/shell/samples.ts'

/* Label: exact. Planted measures that are not monotone in the area: what the search returns, and what it says. */
const LIMIT_C = 26
const weather = sampleWeather('continental')
const { hours } = weather
const stick = yardstick(
  { ...defaultScenario().target, kind: 'peak', limit_C: LIMIT_C },
  weather,
  new Float64Array(hours).fill(LIMIT_C),
  0,
)

/** A task whose hottest hour is `over_K` of the area above the limit, whatever the tank. */
function planted(over_K: (area_m2: number) => number): SizingTask {
  const room = (over: number): Float64Array => new Float64Array(hours).fill(LIMIT_C + over)
  return {
    yardstick: stick,
    room_C: ({ area_m2 }) => room(over_K(area_m2)),
    season: null,
    seasonRoom_C: ({ area_m2 }) => room(over_K(area_m2)),
    doNothing_C: room(5),
    maxArea_m2: 60,
    guess_m2: 10,
    storeVolume_m3: 1,
    mostStore_m3: Infinity,
    hasTank: true,
    flow_kgsm2: () => 0.01,
    flowRows: () => [],
    moduleArea_m2: 2,
  }
}

/** Falls to the limit at an area, and is over it again by 0.5 K in a span. */
const again =
  (met_m2: number, from_m2: number, until_m2: number) =>
  (area_m2: number): number =>
    area_m2 >= from_m2 && area_m2 <= until_m2 ? 0.5 : Math.log(met_m2 / area_m2)

describe('a planted measure', () => {
  test('that only falls is met from the area found on, and nothing is said', () => {
    const found = sizePanels(planted(again(6, 100, 100)))
    expect(found.kind).toBe('met')
    expect(found.area_m2).toBeGreaterThanOrEqual(6)
    expect(found.area_m2).toBeLessThan(6 * 1.004)
    expect(found.missedAgainFrom_m2).toBeNull()
  })
  test.each([
    [11, 60, 2],
    [7, 8, 1.25],
    [20, 30, 4],
    [9.3, 9.7, Math.sqrt(2.5)],
  ])('that is missed again from %f to %f m² is said so, at %f times the area', (from_m2, until_m2, times) => {
    const found = sizePanels(planted(again(6, from_m2, until_m2)))
    expect(found.area_m2).toBeGreaterThanOrEqual(6)
    expect(found.area_m2).toBeLessThan(6 * 1.004)
    expect(found.missedAgainFrom_m2).toBeCloseTo(times * found.area_m2, 9)
  })
  test('that is met nowhere is out of reach', () => {
    expect(sizePanels(planted(() => 1)).kind).toBe('floor')
  })
})
