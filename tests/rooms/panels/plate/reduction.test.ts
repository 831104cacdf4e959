import { describe, expect, test } from 'vitest'
import { equilibriumTemperature_C } from '#inside/model/panels/plate/balance.ts'
import {
  panelBalance,
  emptyPanelHour,
  readPanelHour,
  reducePanelHours,
  panelSetting,
  type PanelSpec,
  panelTangent,
} from '#model/panels/plate'
import { skyHours } from '#model/outdoors/sky'
import { planeIrradiance } from '#model/outdoors/sun'
import { inventedWeather } from '../../invented-weather.ts'
import { BARE, PANELS } from './cases.ts'

const { weather, sun } = inventedWeather(8760)
const sky = skyHours(weather, {
  model: 'matsunobuCoimbra2024',
  altitudeTerm: false,
  useMeasured: true,
  deficitFactor_frac: 1,
})

function reduced(spec: PanelSpec) {
  const plane = planeIrradiance(
    sun,
    weather,
    spec.tilt_deg,
    spec.azimuth_deg,
    spec.groundAlbedo_frac,
    spec.horizon_deg,
  )
  return { plane, panel: reducePanelHours(weather, plane, sky, spec) }
}

/** Dry, part wet, wet: kg/m². */
const WATERS = [0, 0.01, 0.1]
/** The mutation run, which repeats these tests hundreds of times, looks at fewer hours. */
const SPARSER = Number(process.env.SPARSER_HOURS ?? 1)
/** Every so many hours of the year, prime to 24 so that all hours of the day come up. */
const STRIDE = 7 * SPARSER
const EQUILIBRIUM_STRIDE = 31 * SPARSER
const STORE_C = [8, 32] as const

describe.each(PANELS)('reduction against the full balance: %s', (_name, spec) => {
  const { plane, panel } = reduced(spec)
  const setting = panelSetting(spec)
  const input = emptyPanelHour()
  const tangent = { q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }

  test('≤ 0.05 K of plate temperature from equilibrium to the store’s 8 … 32 °C, wet and frosty hours too', () => {
    let worst_K = 0
    let frosty = 0
    let dewy = 0
    for (let hour = 0; hour < weather.hours; hour += STRIDE) {
      readPanelHour(setting, weather, sky, plane, hour, input)
      const from = Math.min(STORE_C[0], panel.equilibrium_C[hour]!)
      const until = Math.max(STORE_C[1], panel.equilibrium_C[hour]!)
      for (const water of WATERS) {
        for (let plate = from; plate <= until; plate += 3.1) {
          const full = panelBalance(setting, input, plate, water)
          panelTangent(panel, hour, plate, water, tangent)
          worst_K = Math.max(worst_K, Math.abs(full.q_Wm2 - tangent.q_Wm2) / tangent.slope_Wm2K)
          if (full.water_kgm2s > 0 && full.surface_C < 0) frosty++
          if (full.water_kgm2s > 0 && full.surface_C > 0) dewy++
        }
      }
    }
    expect(worst_K).toBeLessThanOrEqual(0.05)
    expect(frosty).toBeGreaterThan(50 / SPARSER)
    expect(dewy).toBeGreaterThan(50 / SPARSER)
  })

  test('equilibrium within 0.02 K of the full balance’s', () => {
    for (let hour = 0; hour < weather.hours; hour += EQUILIBRIUM_STRIDE) {
      readPanelHour(setting, weather, sky, plane, hour, input)
      const apart = Math.abs(panel.equilibrium_C[hour]! - equilibriumTemperature_C(setting, input))
      expect(apart).toBeLessThan(0.02)
    }
  })

  test('season heat and dew within 1 %: May to September, plate at 16 °C whenever it loses heat', () => {
    let full_J = 0
    let reduced_J = 0
    let fullWater = 0
    let reducedWater = 0
    for (let hour = 120 * 24; hour < 273 * 24; hour++) {
      readPanelHour(setting, weather, sky, plane, hour, input)
      const full = panelBalance(setting, input, 16, 0)
      panelTangent(panel, hour, 16, 0, tangent)
      if (full.q_Wm2 <= 0) continue
      full_J += full.q_Wm2
      reduced_J += tangent.q_Wm2
      fullWater += full.water_kgm2s
      reducedWater += tangent.water_kgm2s
    }
    expect(Math.abs(reduced_J / full_J - 1)).toBeLessThan(0.01)
    expect(Math.abs(reducedWater - fullWater)).toBeLessThan(0.01 * fullWater + 1e-9)
  })

  test('irradiance absorbed is what plate and film keep of that on the plane, by hand where there is no film', () => {
    const noon = plane.total_Wm2.indexOf(Math.max(...plane.total_Wm2))
    const kept_frac = panel.absorbedSun_Wm2[noon]! / plane.total_Wm2[noon]!
    const { plateSun, filmSun } = setting.dry
    expect(kept_frac).toBeCloseTo(plateSun + filmSun, 12)
    expect(kept_frac).toBeLessThan(1)
    if (spec.film === null) expect(kept_frac).toBeCloseTo(1 - spec.coating.solarReflectance_frac, 12)
  })

  // The slope has small steps of its own (onset of gap convection, end of the still span), hence a mean and a loose worst.
  test('slope is the change of heat: 1 % on average, 25 % at a kink, dry and away from the dew point', () => {
    const above = { ...tangent }
    let sum = 0
    let count = 0
    for (let hour = 5; hour < weather.hours; hour += 53) {
      const plate = panel.equilibrium_C[hour]! + 6
      if (weather.dewPoint_C[hour]! > panel.surface_C[hour]! - 1) continue
      panelTangent(panel, hour, plate, 0, tangent)
      panelTangent(panel, hour, plate + 0.2, 0, above)
      const change = (above.q_Wm2 - tangent.q_Wm2) / 0.2
      const off = Math.abs((2 * change) / (tangent.slope_Wm2K + above.slope_Wm2K) - 1)
      expect(off).toBeLessThan(0.25)
      sum += off
      count++
    }
    expect(count).toBeGreaterThan(30)
    expect(sum / count).toBeLessThan(0.01)
  })
})

test('lengths that differ are refused', () => {
  const { plane } = reduced(BARE)
  const short = { ...plane, total_Wm2: plane.total_Wm2.subarray(1) }
  expect(() => reducePanelHours(weather, short, sky, BARE)).toThrow(RangeError)
  expect(() => reducePanelHours(weather, plane, { ...sky, hours: 5 }, BARE)).toThrow(RangeError)
})
