import { describe, expect, test } from 'vitest'
import { clearByLongwave } from '#inside/model/outdoors/sky/clear-by-longwave.ts'
import { judgeSky, type SkyOptions, skyHours } from '#model/outdoors/sky'
import { inventedWeather } from '../../invented-weather.ts'

/** The judge of the sky model on records made by the model itself, off by a known amount: no open data needed. */
const OPTIONS: SkyOptions = {
  model: 'matsunobuCoimbra2024',
  altitudeTerm: false,
  useMeasured: true,
  deficitFactor_frac: 1,
}

const DAYS = 20

/** Twenty steady days, a cloud of 0.6 over every second, and what the model says came down. */
function steadyDays() {
  const { weather, sun } = inventedWeather(24 * DAYS)
  weather.airTemp_C.fill(15)
  weather.dewPoint_C.fill(5)
  for (let h = 0; h < weather.hours; h++) weather.cloud_frac[h] = Math.floor(h / 24) % 2 === 0 ? 0 : 0.6
  return { weather, sun, own_Wm2: skyHours(weather, OPTIONS).total_Wm2 }
}

const up = (altitude_deg: number): boolean => altitude_deg > 0

describe('the sky model judged against a record', () => {
  test('a record without measured longwave is not judged', () => {
    const { weather, sun } = steadyDays()
    expect(judgeSky(weather, sun, OPTIONS)).toBeNull()
  })

  test('a record 7 W/m² above the model all along: bias −7, RMSE 7, in every kind of hour', () => {
    const { weather, sun, own_Wm2 } = steadyDays()
    const judged = judgeSky({ ...weather, skyLongwave_Wm2: own_Wm2.map((l) => l + 7) }, sun, OPTIONS)!
    for (const errors of Object.values(judged.model)) {
      expect(errors.bias_Wm2).toBeCloseTo(-7, 9)
      expect(errors.rmse_Wm2).toBeCloseTo(7, 9)
    }
  })

  test('hours are counted by sun and cloud: all, day, clear day, night, clear night', () => {
    const { weather, sun, own_Wm2 } = steadyDays()
    const { model, formula } = judgeSky({ ...weather, skyLongwave_Wm2: own_Wm2 }, sun, OPTIONS)!
    const count = (is: (h: number) => boolean) => [...weather.airTemp_C.keys()].filter(is).length
    const day = (h: number) => up(sun.altitude_deg[h]!)
    const clear = (h: number) => weather.cloud_frac[h] === 0
    expect(model.all.hours).toBe(480)
    expect(model.day.hours).toBe(count(day))
    expect(model['clear day'].hours).toBe(count((h) => day(h) && clear(h)))
    expect(model.night.hours).toBe(count((h) => !day(h)))
    expect(model['clear night'].hours).toBe(count((h) => !day(h) && clear(h)))
    expect(formula.night.hours).toBe(model.night.hours)
  })

  test('a tenth of cloud is no longer clear; a sun on the horizon is not up', () => {
    const { weather, sun, own_Wm2 } = steadyDays()
    weather.cloud_frac.fill(0.1)
    sun.altitude_deg.fill(0)
    const { model } = judgeSky({ ...weather, skyLongwave_Wm2: own_Wm2 }, sun, OPTIONS)!
    expect(model['clear night'].hours).toBe(0)
    expect(model.day.hours).toBe(0)
    expect(model.night.hours).toBe(480)
  })

  test('nights clear by their own longwave are those, and only those, with a steady cold sky', () => {
    const { weather, sun, own_Wm2 } = steadyDays()
    const { formula } = judgeSky({ ...weather, skyLongwave_Wm2: own_Wm2 }, sun, OPTIONS)!
    const proven = formula['night clear by its own longwave']
    expect(proven.hours).toBeGreaterThan(0.7 * formula['clear night'].hours)
    expect(proven.hours).toBeLessThanOrEqual(formula['clear night'].hours)
    expect(proven.rmse_Wm2).toBeCloseTo(0, 9)
  })

  test('the formula alone knows no cloud: too dark by the cloud’s part on every second night', () => {
    const { weather, sun, own_Wm2 } = steadyDays()
    const { model, formula } = judgeSky({ ...weather, skyLongwave_Wm2: own_Wm2 }, sun, OPTIONS)!
    expect(model.night.bias_Wm2).toBeCloseTo(0, 9)
    const cloudy = formula.night.hours - formula['clear night'].hours
    const lack = -(formula.night.bias_Wm2 * formula.night.hours) / cloudy
    const gained = own_Wm2[24]! - own_Wm2[0]!
    expect(lack).toBeCloseTo(gained, 6)
    expect(formula.night.rmse_Wm2).toBeCloseTo(gained * Math.sqrt(cloudy / formula.night.hours), 6)
  })

  test('the model does not look at what it is judged against, and hours without a reading are left out', () => {
    const { weather, sun, own_Wm2 } = steadyDays()
    const skyLongwave_Wm2 = own_Wm2.map((l, h) => (h < 100 ? NaN : l + (h % 2 === 0 ? 10 : -10)))
    const { model } = judgeSky({ ...weather, skyLongwave_Wm2 }, sun, OPTIONS)!
    expect(model.all.hours).toBe(380)
    expect(model.all.bias_Wm2).toBeCloseTo(0, 9)
    expect(model.all.rmse_Wm2).toBeCloseTo(10, 9)
  })
})

describe('clear by its own longwave, at the limits', () => {
  const flux = (value: number, hours = 3) => new Float64Array(hours).fill(value)
  test('a sky half way between clear and black is not yet clear', () => {
    expect(clearByLongwave(flux(350), flux(300), flux(400))[1]).toBe(0)
    expect(clearByLongwave(flux(349), flux(300), flux(400))[1]).toBe(1)
  })
  test('each series must be as long as the measured one', () => {
    expect(() => clearByLongwave(flux(350), flux(300, 4), flux(400))).toThrow(RangeError)
    expect(() => clearByLongwave(flux(350), flux(300), flux(400, 4))).toThrow(RangeError)
  })
})
