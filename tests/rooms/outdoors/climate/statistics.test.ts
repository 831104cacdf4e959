import { describe, expect, test } from 'vitest'
import {
  MONTH_STARTS,
  dayMeans,
  dayRanges,
  hourlyFromDays,
  monthMeans,
  monthOfDay,
  seasonal,
} from '#model/basis/hours'
import { dayLength_h, solarHour_h, warmthOfDay } from '#inside/model/outdoors/climate/day-shape.ts'
import { inventClimate } from '#model/outdoors/climate'
import { placeById } from '#inside/model/outdoors/climate/places.ts'
import { summariseClimate } from '#model/outdoors/weather'

const byMonth = (value: (month: number) => number) =>
  Float64Array.from({ length: 8760 }, (_, hour) => value(monthOfDay(Math.floor(hour / 24))))

describe('calendar (exact)', () => {
  test('months begin on days 0, 31, 59 … 334 and a year has 365', () => {
    expect(MONTH_STARTS).toEqual([0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365])
    expect([0, 30, 31, 58, 59, 364].map(monthOfDay)).toEqual([0, 0, 1, 1, 2, 11])
  })

  test('means by month and day, and ranges, of series known by construction', () => {
    expect([...monthMeans(byMonth((month) => month + 1))]).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12])
    const saw = Float64Array.from({ length: 8760 }, (_, hour) => hour % 24)
    expect(dayMeans(saw).every((value) => value === 11.5)).toBe(true)
    expect(dayRanges(saw).every((value) => value === 23)).toBe(true)
  })

  test('a constant stays constant through both interpolations; December runs into January', () => {
    const flat = [...seasonal(new Float64Array(12).fill(7)), ...hourlyFromDays(new Float64Array(365).fill(7))]
    expect(flat.every((value) => Math.abs(value - 7) < 1e-12)).toBe(true)
    const steps = seasonal([0, 1, 2, 3, 4, 5, 6, 5, 4, 3, 2, 1])
    expect(steps[15 * 24 + 12]).toBeCloseTo(0, 2)
    expect(Math.abs(steps[0]! - steps[8759]!)).toBeLessThan(0.01)
    const days = hourlyFromDays(Float64Array.from({ length: 365 }, (_, day) => day))
    // hour 36 is centred half an hour after the noon of day 1; hour 0 lies 11.5 h before noon of day 0
    expect(days[36]).toBeCloseTo(1 + 0.5 / 24, 9)
    expect(days[0]).toBeCloseTo((364 * 11.5) / 24, 9)
  })
})

describe('summary', () => {
  test('means, seasons and extremes of a year known by construction', () => {
    const record = inventClimate(placeById('hot-desert'))
    const summary = summariseClimate({
      ...record,
      airTemp_C: byMonth((month) => (month < 6 ? month : 11 - month)),
    })
    expect(summary.summerMean_C).toBeCloseTo((4 + 5 + 5) / 3, 9)
    expect(summary.winterMean_C).toBeCloseTo((1 + 0 + 0) / 3, 9)
    expect(summary.hottestHour_C).toBe(5)
    expect(summary.coldestHour_C).toBe(0)
    expect(summary.annualMean_C).toBeCloseTo(2.5, 1)
    expect(summary.months.map((month) => month.dailyRange_K)).toEqual(new Array(12).fill(0))
    expect(summary.months).toHaveLength(12)
  })

  test('a record that is not 8760 h is a programmer’s error', () => {
    expect(() => summariseClimate({ ...inventClimate(placeById('hot-desert')), hours: 8784 })).toThrow(
      RangeError,
    )
  })

  test('an unknown place is a programmer’s error', () => {
    expect(() => placeById('nowhere')).toThrow(RangeError)
  })
})

describe('course of a day', () => {
  // published: 12 h everywhere at the equinox; 16 h 22 min to 16 h 38 min at London (51.5 N) on 21 June with
  // refraction and the sun's rim, which add about 0.2 h (almanac, from memory)
  test('day length', () => {
    expect(dayLength_h(51.5, 80)).toBeCloseTo(12, 0)
    expect(dayLength_h(51.5, 171)).toBeGreaterThan(16.2)
    expect(dayLength_h(51.5, 171)).toBeLessThan(16.65)
    expect(dayLength_h(0, 171)).toBeCloseTo(12, 9)
    expect([dayLength_h(80, 171), dayLength_h(80, 354)]).toEqual([24, 0])
  })

  test('warmth runs 0 at sunrise, 1 some 1.9 h after noon, back to 0, without a step', () => {
    const course = Float64Array.from({ length: 2400 }, (_, at) => warmthOfDay(at / 100, 13))
    expect(course[550]).toBeCloseTo(0, 3)
    expect(course.indexOf(Math.max(...course)) / 100).toBeCloseTo(12 + 1.86, 1)
    expect(Math.max(...course)).toBeCloseTo(1, 5)
    for (let at = 1; at < 2400; at += 1) expect(Math.abs(course[at]! - course[at - 1]!)).toBeLessThan(0.01)
  })

  test('solar hour: 15° of longitude an hour from the zone’s own meridian', () => {
    const site = { name: '', latitude_deg: 0, longitude_deg: 7.5, altitude_m: 0, utcOffset_h: 1 }
    expect(solarHour_h(site, 12)).toBe(12)
    expect(solarHour_h({ ...site, longitude_deg: 15 }, 36)).toBe(12.5)
  })
})
