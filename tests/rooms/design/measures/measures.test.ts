import { describe, expect, test } from 'vitest'
import { AIR_MEASURES, BUILDING_MEASURES } from '#model/design/measures'
import { beforeMeasures } from '#inside/model/design/scenario/before-measures.ts'
import { fanOffset_K, felt_C, limitInMovingAir_C, yardstickOf } from '#model/design/target'
import { defaultScenario, FIELDS, PRESETS, withPreset, type Scenario } from '#model/design/scenario'
import { sampleWeather } from '../../../../src/shell/samples.ts'

const weather = sampleWeather('continental')
const MEASURES = [...BUILDING_MEASURES, ...AIR_MEASURES]
const BUILDINGS = PRESETS.map((preset) => withPreset(defaultScenario(), preset))

/** The quantity that a measure is about: less is cooler. */
const OWN: Readonly<Record<string, (s: Scenario) => number>> = {
  paintRoof: (s) => -s.room.roofReflectance_frac,
  insulateRoof: (s) => s.room.roofU_Wm2K,
  insulateWalls: (s) => s.room.wallU_Wm2K,
  shade: (s) => s.room.shading_frac,
  glazing: (s) => s.room.windowGain_frac,
  mass: (s) => -s.room.contents_Jm2K,
  fewerGains: (s) => s.room.gains_W.reduce((sum, gain) => sum + gain, 0),
  airtight: (s) => s.room.airChange_1h,
  nightOpening: (s) => -s.room.nightAirChange_1h * Number(s.room.nightVent),
  nightFan: (s) => -s.room.nightAirChange_1h * Number(s.room.nightVent),
  ceilingFan: (s) => -s.target.airSpeed_ms,
}

describe.each(MEASURES)('$name', ({ id, apply, fits, price, power_W }) => {
  test('none of it leaves the description as it is', () => {
    for (const building of BUILDINGS) expect(apply(building, 0, weather)).toBe(building)
  })

  test('more of it never makes its own quantity worse', () => {
    for (const building of BUILDINGS.filter(fits)) {
      const quantities = [0, 0.25, 0.5, 0.75, 1].map((amount) => OWN[id]!(apply(building, amount, weather)))
      expect(quantities).toEqual(quantities.toSorted((a, b) => b - a))
      expect(quantities.at(-1)).toBeLessThan(quantities[0]!)
    }
  })

  test('taken off again it leaves the quantity it changed as it was, or at its starting value', () => {
    for (const building of [defaultScenario()].filter(fits)) {
      const back = beforeMeasures(apply(building, 1, weather), [id])
      expect(OWN[id]!(back)).toBeCloseTo(OWN[id]!(building), 9)
    }
  })

  test('it has a price, and no power below zero', () => {
    for (const building of BUILDINGS) {
      expect(price(building)).toBeGreaterThanOrEqual(0)
      expect(power_W(building)).toBeGreaterThanOrEqual(0)
    }
  })
})

test('a room barer than the jars it is said to have is still a room', () => {
  const bare = defaultScenario()
  const least = FIELDS.room.contents_Jm2K.min
  const room = { ...bare.room, contents_Jm2K: least }
  expect(beforeMeasures({ ...bare, room }, ['mass']).room.contents_Jm2K).toBe(least)
})

describe('moving air', () => {
  test('is worth nothing in still air, below 25 °C and at the warmth of the skin', () => {
    expect(fanOffset_K(0.1)).toBe(0)
    expect([...felt_C(Float64Array.of(20, 25, 35, 40), 1.2)]).toEqual([20, 25, 35, 40])
  })

  test('lowers the rest by its offset, and never turns warmer into cooler', () => {
    const temps_C = Float64Array.from({ length: 400 }, (_, k) => 20 + k / 20)
    const felt = [...felt_C(temps_C, 2.2)]
    expect(felt_C(Float64Array.of(28), 1.2)[0]).toBeCloseTo(26.8, 12)
    expect(felt).toEqual(felt.toSorted((a, b) => a - b))
  })

  test('the limit that feels like another is the inverse of what is felt', () => {
    for (const offset_K of [1.2, 1.8, 2.2])
      for (const limit_C of [25, 26, 28, 30, 31, 32.5, 34])
        expect(felt_C(Float64Array.of(limitInMovingAir_C(limit_C, offset_K)), offset_K)[0]).toBeCloseTo(
          limit_C,
          9,
        )
    expect(limitInMovingAir_C(24, 2.2)).toBe(24)
    expect(limitInMovingAir_C(36, 2.2)).toBe(36)
  })

  test('moves the limit of people, and of nothing else', () => {
    const { target } = defaultScenario()
    const limit_C = (keptFor: 'awake' | 'goods', airSpeed_ms: number) =>
      yardstickOf({ ...target, keptFor, airSpeed_ms }, weather).limit_C[0]
    expect(limit_C('awake', 0.1)).toBe(26)
    expect(limit_C('awake', 0.6)).toBeCloseTo(27.2, 12)
    expect(limit_C('goods', 0.6)).toBe(26)
  })
})
