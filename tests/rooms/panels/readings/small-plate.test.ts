import { describe, expect, test } from 'vitest'
import { smallPlateConvection_Wm2K } from '#model/outdoors/air'

const at = (side_m: number, wind_ms: number, tilt_deg = 0) =>
  smallPlateConvection_Wm2K(side_m, wind_ms, tilt_deg, 22, 101325)

describe('forced convection on a small board', () => {
  // Pohlhausen with ν 15.6e-6, k 0.0262, Pr 0.71, worked out by hand beside: W/m²K.
  test.each([
    [0.2, 1, 8.79],
    [0.2, 2, 12.43],
    [0.2, 3, 15.22],
    [0.5, 2, 7.86],
  ])('a level board of %d m at %d m/s: %d W/m²K within 3 %%', (side, wind, table) => {
    expect(Math.abs(at(side, wind) / table - 1)).toBeLessThan(0.03)
  })

  // Sparrow, Ramsey & Mass 1979, j = 0.86 Re^-½ for 25° to 90° (from memory), the same air.
  test.each([
    [0.2, 1, 11.38],
    [0.2, 2, 16.09],
    [0.5, 2, 10.18],
  ])('a board turned to the wind, %d m at %d m/s: %d W/m²K within 3 %%', (side, wind, table) => {
    expect(Math.abs(at(side, wind, 45) / table - 1)).toBeLessThan(0.03)
  })

  test('the worked leaf of Monteith & Unsworth (problem 10.1): 50 mm, 2 m/s, Nu 49: within 15 %', () => {
    const nusselt = (at(0.05, 2) * 0.05) / 0.0262
    expect(Math.abs(nusselt / 49 - 1)).toBeLessThan(0.15)
  })

  test('falls with the root of size and rises with the root of wind; none without wind', () => {
    expect(at(0.4, 1) / at(0.1, 1)).toBeCloseTo(0.5, 9)
    expect(at(0.2, 4) / at(0.2, 1)).toBeCloseTo(2, 9)
    expect(at(0.2, 0)).toBe(0)
    expect(() => at(0, 1)).toThrow(RangeError)
  })
})
