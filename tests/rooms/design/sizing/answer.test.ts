import { wordingText } from '#model/basis/words'
import { tanksSoldAbout_m3 } from '#inside/model/design/assembly/tank-sizes.ts'
import { describe, expect, test } from 'vitest'
import { uncertainty } from '#studies/drawn-areas.ts'
import { Stages } from '#studies/stages.ts'
import { said } from '#model/basis/words'
import { withField, defaultScenario } from '#model/design/scenario'
import type { UncertaintyResult } from '#model/design/sizing'
import { sampleWeather } from '../../../../src/shell/samples.ts'

const DRAWS = 12

function spread(stages: Stages, climate: string): UncertaintyResult {
  const record = sampleWeather(climate)
  const answer = stages.answer(defaultScenario(), record)
  const run = uncertainty(stages, defaultScenario(), record, answer.sizing, DRAWS)
  const seen: number[] = []
  for (;;) {
    const step = run.next()
    if (step.done === true) {
      expect(seen).toEqual(Array.from({ length: DRAWS }, (_, i) => i + 1))
      return step.value
    }
    seen.push(step.value)
  }
}

describe('the range of the area', () => {
  const first = spread(new Stages(), 'high-dry-plateau')

  test('low ≤ middle ≤ high, and every draw is reported as it is done', () => {
    expect(first.draws).toBe(DRAWS)
    expect(first.low_m2).not.toBeNull()
    expect(first.low_m2!).toBeLessThanOrEqual(first.middle_m2!)
    expect(first.middle_m2!).toBeLessThanOrEqual(first.high_m2 ?? Infinity)
    expect(first.unreachable_frac).toBeGreaterThanOrEqual(0)
  })

  test('the inputs are ranked by how much they move the area, each inside ± 1', () => {
    const strengths = first.drivers.map((driver) => Math.abs(driver.correlation))
    expect(strengths).toEqual(strengths.toSorted((a, b) => b - a))
    expect(Math.max(...strengths)).toBeLessThanOrEqual(1)
    for (const { low, high } of first.drivers) expect(low).toBeLessThanOrEqual(high)
  })

  test('another stages gives the same numbers, digit for digit', () => {
    expect(spread(new Stages(), 'high-dry-plateau')).toEqual(first)
  })
})

describe('a target out of reach', () => {
  const scenario = withField(defaultScenario(), 'target.maxArea_m2', '400')
  const { sizing, year, area_m2 } = new Stages().answer(scenario, sampleWeather('wet-tropics'))

  test('is a floor at the largest area, with one sentence of what sets it', () => {
    expect(sizing.kind).toBe('floor')
    expect(area_m2).toBe(400)
    expect(sizing.withPanels.measure).toBeGreaterThan(0)
    expect(said(sizing.limit!.sentence).message).toMatch(/^[A-Z].*\.$/)
  })

  test('still helps, and ranks the load cuts by what they take off the peak', () => {
    expect(sizing.withPanels.peak_C).toBeLessThan(sizing.doNothing.peak_C)
    const drops = sizing.loadCuts.map((cut) => cut.peakDrop_K)
    expect(drops.length).toBeGreaterThan(0)
    expect(drops).toEqual(drops.toSorted((a, b) => b - a))
    expect(Math.min(...drops)).toBeGreaterThan(0)
  })

  test('holds no number that is none', () => {
    expect(year.room_C.every(Number.isFinite)).toBe(true)
    expect(sizing.curve.peak_C.every(Number.isFinite)).toBe(true)
  })
})

describe('a target in reach', () => {
  const answer = new Stages().answer(defaultScenario(), sampleWeather('continental'))
  const { sizing, storeVolume_m3, area_m2 } = answer

  test('is met by the area found, and just not by the next smaller one tried', () => {
    expect(sizing.kind).toBe('met')
    expect(sizing.withPanels.measure).toBeLessThanOrEqual(0)
    const at = sizing.curve.area_m2.indexOf(sizing.area_m2)
    expect(sizing.curve.area_m2[at - 1]!).toBeGreaterThan(0.99 * sizing.area_m2)
  })

  test('is built of whole modules no smaller than asked, and a tank that is sold, next to the one asked', () => {
    const { moduleLength_m, moduleWidth_m } = defaultScenario().panel
    expect(area_m2).toBeCloseTo(sizing.modules * moduleLength_m * moduleWidth_m, 9)
    expect(area_m2).toBeGreaterThanOrEqual(sizing.area_m2 - 1e-9)
    expect(tanksSoldAbout_m3(sizing.storeVolume_m3)).toContain(storeVolume_m3)
  })

  test('says what rounding gives: the year before it and the year built', () => {
    const text = wordingText(answer.rounding!, 'si')
    expect(sizing.beforeRounding!.measure).toBeLessThanOrEqual(0)
    expect(text).toContain(`(${sizing.beforeRounding!.hours_h} h above the limit`)
    expect(text).toContain(`: ${sizing.withPanels.hours_h} h above the limit`)
    expect(answer.year.room_C.filter((value, h) => value > answer.limit_C[h]!)).toHaveLength(
      sizing.withPanels.hours_h,
    )
  })

  test('the year is that of the design built: its peak is no worse than the one sized', () => {
    expect(Math.max(...answer.year.room_C)).toBeLessThanOrEqual(sizing.withPanels.peak_C + 0.05)
  })
})
