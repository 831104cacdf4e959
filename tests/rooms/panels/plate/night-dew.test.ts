/* A whole year in humid sample climates: dew stays under what the sky can carry the heat of (energy, worked out here from a black
 * face at the dew point), under what the air can bring, and under the ceiling of a night's dew (0.8 kg/m², Beysens 2016). */
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { blackbody_Wm2, WINDOW_EMISSION } from '#model/outdoors/air'
import { valueAt } from '#model/basis/numbers'
import { readSampleCsv } from '#model/outdoors/climate'
import { skyHours } from '#model/outdoors/sky'
import { planeIrradiance, sunHours } from '#model/outdoors/sun'
import { panelAtTemperature, panelTangent, reducePanelHours } from '#model/panels/plate'
import { waterUnderSky_kgm2s } from '#inside/model/panels/plate/night-dew.ts'
import { FIELDS } from '#model/design/scenario'
import { BARE, FILM } from './cases.ts'

const CLIMATES = ['wet-tropics', 'humid-subtropical', 'foggy-desert-coast', 'monsoon-plain'] as const
const CEILING_KGM2 = 0.8
/** Least heat of evaporation there is at a dew point of 35 °C, J/kg: the bound is the looser for it. */
const LEAST_HEAT_JKG = 2.418e6

function yearOf(climate: string, cover: 'bare' | 'film') {
  const file = new URL(`../../../../climate-samples/${climate}.csv`, import.meta.url)
  const weather = readSampleCsv(readFileSync(file, 'utf8'), climate)
  const { latitude_deg, longitude_deg } = weather.site
  const sun = sunHours(weather.start_utcMs, weather.hours, 0.5, latitude_deg, longitude_deg)
  const spec = { ...BARE, tilt_deg: 0, horizon_deg: 0, film: cover === 'film' ? FILM : null }
  const sky = skyHours(weather, {
    model: FIELDS.sky.model.default,
    altitudeTerm: false,
    useMeasured: true,
    deficitFactor_frac: 1,
  })
  const plane = planeIrradiance(sun, weather, 0, 0, 0.2, 0)
  const bound_kgm2 = weather.dewPoint_C.map((dew_C, h) => {
    const window = valueAt(WINDOW_EMISSION, dew_C)
    const lost_Wm2 =
      Math.max(0, window - sky.window_Wm2[h]!) +
      Math.max(0, blackbody_Wm2(dew_C) - window - sky.offWindow_Wm2[h]!)
    return (3600 * lost_Wm2) / LEAST_HEAT_JKG
  })
  return { weather, bound_kgm2, panel: reducePanelHours(weather, plane, sky, spec) }
}

describe.each(CLIMATES.flatMap((climate) => [[climate, 'bare'] as const, [climate, 'film'] as const]))(
  '%s, %s',
  (climate, cover) => {
    const { weather, bound_kgm2, panel } = yearOf(climate, cover)
    test.each([-10, 5, 15, 22])('held at %i °C', (plate_C) => {
      const { formed_kgm2 } = panelAtTemperature(panel, plate_C)
      let most = 0
      let sum = 0
      for (let noon = 12; noon + 24 <= weather.hours; noon += 24) {
        const night = formed_kgm2.slice(noon, noon + 24)
        const total = night.reduce((all, formed) => all + formed, 0)
        const bound = bound_kgm2.slice(noon, noon + 24).reduce((all, formed) => all + formed, 0)
        expect(total).toBeLessThanOrEqual(bound * 1.001 + 1e-6)
        most = Math.max(most, total)
        sum += total
      }
      expect(most).toBeLessThanOrEqual(CEILING_KGM2)
      if (plate_C === -10) expect(sum).toBeGreaterThan(5)
    })
  },
)

describe('dew of a plate held at a temperature', () => {
  const { panel } = yearOf('humid-subtropical', 'bare')
  const held = { q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }
  const dewy = [...panel.air_C.keys()].filter((hour) => {
    panelTangent(panel, hour, -5, 0, held)
    return held.q_Wm2 < 0 && held.water_kgm2s > 0
  })
  test('while it gives heat off it is what the air brings, untouched', () => {
    for (const hour of dewy.slice(0, 300))
      for (const plate_C of [10, 20, 25]) {
        panelTangent(panel, hour, plate_C, 0, held)
        if (held.q_Wm2 >= 0) expect(waterUnderSky_kgm2s(panel, hour, plate_C, 0, held)).toBe(held.water_kgm2s)
      }
  })
  test('held ever colder than the sky would make it, it gains no more', () => {
    const gained = (hour: number, plate_C: number) => {
      panelTangent(panel, hour, plate_C, 0, held)
      return waterUnderSky_kgm2s(panel, hour, plate_C, 0, held)
    }
    for (const hour of dewy.slice(0, 300)) {
      const [cold, colder] = [gained(hour, -5), gained(hour, -25)]
      expect(Math.abs(cold - colder)).toBeLessThan(1e-7)
    }
  })
})
