import { describe, expect, test } from 'vitest'
import { exceedance, type TargetSpec } from '#model/design/target'
import { yardstick } from '#inside/model/design/target/exceedance.ts'
import { sampleWeather } from '../../../../src/shell/samples.ts'

const weather = sampleWeather('continental')
const { hours } = weather

const TARGET: TargetSpec = {
  kind: 'degreeHours',
  keptFor: 'awake',
  airSpeed_ms: 0.1,
  limit_C: 28,
  allowedHours_h: 0,
  allowedDegreeHours_Kh: 0,
  adaptive: 'ashrae55',
  occupiedFrom_h: 0,
  occupiedUntil_h: 0,
  maxArea_m2: 60,
}
const limit = (value: number): Float64Array => new Float64Array(hours).fill(value)
const stickFor = (change: Partial<TargetSpec>, limit_C = 28) =>
  yardstick({ ...TARGET, ...change }, weather, limit(limit_C), 0)

/**
 * 25 + 6 cos, °C, a cycle a day. The peak drifts once round the clock in the year, so that the hours sample every part of
 * the curve alike and their sum is its integral.
 */
const daily_C = Float64Array.from({ length: hours }, (_, h) => {
  const day = (2 * Math.PI * (h - 15)) / 24
  return 25 + 6 * Math.cos(day + (2 * Math.PI * h) / hours)
})
const days = hours / 24

describe('degree-hours of a daily sinus, mean 25, amplitude 6, limit 28 °C', () => {
  // Label: exact. Source: closed form (24/π)(√(A²−d²) − d acos(d/A)) = 15.6956804 K h a day, references-building §2.12.
  test('15.6957 K h a day, within 0.01 % (8760 samples of a curve with two kinks)', () => {
    const found = exceedance(daily_C, stickFor({}))
    expect(Math.abs(found.degreeHours_Kh / days / 15.6956804 - 1)).toBeLessThan(1e-4)
  })

  test('8.0 hours a day over the limit, within 0.2 % (2920 whole hours, at most one lost at each of the curve’s four turns)', () => {
    const found = exceedance(daily_C, stickFor({}))
    expect(Math.abs(found.hours_h / days / 8 - 1)).toBeLessThan(2e-3)
  })

  test.each([0, 100, 1460, 2900])(
    'with %d hours allowed the measure is the excess of the next one (by sorting)',
    (allowedHours_h) => {
      const found = exceedance(daily_C, stickFor({ kind: 'hours', allowedHours_h }))
      const fromTop = [...daily_C].sort((a, b) => b - a)
      expect(found.measure).toBeCloseTo(fromTop[allowedHours_h]! - 28, 9)
    },
  )

  test('the hours that are printed are the hours that judge: met exactly when no more than allowed are over', () => {
    const { hours_h } = exceedance(daily_C, stickFor({}))
    for (const kind of ['hours', 'adaptive'] as const)
      for (const allowedHours_h of [hours_h - 1, hours_h, hours_h + 1])
        expect(exceedance(daily_C, stickFor({ kind, allowedHours_h })).measure <= 0).toBe(
          hours_h <= allowedHours_h,
        )
  })

  test('peak 31 °C: 3 K over', () => {
    const found = exceedance(daily_C, stickFor({ kind: 'peak' }))
    expect(found.peak_C).toBeCloseTo(31, 4)
    expect(found.measure).toBeCloseTo(3, 4)
  })
})

describe('the measure is the distance from the target', () => {
  test('degree-hours: zero where what is allowed is just used', () => {
    const free = exceedance(daily_C, stickFor({ kind: 'degreeHours' })).measure
    const given = exceedance(daily_C, stickFor({ kind: 'degreeHours', allowedDegreeHours_Kh: 6000 })).measure
    expect(given).toBeCloseTo(free - 6000, 6)
  })

  test('it is continuous: 1e-6 K warmer moves no measure by more than 0.02', () => {
    const warmer = daily_C.map((value) => value + 1e-6)
    for (const kind of ['peak', 'hours', 'degreeHours', 'adaptive'] as const) {
      const stick = stickFor({ kind })
      const moved = exceedance(warmer, stick).measure - exceedance(daily_C, stick).measure
      expect(moved, kind).toBeGreaterThan(0)
      expect(moved, kind).toBeLessThan(0.02)
    }
  })
})

describe('hours that count', () => {
  test.each([
    [8, 18, 10],
    [20, 6, 10],
    [0, 0, 24],
    [0, 24, 24],
  ])('from %i until %i: %i hours of each day', (occupiedFrom_h, occupiedUntil_h, perDay) => {
    const stick = stickFor({ occupiedFrom_h, occupiedUntil_h })
    const counted = stick.limit_C.filter((value) => !Number.isNaN(value)).length
    expect(counted / (hours / 24)).toBe(perDay)
  })

  test('hours without a value (outside a simulated span) are passed over', () => {
    const partly = daily_C.map((value, h) => (h < hours / 2 ? value : NaN))
    const whole = exceedance(daily_C, stickFor({}))
    expect(exceedance(partly, stickFor({})).degreeHours_Kh).toBeCloseTo(whole.degreeHours_Kh / 2, -1)
  })
})

describe('hot days', () => {
  test('a tenth of the year’s days, those with the highest outdoor maximum', () => {
    const stick = stickFor({})
    expect(stick.hotDayStarts_h).toHaveLength(Math.round(hours / 240))
    const peak = (start: number): number => Math.max(...weather.airTemp_C.subarray(start, start + 24))
    const least = Math.min(...stick.hotDayStarts_h.map(peak))
    const rest = Array.from({ length: hours / 24 }, (_, d) => d * 24).filter(
      (start) => !stick.hotDayStarts_h.includes(start),
    )
    expect(Math.max(...rest.map(peak))).toBeLessThanOrEqual(least)
  })

  test('all held under the limit, none above it, and one lost by one hot hour', () => {
    const stick = stickFor({})
    expect(exceedance(limit(27.9), stick).hotDaysHeld).toBe(stick.hotDayStarts_h.length)
    expect(exceedance(limit(28.1), stick).hotDaysHeld).toBe(0)
    const once = limit(27.9)
    once[stick.hotDayStarts_h[3]! + 15] = 28.2
    expect(exceedance(once, stick).hotDaysHeld).toBe(stick.hotDayStarts_h.length - 1)
  })
})
