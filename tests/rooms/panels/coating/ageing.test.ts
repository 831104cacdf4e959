import { describe, expect, test } from 'vitest'
import { agedCoating, agedFilm } from '#model/panels/coating'
import { soiledReflectance_frac } from '#inside/model/panels/coating/ageing.ts'
import { ProblemError } from '#model/basis/words'

const FRESH = { solarReflectance_frac: 0.93, windowEmittance_frac: 0.94, offWindowEmittance_frac: 0.92 }
const FILM = {
  solarTransmittance_frac: 0.9,
  windowTransmittance_frac: 0.86,
  offWindowTransmittance_frac: 0.8,
  scattered_frac: 0,
  reflectance_frac: 0.08,
  gap_m: 0.02,
  flutter_frac: 0.3,
  life_months: 18,
}

describe('a coating grows dirty', () => {
  test('nothing is lost at age 0; at first by the soiling a year; never below 0.2 + 0.67 (R₀ − 0.2) (references §8)', () => {
    expect(agedCoating(FRESH, 0.02, 0)).toEqual(FRESH)
    const month = agedCoating(FRESH, 0.02, 1 / 12).solarReflectance_frac
    expect(Math.abs((FRESH.solarReflectance_frac - month) / (0.02 / 12) - 1)).toBeLessThan(0.01)
    expect(soiledReflectance_frac(0.93)).toBeCloseTo(0.2 + 0.67 * 0.73, 12)
    expect(agedCoating(FRESH, 0.2, 100).solarReflectance_frac).toBeCloseTo(soiledReflectance_frac(0.93), 6)
  })
  test('a dark coating does not grow lighter, and emittance stays', () => {
    const dark = { ...FRESH, solarReflectance_frac: 0.05 }
    expect(agedCoating(dark, 0.05, 5)).toEqual(dark)
    expect(agedCoating(FRESH, 0.05, 5).windowEmittance_frac).toBe(0.94)
  })
  test('a negative age is refused', () => {
    expect(() => agedCoating(FRESH, 0.02, -1)).toThrow(RangeError)
    expect(() => agedCoating(FRESH, NaN, 1)).toThrow(RangeError)
  })
})

describe('a film wears out', () => {
  test('new as given; at the end of its life 90 % and 95 % of the transmittance, and no worse after', () => {
    expect(agedFilm(FILM, 0)).toMatchObject({ solarTransmittance_frac: 0.9, windowTransmittance_frac: 0.86 })
    const old = agedFilm(FILM, 1.5)
    expect(old.solarTransmittance_frac).toBeCloseTo(0.81, 12)
    expect(old.windowTransmittance_frac).toBeCloseTo(0.817, 12)
    expect(agedFilm(FILM, 9)).toEqual(old)
  })
  test('a film that passes and reflects more than falls on it is a problem for the user, with the field', () => {
    try {
      agedFilm({ ...FILM, windowTransmittance_frac: 0.95 }, 0)
      expect.unreachable()
    } catch (error) {
      expect(error).toBeInstanceOf(ProblemError)
      expect((error as ProblemError).problems[0]!.place.field).toBe('cover.windowTransmittance_frac')
    }
  })
})
