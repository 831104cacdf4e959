import { describe, expect, test } from 'vitest'
import {
  findPlace,
  monthChangeText,
  placeWeather,
  readMonthsTable,
  USUAL_PLACE,
  type OwnMonth,
} from '#model/outdoors/place'
import { monthMeans } from '#model/basis/hours'
import { PLACES, TOWNS } from './held-data.ts'

const ASKED = { latitude_deg: 50.06, longitude_deg: 19.94, altitude_m: 220, name: null, warming_K: null }
const held = findPlace(PLACES, TOWNS, ASKED)
const July = (value: number): OwnMonth => ({ column: 'airTemp_C', month: 6, value })

describe('months of the user’s own', () => {
  test('a typed mean is held by the year, is not warmed, and is said in the basis', () => {
    const place = findPlace(PLACES, TOWNS, { ...ASKED, own: [July(22)], warming_K: 3 })
    const year = placeWeather(place)
    expect(monthMeans(year.airTemp_C)[6]).toBeCloseTo(22, 1)
    expect(place.changed).toHaveLength(1)
    expect(monthChangeText(place.changed[0]!)).toMatch(/^July mean temperature 22\.0 °C instead of 2\d\.\d$/)
    expect(year.basis).toContain('1 of its 60 monthly values changed by the user')
  })

  test('a value equal to the held one as shown changes nothing', () => {
    const same = Number(held.months.airTemp_C[6]!.toFixed(1))
    const place = findPlace(PLACES, TOWNS, { ...ASKED, own: [July(same)] })
    expect(place.changed).toEqual([])
    expect(placeWeather(place).airTemp_C).toEqual(placeWeather(held).airTemp_C)
  })

  test('a value no climate has is refused with its month and column', () => {
    expect(() => findPlace(PLACES, TOWNS, { ...ASKED, own: [July(70)] })).toThrow(
      /July: mean temperature is 70/,
    )
    expect(() =>
      findPlace(PLACES, TOWNS, { ...ASKED, own: [{ column: 'humidity_frac', month: 0, value: 1.2 }] }),
    ).toThrow(/January: relative humidity is 120 %/)
  })

  test('a table of the warmest months, or the hottest hour, narrows the stated error', () => {
    const usual = placeWeather(held).madeErrors!
    const own = [5, 6, 7].map((month) => ({ column: 'airTemp_C' as const, month, value: 21 }))
    expect(placeWeather(findPlace(PLACES, TOWNS, { ...ASKED, own })).madeErrors!.months_K).toBeLessThan(
      usual.months_K,
    )
    const hottest = placeWeather(held, { ...USUAL_PLACE, hottest_C: 34 }).madeErrors!
    expect(hottest.hotSpell_K).toBeLessThan(usual.hotSpell_K)
  })
})

describe('a table of months', () => {
  test('is read as “duskbank place” prints it; empty cells leave what is held', () => {
    const text = 'month,airTemp_C,humidity_frac,invented\nJan,-1.5,,false\nJul,22.5,0.7,false\n'
    expect(readMonthsTable(text, 'm.csv')).toEqual([
      { column: 'airTemp_C', month: 0, value: -1.5 },
      { column: 'airTemp_C', month: 6, value: 22.5 },
      { column: 'humidity_frac', month: 6, value: 0.7 },
    ])
    expect(readMonthsTable('month;wind_ms\n12;3', 'm.csv')).toEqual([
      { column: 'wind_ms', month: 11, value: 3 },
    ])
  })

  test.each([
    ['', /header/],
    ['a,b\n1,2', /header/],
    ['month,wind_ms\n13,2', /“13” is no month/],
    ['month,wind_ms\nJan,2\n1,3', /twice/],
    ['month,wind_ms\nJan,two', /“two” is not a number/],
  ])('%j is refused in a sentence', (text, words) => {
    expect(() => readMonthsTable(text, 'm.csv')).toThrow(words)
  })
})
