import { expect, test } from 'vitest'
import type { OpenOptions } from '#inside/model/outdoors/intake/open.ts'
import { describeWithData, opened } from './shared-data.ts'

type Planted = Omit<OpenOptions, 'file'>
const US = 'typical-year-36N-80W.csv'
const EU = 'typical-year-45N-8E.csv'
const SATELLITE = 'half-hourly-41N-109W-2017.csv'
const STATION = 'surfrad-slv16001.dat'
const SHIP = 'ship-tropical-atlantic.txt'

/* The sun is the outside witness: suncalc's solar noon against the radiation measured or modelled by others. */
describeWithData('the clock is held against the sun', () => {
  test.each([US, EU, SATELLITE, STATION, SHIP])(
    '%s as it is: within 15 min of solar noon (haze and hills move a day’s light)',
    (file) => {
      const { clock } = opened(file)
      expect(clock.verdict).toBe('agrees')
      expect(Math.abs(clock.late_min)).toBeLessThan(15)
      expect(clock.corrections).toEqual([])
    },
  )

  test('the four whole or clean files come within 5 min', () => {
    for (const file of [US, EU, SATELLITE, STATION])
      expect(Math.abs(opened(file).clock.late_min)).toBeLessThan(5)
  })

  test('the mountain station’s light is late by 20–30 min, said with a word on hills (terrain is the likely cause; the stamp convention is not in the file)', () => {
    const { clock } = opened('alpine-winter-47N-9E.txt')
    expect(clock.verdict).toBe('late')
    expect(clock.late_min).toBeGreaterThan(15)
    expect(clock.late_min).toBeLessThan(35)
    expect(clock.sentence).toContain('Hills')
  })

  const planted: readonly (readonly [string, string, Planted, string, number])[] = [
    ['an hour late', US, { time: { shift_h: 1 } }, 'late', 60],
    ['an hour early', US, { time: { shift_h: -1 } }, 'early', -60],
    ['stamps at the end read as the beginning', US, { time: { stamp: 'beginning' } }, 'late', 60],
    ['an hour late', SATELLITE, { time: { shift_h: 1 } }, 'late', 60],
    ['an hour late', STATION, { time: { shift_h: 1 } }, 'late', 60],
    ['local read as UTC', US, { time: { clockOffset_h: 0 } }, 'local', -300],
    ['local read as UTC', SATELLITE, { time: { clockOffset_h: 0 } }, 'local', -420],
    ['UTC read as local', STATION, { time: { clockOffset_h: -7 } }, 'utc', 420],
    ['UTC read as local', SHIP, { time: { clockOffset_h: -4 } }, 'utc', 240],
    ['UTC read as local', EU, { time: { clockOffset_h: 1 } }, 'utc', -60],
    ['flipped longitude', US, { site: { longitude_deg: 79.95 } }, 'longitude-flipped', 640],
    [
      'flipped longitude and its zone',
      US,
      { site: { longitude_deg: 79.95, utcOffset_h: 5 }, time: { clockOffset_h: 5 } },
      'longitude-flipped',
      40,
    ],
    ['flipped longitude', EU, { site: { longitude_deg: -8 } }, 'longitude-flipped', -64],
    ['flipped longitude', SATELLITE, { site: { longitude_deg: 108.54 } }, 'longitude-flipped', -568],
    [
      'unsigned longitude as printed',
      STATION,
      { site: { longitude_deg: 105.92 } },
      'longitude-flipped',
      -587,
    ],
    [
      'flipped longitude',
      SHIP,
      { site: { latitude_deg: 14.3, longitude_deg: 53.5 } },
      'longitude-flipped',
      430,
    ],
  ]
  test.each(planted)(
    'planted: %s in %s is caught, named and mended by the first correction',
    (_, file, more, verdict, late_min) => {
      const { clock } = opened(file, more)
      expect(clock.verdict).toBe(verdict)
      expect(Math.abs(clock.late_min - late_min)).toBeLessThan(15)
      expect(clock.sentence).toMatch(/clear days? the middle of the radiation falls .* solar noon/)
      const { change } = clock.corrections[0]!
      const mended = opened(file, {
        site: { ...more.site, ...change.site },
        time: { ...more.time, ...change.time },
      })
      expect(mended.clock.verdict).toBe('agrees')
    },
  )

  test('a latitude with the wrong sign shows in the seasons; the right one does not', () => {
    const flipped = (more: Planted, file: string): boolean =>
      opened(file, more).questions.some(({ about }) => about === 'latitude')
    for (const [file, latitude_deg] of [
      [US, 36.1],
      [EU, 45],
      [SATELLITE, 40.53],
    ] as const) {
      expect(flipped({}, file)).toBe(false)
      expect(flipped({ site: { latitude_deg: -latitude_deg } }, file)).toBe(true)
    }
  })
})
