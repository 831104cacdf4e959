import { describe, expect, test } from 'vitest'
import {
  changeHeat_Jkg,
  evaporationLimit_kgm2s,
  waterLimit_kgm2,
  wetness_frac,
} from '#inside/model/panels/plate/water.ts'
import {
  FULL_COVER_KGM2,
  LONGEST_STEP_S,
  waterAfter_kgm2,
  reducePanelHours,
  panelTangent,
} from '#model/panels/plate'
import { skyHours } from '#model/outdoors/sky'
import { planeIrradiance } from '#model/outdoors/sun'
import { inventedWeather } from '../../invented-weather.ts'
import { BARE, FILM } from './cases.ts'

describe('water on the panel', () => {
  test('grows, runs off past the limit, stays when frozen, dries to nothing', () => {
    expect(waterAfter_kgm2(0.1, 1e-5, 900, 5, 0.5)).toBeCloseTo(0.109, 12)
    expect(waterAfter_kgm2(0.499, 1e-5, 900, 5, 0.5)).toBe(0.5)
    expect(waterAfter_kgm2(0.499, 1e-5, 900, -2, 0.5)).toBeCloseTo(0.508, 12)
    expect(waterAfter_kgm2(0.6, 0, 900, 1, 0.5)).toBe(0.5)
    expect(waterAfter_kgm2(0.6, 0, 900, 0, 0.5)).toBe(0.5)
    expect(waterAfter_kgm2(0.001, -1e-4, 900, 5, 0.5)).toBe(0)
  })
  test('a level panel holds more than a tilted one', () => {
    expect(waterLimit_kgm2(0)).toBeCloseTo(0.8, 12)
    expect(waterLimit_kgm2(15)).toBeCloseTo(0.45, 12)
    expect(waterLimit_kgm2(30)).toBeCloseTo(0.1, 12)
    expect(waterLimit_kgm2(90)).toBeCloseTo(0.1, 12)
  })
  test('wetness runs from 0 to 1 at 0.02 kg/m²', () => {
    expect(wetness_frac(0)).toBe(0)
    expect(wetness_frac(0.5 * FULL_COVER_KGM2)).toBe(0.5)
    expect(wetness_frac(1)).toBe(1)
  })
  test('heat of change: 2501 − 2.361 t kJ/kg wet, 2834.6 frozen, no jump between', () => {
    expect(changeHeat_Jkg(20)).toBeCloseTo(2.45378e6, 0)
    expect(changeHeat_Jkg(-5)).toBe(2.8346e6)
    for (let t = -1; t < 1; t += 0.01) {
      expect(Math.abs(changeHeat_Jkg(t + 0.01) - changeHeat_Jkg(t))).toBeLessThan(4000)
    }
  })
})

describe.each([
  ['bare', BARE],
  ['film', { ...BARE, film: FILM }],
])('evaporation, %s', (_name, spec) => {
  const { weather, sun } = inventedWeather(24 * 40, 5)
  const sky = skyHours(weather, {
    model: 'prata1996',
    altitudeTerm: false,
    useMeasured: true,
    deficitFactor_frac: 1,
  })
  const panel = reducePanelHours(
    weather,
    planeIrradiance(sun, weather, spec.tilt_deg, spec.azimuth_deg, 0.2, spec.horizon_deg),
    sky,
    spec,
  )
  const tangent = { q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }

  test('never takes more than is there in the longest step, at any temperature', () => {
    for (let hour = 0; hour < panel.hours; hour += 5) {
      for (const water of [1e-6, 0.003, 0.02, 0.3]) {
        for (const plate of [-10, 5, 20, 45]) {
          panelTangent(panel, hour, plate, water, tangent)
          expect(water + tangent.water_kgm2s * LONGEST_STEP_S).toBeGreaterThanOrEqual(-1e-12)
        }
      }
    }
  })
  test('a dry plate has none to give', () => {
    for (let hour = 0; hour < panel.hours; hour += 5) {
      panelTangent(panel, hour, 40, 0, tangent)
      expect(tangent.water_kgm2s).toBeCloseTo(0, 15)
    }
    expect(evaporationLimit_kgm2s(0)).toBeCloseTo(FULL_COVER_KGM2 / LONGEST_STEP_S, 15)
  })
  test('heat and slope are finite and slope positive far outside any fit', () => {
    for (let hour = 0; hour < panel.hours; hour += 11) {
      for (const water of [0, 0.01, 0.1]) {
        let before = -Infinity
        for (const plate of [-60, -20, 0, 30, 60, 100]) {
          panelTangent(panel, hour, plate, water, tangent)
          expect(Number.isFinite(tangent.q_Wm2)).toBe(true)
          expect(tangent.slope_Wm2K).toBeGreaterThan(0)
          expect(tangent.q_Wm2).toBeGreaterThan(before)
          before = tangent.q_Wm2
        }
      }
    }
  })
})
