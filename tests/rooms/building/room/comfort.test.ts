import { describe, expect, it } from 'vitest'
import {
  adaptiveApplies,
  adaptiveComfort_C,
  adaptiveLower_C,
  adaptiveUpper_C,
} from '#inside/model/design/target/comfort.ts'
import { runningMeanOutdoor_C } from '#model/outdoors/weather'
import { madeWeather } from './made-weather.ts'

const steady = (temp_C: number) => madeWeather(240, { air_C: () => temp_C })

describe('adaptive comfort', () => {
  it.each([
    [10, 20.9, 24.4, 22.1, 25.1],
    [20, 24.0, 27.5, 25.4, 28.4],
    [25, 25.55, 29.05, 27.05, 30.05],
    [30, 27.1, 30.6, 28.7, 31.7],
  ])(
    'running mean %i °C: ASHRAE 55 comfort %f, 80 %% upper %f; EN 16798-1 comfort %f, II upper %f (the standards’ equations)',
    (mean, a55, upper80, en, upperII) => {
      expect(adaptiveComfort_C('ashrae55', mean)).toBeCloseTo(a55, 9)
      expect(adaptiveUpper_C(steady(mean), 'ashrae55')[200]!).toBeCloseTo(upper80, 9)
      expect(adaptiveComfort_C('en16798', mean)).toBeCloseTo(en, 9)
      expect(adaptiveUpper_C(steady(mean), 'en16798')[200]!).toBeCloseTo(upperII, 9)
    },
  )

  it('lower limits: 3.5 K below in ASHRAE 55, 4 K below in EN 16798-1 category II', () => {
    expect(adaptiveLower_C(steady(20), 'ashrae55')[0]).toBeCloseTo(20.5, 9)
    expect(adaptiveLower_C(steady(20), 'en16798')[0]).toBeCloseTo(21.4, 9)
  })

  it('beyond the standard’s range the limit is held and said not to apply', () => {
    expect(adaptiveUpper_C(steady(40), 'ashrae55')[0]).toBeCloseTo(0.31 * 33.5 + 21.3, 9)
    expect(adaptiveUpper_C(steady(0), 'en16798')[0]).toBeCloseTo(0.33 * 10 + 21.8, 9)
    expect(adaptiveApplies(steady(40), 'ashrae55')[0]).toBe(0)
    expect(adaptiveApplies(steady(31), 'en16798')[0]).toBe(0)
    expect(adaptiveApplies(steady(31), 'ashrae55')[0]).toBe(1)
  })
})

describe('running mean outdoor temperature', () => {
  // Days −7 … −1 before the last day of an eight-day record.
  const days = [21, 23, 26, 27, 25, 22, 24, 99]
  const eight = madeWeather(192, { air_C: (h) => days[Math.floor(h / 24)]! })

  it('seven-day form with 24, 22, 25, 27, 26, 23, 21 of d−1…d−7: 24.10526 (EN 16798-1)', () => {
    expect(runningMeanOutdoor_C(eight, 'sevenDay')[191]!).toBeCloseTo(24.10526, 5)
  })

  it('a day’s own weather does not enter it', () => {
    expect(runningMeanOutdoor_C(eight)[191]!).toBeLessThan(27)
    expect(runningMeanOutdoor_C(eight)[168]).toBe(runningMeanOutdoor_C(eight)[191])
  })

  it('exponential form steps by T_rm = 0.2 T₋₁ + 0.8 T_rm₋₁ from day to day', () => {
    const mean = runningMeanOutdoor_C(eight)
    for (let day = 1; day < 8; day++)
      expect(mean[day * 24]!).toBeCloseTo(0.2 * days[day - 1]! + 0.8 * mean[(day - 1) * 24]!, 9)
  })

  it('days are cut at local midnight, wherever the record begins', () => {
    const late = madeWeather(30, { start_utcMs: Date.UTC(2023, 0, 1, 20), air_C: (h) => (h < 4 ? 10 : 30) })
    const mean = runningMeanOutdoor_C(late, 'sevenDay')
    expect(mean[3]).toBeCloseTo(10, 9)
    expect(mean[4]).toBeCloseTo(10, 9)
    expect(mean[28]).toBeCloseTo((30 + 2.8 * 10) / 3.8, 9)
  })

  it('a whole year closes on itself: 1 January follows 31 December', () => {
    const year = madeWeather(8760, { air_C: (h) => (h >= 8760 - 24 * 20 ? 5 : 20) })
    expect(runningMeanOutdoor_C(year)[0]!).toBeCloseTo(5 + 15 * 0.8 ** 20, 6)
    expect(runningMeanOutdoor_C(year, 'sevenDay')[0]!).toBeCloseTo(5, 9)
  })
})
