import { describe, expect, test } from 'vitest'
import { panelAtTemperature, reducePanelHours, panelTangent } from '#model/panels/plate'
import { FROST_LIMIT_KGM2 } from '#inside/model/panels/plate/water.ts'
import { skyHours } from '#model/outdoors/sky'
import { planeIrradiance } from '#model/outdoors/sun'
import { inventedWeather } from '../../invented-weather.ts'
import { linearPanel } from '../../building/year/hand-made.ts'
import { BARE, FILM } from './cases.ts'

/** Steady humid hours, 20 °C with a dew point of 15 °C, dark, on a panel of this build-up. */
function humidHours(spec = BARE, hours = 60, dewPoint_C = 15, wind_ms = 3) {
  const { weather, sun } = inventedWeather(hours)
  weather.airTemp_C.fill(20)
  weather.dewPoint_C.fill(dewPoint_C)
  weather.wind_ms.fill(wind_ms)
  weather.cloud_frac.fill(0)
  for (const column of [
    weather.globalHorizontal_Wm2,
    weather.directNormal_Wm2,
    weather.diffuseHorizontal_Wm2,
  ])
    column.fill(0)
  const plane = planeIrradiance(sun, weather, spec.tilt_deg, spec.azimuth_deg, 0.2, spec.horizon_deg)
  const sky = skyHours(weather, {
    model: 'prata1996',
    altitudeTerm: false,
    useMeasured: true,
    deficitFactor_frac: 1,
  })
  return reducePanelHours(weather, plane, sky, spec)
}

const tangentAt = (panel: ReturnType<typeof humidHours>, plate_C: number, water_kgm2: number) => {
  const out = { q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }
  panelTangent(panel, 0, plate_C, water_kgm2, out)
  return out
}

describe('a panel held at one temperature', () => {
  test('of a textbook (heat = 9 W/m²K × the distance from 8 °C) gives that heat in every hour and stays dry', () => {
    const held = panelAtTemperature(linearPanel(5, 9, 8, 1000), 18)
    for (let h = 0; h < 5; h++) {
      expect(held.heat_Wm2[h]).toBeCloseTo(90, 9)
      expect(held.surface_C[h]).toBeCloseTo(18, 9)
      expect(held.water_kgm2[h]).toBe(0)
      expect(held.formed_kgm2[h]).toBe(0)
    }
  })

  // The rate of dew does not depend on what is there already (it gathers on the whole face), so the sum is exact.
  // The sky carries its heat off: it gives heat off all the while.
  test('under the dew point it gathers dew at one rate until drops run off, and dew goes on forming', () => {
    const panel = humidHours(BARE, 120, 19.5, 0.3)
    const rate_kgm2s = tangentAt(panel, 18, 0).water_kgm2s
    expect(rate_kgm2s).toBeGreaterThan(1e-6)
    const held = panelAtTemperature(panel, 18)
    expect(Math.min(...held.heat_Wm2)).toBeGreaterThan(0)
    const full = panel.waterLimit_kgm2
    for (let h = 0; h < panel.hours; h++) {
      expect(held.formed_kgm2[h]).toBeCloseTo(3600 * rate_kgm2s, 12)
      expect(held.water_kgm2[h]).toBeCloseTo(Math.min(full, 3600 * rate_kgm2s * (h + 1)), 10)
    }
    expect(held.water_kgm2[panel.hours - 1]).toBe(full)
    expect(held.heat_Wm2[panel.hours - 1]).toBeCloseTo(tangentAt(panel, 18, full).q_Wm2, 9)
  })

  test('the first hour’s heat is the mean of its four quarters, each with the water it begins with', () => {
    const panel = humidHours(BARE, 60, 19.5, 0.3)
    const rate = tangentAt(panel, 18, 0).water_kgm2s
    const quarters = [0, 1, 2, 3].map((k) => tangentAt(panel, 18, k * 900 * rate).q_Wm2)
    const mean = quarters.reduce((sum, q) => sum + q, 0) / 4
    expect(new Set(quarters).size).toBeGreaterThan(1)
    expect(panelAtTemperature(panel, 18).heat_Wm2[0]).toBeCloseTo(mean, 9)
  })

  test('frost does not run off: it grows past what drops would leave', () => {
    const panel = humidHours(BARE, 150)
    const held = panelAtTemperature(panel, -5)
    expect(held.water_kgm2[panel.hours - 1]).toBeGreaterThan(1.5 * panel.waterLimit_kgm2)
  })

  // Beysens 2016: 0.8 kg/m² is the most a night can give; 240 kg/m² were printed for a plate held below freezing.
  test('a winter below freezing leaves no more frost than three of the best nights', () => {
    const panel = humidHours(BARE, 1500)
    const held = panelAtTemperature(panel, -20)
    expect(held.formed_kgm2.reduce((sum, formed) => sum + formed, 0)).toBeGreaterThan(10)
    expect(Math.max(...held.water_kgm2)).toBe(FROST_LIMIT_KGM2)
  })

  test('above the dew point it stays dry, and what it forms is never below nothing', () => {
    const held = panelAtTemperature(humidHours(), 25)
    expect(Math.max(...held.water_kgm2)).toBe(0)
    expect(Math.min(...held.formed_kgm2)).toBe(0)
  })

  test('a film’s temperature follows the plate’s by its slope at equilibrium', () => {
    const panel = humidHours({ ...BARE, film: FILM })
    const held = panelAtTemperature(panel, 12)
    const want = panel.surface_C[3]! + panel.surfaceSlope[3]! * (12 - panel.equilibrium_C[3]!)
    expect(held.surface_C[3]).toBeCloseTo(want, 12)
    expect(panel.surfaceSlope[3]).toBeGreaterThan(0)
    expect(panel.surfaceSlope[3]).toBeLessThan(1)
  })
})
