import { describe, expect, test } from 'vitest'
import { kneeRatio_m3m2 } from '#inside/model/design/sizing/store-knee.ts'
import { defaultScenario, PRESETS, withField, withPreset } from '#model/design/scenario'
import { sizePanels, surelyTooSmall } from '#model/design/sizing'
import { taskOf } from '#model/design/assembly'
import { Stages } from '#studies/stages.ts'
import { sampleWeather } from '../../../../src/shell/samples.ts'

const LADDER = [0.03, 0.05, 0.08, 0.12, 0.18, 0.27]

describe('the tank at the knee', () => {
  test('is between the tanks tried, and moves no faster than what they gain', () => {
    let before = 0
    for (let enough = 1; enough <= 6; enough += 0.01) {
      const ratio = kneeRatio_m3m2(LADDER, [1, 2, 3, 4, 5, 6], enough)
      expect(ratio).toBeGreaterThanOrEqual(before)
      if (before > 0) expect(ratio / before).toBeLessThan(1.01)
      before = ratio
    }
    expect(before).toBeCloseTo(0.27, 6)
  })
  test('is the smallest where that is enough, and a tank tried where its gain is just enough', () => {
    expect(kneeRatio_m3m2(LADDER, [5, 5, 5, 5, 5, 5], 4)).toBe(0.03)
    expect(kneeRatio_m3m2(LADDER, [1, 2, 3, 4, 5, 6], 3)).toBeCloseTo(0.08, 12)
  })
  test('is the same at the largest area where that is surely too small, without its own year', () => {
    const base = withPreset(defaultScenario(), PRESETS[0]!)
    const task = (limit_C: number) => {
      const scenario = withField(base, 'target.limit_C', String(limit_C))
      return taskOf(new Stages().prepare(scenario, sampleWeather('wet-tropics')))
    }
    const sized = sizePanels(task(22))
    expect(sized.kind).toBe('floor')
    const { area_m2, storeVolume_m3, flow_kgsm2 } = sized
    expect(surelyTooSmall(task(22), 0.2)).toEqual({ area_m2, storeVolume_m3, flow_kgsm2 })
    expect(surelyTooSmall(task(22), 50)).toBeNull()
    expect(surelyTooSmall(task(45), 0.2)).toBeNull()
  })
  test('makes the area follow a worse roof without a step the other way', () => {
    const weather = sampleWeather('continental')
    const stages = new Stages()
    const base = withPreset(defaultScenario(), PRESETS[0]!)
    const areas = [0, 1, 2, 3, 4, 5].map((k) => {
      const scenario = withField(base, 'room.roofU_Wm2K', String(1 + 0.02 * k))
      return sizePanels(taskOf(stages.prepare(scenario, weather))).area_m2
    })
    for (const [i, area] of areas.slice(1).entries()) {
      expect(area).toBeGreaterThan(areas[i]!)
      expect(area / areas[i]!).toBeLessThan(1.04)
    }
  })
})
