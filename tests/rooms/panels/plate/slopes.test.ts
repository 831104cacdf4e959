import { describe, expect, test } from 'vitest'
import { Face, reducePanelHours } from '#model/panels/plate'
import { FilmGap } from '#inside/model/panels/plate/film-gap.ts'
import { evaporationLimit_kgm2s } from '#inside/model/panels/plate/water.ts'
import { skyHours } from '#model/outdoors/sky'
import { planeIrradiance } from '#model/outdoors/sun'
import { inventedWeather } from '../../invented-weather.ts'
import { BARE, FILM } from './cases.ts'

/*
 * Label: exact. The hour loop steps with slopes, so each is held to the derivative of what it belongs to, taken by
 * central differences: 1e-4 of itself, the differences' own error.
 */
const { weather, sun } = inventedWeather(240)
const sky = skyHours(weather, {
  model: 'matsunobuCoimbra2024',
  altitudeTerm: false,
  useMeasured: false,
  deficitFactor_frac: 1,
})
const reduced = (tilt_deg: number, gap_m: number | null) => {
  const plane = planeIrradiance(sun, weather, tilt_deg, 0, 0.2)
  const film = gap_m === null ? null : { ...FILM, gap_m }
  return reducePanelHours(weather, plane, sky, { ...BARE, tilt_deg, horizon_deg: 0, film })
}

describe.each([
  [0, 0.02],
  [0, 0.05],
  [45, 0.03],
])('the film’s gap at %i°, %f m', (tilt_deg, gap_m) => {
  const panel = reduced(tilt_deg, gap_m)
  test('slope with the difference: that of the heat with both mean and air held', () => {
    const gap = new FilmGap()
    let beyondOnset = 0
    for (let hour = 5; hour < 240; hour += 47) {
      const mean = panel.air_C[hour]!
      gap.set(panel.gap!, mean, hour)
      for (const difference of [-8, -1, 0.7, 3, 9, 17, 28, 45]) {
        const at = (d: number) => {
          gap.cross(mean + d / 2, mean - d / 2)
          return gap.heat_Wm2
        }
        const wide = 1e-4
        const slope = (at(difference + wide) - at(difference - wide)) / (2 * wide)
        at(difference)
        const said = gap.slope_Wm2K
        if (difference > panel.gap!.onset_K[hour]!) beyondOnset++
        expect(Math.abs(said / slope - 1), `${hour} ${difference}`).toBeLessThan(1e-4)
      }
    }
    expect(beyondOnset).toBeGreaterThan(5)
  })
})

test('the face: change of convection and of evaporation with temperature, and neither of a limit reached', () => {
  const panel = reduced(5, null)
  const face = new Face()
  const at = (temp_C: number) => {
    face.temp_C = temp_C
    face.convect()
    face.evaporate()
    return { h: face.h_Wm2K, evaporation: face.evaporation_kgm2s }
  }
  for (let hour = 3; hour < 240; hour += 59) {
    face.set(panel, hour)
    for (const y of [-20, -6, -0.4, 0.4, 5, 30]) {
      // The saturation table is straight within a tenth of a kelvin: its middle, so that both sides lie in one piece.
      const temp_C = Math.floor((face.air_C + y) * 10) / 10 + 0.05
      face.limit_kgm2s = Infinity
      const [low, high] = [at(temp_C - 1e-3), at(temp_C + 1e-3)]
      at(temp_C)
      expect(face.rise_Wm2K2).toBeCloseTo((high.h - low.h) / 2e-3, 4)
      const slope = (high.evaporation - low.evaporation) / 2e-3
      if (slope > 0) expect(Math.abs(face.evaporationSlope_kgm2sK / slope - 1)).toBeLessThan(1e-3)
      else expect(face.evaporationSlope_kgm2sK).toBe(0)
      if (face.evaporation_kgm2s <= 0) continue
      face.limit_kgm2s = face.evaporation_kgm2s / 2
      at(temp_C)
      expect(face.evaporation_kgm2s).toBe(face.limit_kgm2s)
      expect(face.evaporationSlope_kgm2sK).toBe(0)
    }
  }
})

test('evaporation from more water than covers the face is limited by that water', () => {
  expect(evaporationLimit_kgm2s(0.09)).toBeCloseTo(0.09 / 900, 12)
})
