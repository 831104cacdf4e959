import { describe, expect, test } from 'vitest'
import { isPlaceId, placeId, plainPlace, readPlaceId } from '#live/place-id.ts'

const KRAKOW = { latitude_deg: 50.06, longitude_deg: 19.94, altitude_m: 220 }

describe('the id of a place', () => {
  test('carries name, choices and own months through a link and back', () => {
    const place = {
      ...plainPlace(KRAKOW, 'Kraków; the “old” town, 1'),
      warming_K: -0.5,
      hottest_C: 33,
      hotSummer: true,
      own: [
        { column: 'airTemp_C', month: 6, value: 24.5 },
        { column: 'humidity_frac', month: 0, value: 0.61 },
      ],
    } as const
    expect(isPlaceId(placeId(place))).toBe(true)
    expect(readPlaceId(placeId(place))).toEqual(place)
    expect(placeId(plainPlace(KRAKOW))).toBe('at:50.06,19.94,220')
  })

  test.each([
    'at:',
    'at:50',
    'at:50,x',
    'at:50,20;hottest=',
    'at:50,20;months=T13_4',
    'at:50,20;months=Q1_4',
    'at:50,20;months=T1_',
  ])('%s is refused in a sentence', (id) => {
    expect(() => readPlaceId(id)).toThrow(/is no place/)
  })
})
