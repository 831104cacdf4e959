import { describe, expect, test } from 'vitest'
import { airConductivity_WmK, coldBelowNusselt, rayleighGroup, uprightGap } from '#model/outdoors/air'

const sine = (tilt_deg: number) => Math.sin((tilt_deg * Math.PI) / 180)

/* Second implementation: gap conductances worked out apart from this program by the same two sources, W/m²K at about
 * 15 °C; 3 %: their conductivity of air is not given. */
describe('a gap that is colder below', () => {
  test.each([
    [0.01, 30, 10, 2.55],
    [0.025, 0, 5, 1.02],
    [0.025, 10, 5, 1.07],
    [0.025, 10, 10, 1.13],
    [0.025, 30, 5, 1.16],
    [0.025, 30, 10, 1.34],
    [0.05, 10, 5, 0.66],
    [0.05, 10, 10, 0.72],
    [0.05, 30, 5, 0.95],
    [0.05, 30, 10, 1.12],
  ])('%f m at %i°, %i K', (gap_m, tilt_deg, difference_K, want) => {
    const rayleigh = rayleighGroup(15, 101325) * difference_K * gap_m ** 3
    const got = (airConductivity_WmK(15) / gap_m) * coldBelowNusselt(rayleigh, sine(tilt_deg))
    expect(Math.abs(got / want - 1)).toBeLessThan(0.03)
  })
  test('level or nearly still it only conducts', () => {
    expect(coldBelowNusselt(1e6, 0)).toBe(1)
    expect(coldBelowNusselt(999, 1)).toBe(1)
    expect(coldBelowNusselt(1000, 1)).toBeLessThan(1.0002)
  })
  test.each([2e3, 1e4, 3e4, 3e6])('growth at Ra %f is Ra dNu/dRa', (rayleigh) => {
    const at = (ra: number) => {
      const out = { nusselt: 0, growth: 0 }
      uprightGap(ra, out)
      return out
    }
    const step = 1e-5
    const slope = (at(rayleigh * (1 + step)).nusselt - at(rayleigh * (1 - step)).nusselt) / (2 * step)
    expect(at(rayleigh).growth).toBeCloseTo(slope, 6)
  })
})
