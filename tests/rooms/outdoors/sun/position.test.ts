import { getSpa } from 'nrel-spa'
import { Body, Equator, Horizon, Observer } from 'astronomy-engine'
import { describe, expect, test } from 'vitest'
import { extraterrestrial_Wm2, geometricAltitude_deg } from '#inside/model/outdoors/sun/position.ts'
import { sunAt, sunHours } from '#model/outdoors/sun'

/** Five latitudes from the tropics to beyond the polar circle, both hemispheres. */
const PLACES = [
  [0.5, 36.8],
  [21.3, -157.9],
  [-33.9, 151.2],
  [45.0, 8.0],
  [68.4, 17.4],
] as const

describe('sun position', () => {
  // Reda & Andreas 2004, Solar Energy 76, 577, table A5.1: zenith 50.11162°, azimuth 194.34024° with refraction at
  // 820 mbar and 11 °C, which is 0.0163° (NREL's own geometric zenith 50.12792°). Compared without refraction;
  // tolerance 0.02°: suncalc has no parallax and no ΔT table.
  test('NREL SPA test case', () => {
    const sun = sunAt(Date.UTC(2003, 9, 17, 19, 30, 30), 39.742476, -105.1786)
    expect(Math.abs(90 - sun.altitude_deg - 50.12792)).toBeLessThan(0.02)
    expect(Math.abs(sun.azimuth_deg - 194.34024)).toBeLessThan(0.02)
  })

  test('a year at five latitudes against astronomy-engine 2.1.19 (JPL-grade), geometric: 0.03° at most, 0.01° rms', () => {
    let worst = 0
    let squares = 0
    let count = 0
    for (const [latitude, longitude] of PLACES) {
      const observer = new Observer(latitude, longitude, 0)
      for (let k = 0; k < 400; k++) {
        const time = Date.UTC(2024, 0, 1) + k * 21.93 * 3_600_000
        const date = new Date(time)
        const place = Equator(Body.Sun, date, observer, true, true)
        const theirs = Horizon(date, observer, place.ra, place.dec).altitude
        const error = sunAt(time, latitude, longitude).altitude_deg - theirs
        worst = Math.max(worst, Math.abs(error))
        squares += error * error
        count++
      }
    }
    expect(count).toBe(2000)
    expect(worst).toBeLessThan(0.03)
    expect(Math.sqrt(squares / count)).toBeLessThan(0.01)
  })

  test('azimuth through a year against nrel-spa 2.0.2, sun up and off the zenith: 0.05°', () => {
    let compared = 0
    for (const [latitude, longitude] of PLACES) {
      for (let k = 0; k < 200; k++) {
        const date = new Date(Date.UTC(2024, 0, 1) + k * 43.9 * 3_600_000)
        const ours = sunAt(date.getTime(), latitude, longitude)
        if (ours.altitude_deg < 0 || ours.altitude_deg > 80) continue
        const theirs = getSpa(date, latitude, longitude, 0, { function: 0 })
        const apart = Math.abs(((ours.azimuth_deg - theirs.azimuth + 540) % 360) - 180)
        expect(apart).toBeLessThan(0.05)
        expect(Math.abs(90 - theirs.zenith - ours.altitude_deg)).toBeLessThan(0.5)
        compared++
      }
    }
    expect(compared).toBeGreaterThan(300)
  })

  test('taking refraction out undoes putting it in (Meeus 16.4), above and below the horizon', () => {
    const added = (h: number) => {
      const radians = (Math.max(0, h) * Math.PI) / 180
      return ((0.0002967 / Math.tan(radians + 0.00312536 / (radians + 0.08901179))) * 180) / Math.PI
    }
    for (let h = -20; h < 90; h += 0.25) {
      expect(Math.abs(geometricAltitude_deg(h + added(h)) - h)).toBeLessThan(1e-4)
    }
  })
})

test('extraterrestrial irradiance by day of year: Spencer 1971 × 1361 (references, calc), printed to 0.01', () => {
  for (const [day, want] of [
    [1, 1408.7],
    [80, 1371.75],
    [172, 1316.69],
    [266, 1351.54],
    [355, 1407.43],
  ] as const) {
    expect(Math.abs(extraterrestrial_Wm2(Date.UTC(2023, 0, day, 12)) - want)).toBeLessThan(0.006)
  }
})

describe('sun hours', () => {
  test('the sun is taken at the middle of the radiation period', () => {
    const start = Date.UTC(2023, 5, 21)
    const hours = sunHours(start, 24, 0.5, 36, -80)
    expect(hours.altitude_deg[17]).toBe(sunAt(start + 17.5 * 3_600_000, 36, -80).altitude_deg)
    expect(hours.azimuth_deg).toHaveLength(24)
  })
  test('a place that is none is refused', () => {
    expect(() => sunHours(0, 1, 0.5, 91, 0)).toThrow(RangeError)
    expect(() => sunHours(0, 1, 0.5, 0, 181)).toThrow(RangeError)
    expect(() => sunHours(NaN, 1, 0.5, 0, 0)).toThrow(RangeError)
  })
})
