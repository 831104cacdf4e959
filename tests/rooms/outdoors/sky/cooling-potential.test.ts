import { describe, expect, test } from 'vitest'
import { meansByMonth, meansByMonthAndHour } from '#model/basis/hours'
import { BLACK, coolingPotential_Wm2, nightHours, skyHours } from '#model/outdoors/sky'
import { noonProfile } from '#model/outdoors/intake'
import { inventedWeather } from '../../invented-weather.ts'

const OPTIONS = {
  model: 'matsunobuCoimbra2024',
  altitudeTerm: false,
  useMeasured: true,
  deficitFactor_frac: 1,
} as const

/** Stefan & Boltzmann, CODATA 2018: 5.670374419e-8 W/m²K⁴. */
const SIGMA = 5.670374419e-8

describe('what a level surface at air temperature loses to the sky', () => {
  const { weather, sun } = inventedWeather(8760)
  const sky = skyHours(weather, OPTIONS)
  const black = coolingPotential_Wm2(weather, sky, BLACK)

  test('a black one loses σT⁴ − L (Stefan–Boltzmann), to 0.1 W/m²: the band polynomials’ own error', () => {
    for (let h = 0; h < weather.hours; h++) {
      const own = SIGMA * (weather.airTemp_C[h]! + 273.15) ** 4
      expect(Math.abs(black[h]! - (own - sky.total_Wm2[h]!))).toBeLessThan(0.1)
    }
  })

  // By hand: ε = 0.6 + 1.652 √(10 hPa / 1013.25 hPa) = 0.76412 (Matsunobu & Coimbra 2024), σ·293.15⁴ = 418.77 W/m².
  test('20 °C, 10 hPa, clear: 98.8 W/m², to 0.2', () => {
    const one = inventedWeather(1).weather
    one.airTemp_C[0] = 20
    one.dewPoint_C[0] = 6.97
    one.cloud_frac[0] = 0
    const [loss] = coolingPotential_Wm2(one, skyHours(one, OPTIONS), BLACK)
    expect(Math.abs(loss! - 98.8)).toBeLessThan(0.2)
  })

  test('window and the rest add up to black, and nothing is lost to a sky as warm as the air', () => {
    const window = coolingPotential_Wm2(weather, sky, { windowEmittance_frac: 1, offWindowEmittance_frac: 0 })
    const rest = coolingPotential_Wm2(weather, sky, { windowEmittance_frac: 0, offWindowEmittance_frac: 1 })
    for (let h = 0; h < weather.hours; h += 7) expect(window[h]! + rest[h]!).toBeCloseTo(black[h]!, 9)
    const warm = { ...weather, skyLongwave_Wm2: weather.airTemp_C.map((t) => SIGMA * (t + 273.15) ** 4) }
    const none = coolingPotential_Wm2(warm, skyHours(warm, OPTIONS), {
      ...BLACK,
      offWindowEmittance_frac: 0.3,
    })
    expect(Math.max(...none.map(Math.abs))).toBeLessThan(0.1)
  })

  test('refuses an emittance outside 0…1 and a sky of another length', () => {
    expect(() => coolingPotential_Wm2(weather, sky, { ...BLACK, windowEmittance_frac: 1.1 })).toThrow(
      RangeError,
    )
    expect(() => coolingPotential_Wm2(inventedWeather(24).weather, sky, BLACK)).toThrow(RangeError)
  })

  test('nights of a year at 36° fill just under half of it: sunset is late and sunrise early by refraction', () => {
    const dark = nightHours(sun).reduce((sum, night) => sum + night, 0) / weather.hours
    expect(dark).toBeGreaterThan(0.475)
    expect(dark).toBeLessThan(0.5)
  })

  test('month means are those of the hours chosen, in local standard time', () => {
    const hourOfDay = Float64Array.from({ length: 8760 }, (_, h) => h % 24)
    const { mean, count } = meansByMonthAndHour(weather, hourOfDay)
    expect([...count.slice(0, 24)]).toEqual(Array(24).fill(31))
    expect([...mean.slice(24 * 11)]).toEqual([...Array(24).keys()])
    const early = meansByMonth(
      weather,
      hourOfDay,
      Uint8Array.from(hourOfDay, (hour) => (hour < 6 ? 1 : 0)),
    )
    expect([...early.mean]).toEqual(Array(12).fill(2.5))
    expect(Number.isNaN(meansByMonth(inventedWeather(24).weather, hourOfDay.slice(0, 24)).mean[5]!)).toBe(
      true,
    )
  })

  test('the mean course of the light is even about solar noon where the clock is right, and an hour late where it is not', () => {
    const middle = ({ fromNoon_h, measured_Wm2 }: ReturnType<typeof noonProfile>) =>
      fromNoon_h.reduce((sum, h, i) => sum + h * measured_Wm2[i]!, 0) /
      measured_Wm2.reduce((a, b) => a + b, 0)
    const right = noonProfile(weather)
    expect(right.fromNoon_h).toHaveLength(24)
    expect(Math.abs(middle(right))).toBeLessThan(0.1)
    const shifted = { ...weather, start_utcMs: weather.start_utcMs + 3_600_000 }
    expect(Math.abs(middle(noonProfile(shifted)) - middle(right) - 1)).toBeLessThan(0.05)
    const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0)
    expect(total(right.sun_Wm2)).toBeCloseTo(total(right.measured_Wm2), 6)
  })
})
