import { describe, expect, test } from 'vitest'
import {
  windFactor_frac,
  gapTilt,
  hollandsNusselt,
  airConductivity_WmK,
  rayleighGroup,
  blackbody_Wm2,
  WINDOW_EMISSION,
  vapourPressure_Pa,
} from '#model/outdoors/air'
import { emptyPanelHour, readPanelHour, panelSetting, type PanelSpec } from '#model/panels/plate'
import { massTransfer } from '#inside/model/panels/plate/hour-inputs.ts'
import { gapOnset_K } from '#inside/model/panels/plate/setting.ts'
import { valueAt } from '#model/basis/numbers'
import { gapHeat_Wm2 } from '#inside/model/panels/plate/balance.ts'
import { planeIrradiance } from '#model/outdoors/sun'
import { inventedWeather } from '../../invented-weather.ts'
import { BARE, FILM, GREY } from './cases.ts'

type Change = (value: number) => PanelSpec

const coating =
  (key: keyof typeof GREY): Change =>
  (value) => ({ ...BARE, coating: { ...GREY, [key]: value } })
const spec =
  (key: keyof PanelSpec): Change =>
  (value) => ({ ...BARE, [key]: value })
const film =
  (change: (value: number) => Partial<typeof FILM>): Change =>
  (value) => ({ ...BARE, film: { ...FILM, ...change(value) } })

/** What a panel's description may be, both ends allowed: name in the refusal, lowest, highest. */
const RANGES: readonly (readonly [string, Change, number, number])[] = [
  ['solar reflectance', coating('solarReflectance_frac'), 0, 1],
  ['window emittance', coating('windowEmittance_frac'), 0, 1],
  ['off-window emittance', coating('offWindowEmittance_frac'), 0, 1],
  ['tilt (degrees)', spec('tilt_deg'), 0, 90],
  ['horizon (degrees)', spec('horizon_deg'), 0, 89],
  ['ground albedo', spec('groundAlbedo_frac'), 0, 1],
  ['panel height (m)', spec('height_m'), 0.01, 500],
  ['wind exposure', spec('windExposure_frac'), 0, 10],
  ['free-convection length (m)', spec('freeConvectionLength_m'), 0.001, 100],
  ['back loss (W/m²K)', spec('backLoss_Wm2K'), 0, 1000],
  ['heat capacity (J/m²K)', spec('heatCapacity_Jm2K'), 0, 1e9],
  ['film gap (m)', film((gap_m) => ({ gap_m })), 0.0005, 1],
  ['film solar sum', film((sum) => ({ solarTransmittance_frac: sum - 0.08 })), 0, 1],
  ['film window sum', film((sum) => ({ windowTransmittance_frac: sum - 0.08 })), 0, 1],
  ['film off-window sum', film((sum) => ({ offWindowTransmittance_frac: sum - 0.08 })), 0, 1],
]

describe('what a panel may be', () => {
  test.each(RANGES)(
    '%s: both ends are allowed, what lies beyond is refused by name',
    (name, at, low, high) => {
      expect(() => panelSetting(at(low))).not.toThrow()
      expect(() => panelSetting(at(high))).not.toThrow()
      for (const value of [low - 1e-4, high + 1e-4, NaN]) {
        expect(() => panelSetting(at(value))).toThrow(RangeError)
        expect(() => panelSetting(at(value))).toThrow(`panel ${name} is`)
      }
    },
  )
})

describe('what of a panel does not change with the hour', () => {
  // Watmuff 1977: 3.0 W/m²K per m/s; times exposure and the wind's own profile.
  test('wind: the author’s slope, the exposure and the terrain’s profile multiplied', () => {
    const half = panelSetting({ ...BARE, windExposure_frac: 0.5 })
    expect(half.windSlope).toBeCloseTo(3 * 0.5 * windFactor_frac('suburb', 3), 12)
    expect(panelSetting({ ...BARE, windModel: 'mcAdams1954' }).windSlope).toBeCloseTo(
      3.8 * windFactor_frac('suburb', 3),
      12,
    )
  })
  test('a wet bare plate radiates as water, a dry one by its coating', () => {
    const { dry, wet } = panelSetting(BARE)
    expect([dry.plateWindow, dry.plateOff]).toEqual([0.94, 0.92])
    expect([wet.plateWindow, wet.plateOff]).toEqual([0.95, 0.95])
    expect(valueAt(wet.plateEmission, 20)).toBeCloseTo(0.95 * blackbody_Wm2(20), 1)
    expect(dry.plateSun).toBeCloseTo(0.07, 12)
    expect(wet.plateSun).toBeCloseTo(0.07, 12)
  })
  test('under a film, the wet setting is that of a wet film', () => {
    const { dry, wet } = panelSetting({ ...BARE, film: FILM })
    expect(dry.plateWindow).toBeGreaterThan(0.7)
    expect(wet.plateWindow).toBe(0)
  })
  // Hollands 1976: convection in the gap begins at Ra cos β = 1708.
  test('a gap convects from just the difference at which Ra cos β passes 1708', () => {
    const tilt = gapTilt(30)
    const onset = gapOnset_K(15, 90000, 0.02, tilt)
    const rayleigh = (difference: number) => rayleighGroup(15, 90000) * difference * 0.02 ** 3
    expect(rayleigh(onset) * Math.cos(Math.PI / 6)).toBeCloseTo(1708, 6)
    expect(hollandsNusselt(rayleigh(onset * 0.999), tilt)).toBe(1)
    expect(hollandsNusselt(rayleigh(onset * 1.02), tilt)).toBeGreaterThan(1)
  })
  // Fourier: k/d × ΔT through still air, whichever side is warmer by little; Hollands 1976 once it convects.
  test('heat through the gap: still air conducts, a hot plate below adds convection, a cold one never does', () => {
    const setting = panelSetting({ ...BARE, tilt_deg: 0, film: FILM })
    const hour = { ...emptyPanelHour(), pressure_Pa: 101325 }
    const still = (plate: number, film_C: number) =>
      (airConductivity_WmK((plate + film_C) / 2) / 0.02) * (plate - film_C)
    expect(gapHeat_Wm2(setting, hour, 0, 0, 20)).toBeCloseTo(still(0, 20), 12)
    expect(gapHeat_Wm2(setting, hour, 0, 10.5, 10)).toBeCloseTo(still(10.5, 10), 12)
    const nusselt = hollandsNusselt(rayleighGroup(20, 101325) * 20 * 0.02 ** 3, setting.gapTilt)
    expect(nusselt).toBeGreaterThan(1.3)
    expect(gapHeat_Wm2(setting, hour, 0, 30, 10)).toBeCloseTo(nusselt * still(30, 10), 9)
    expect(gapHeat_Wm2(setting, hour, 0, 20, 20)).toBe(0)
  })
})

describe('one hour as the panel meets it', () => {
  const { weather, sun } = inventedWeather(3)
  weather.airTemp_C.fill(20)
  weather.dewPoint_C.fill(10)
  weather.pressure_Pa.fill(95000)
  weather.wind_ms.set([2, -1, 0])
  const fill = (value: number) => new Float64Array(3).fill(value)
  const sky = {
    hours: 3,
    total_Wm2: fill(320),
    window_Wm2: fill(70),
    offWindow_Wm2: fill(250),
    measured: new Uint8Array(3),
  }
  const plane = planeIrradiance(sun, weather, 0, 0, 0.2, 0)
  plane.total_Wm2.fill(640)
  const hourOf = (change: Partial<PanelSpec>, hour = 0) => {
    const input = emptyPanelHour()
    readPanelHour(panelSetting({ ...BARE, ...change }), weather, sky, plane, hour, input)
    return input
  }

  test('an open level panel meets the record’s own sky, sun, air and vapour', () => {
    const input = hourOf({ tilt_deg: 0, horizon_deg: 0 })
    expect(input.window_Wm2).toBeCloseTo(70, 9)
    expect(input.offWindow_Wm2).toBeCloseTo(250, 9)
    expect(input).toMatchObject({ air_C: 20, pressure_Pa: 95000, sun_Wm2: 640 })
    expect(input.vapour_Pa).toBe(vapourPressure_Pa(10))
  })
  test('what hides the sky is black at air temperature: an upright panel meets half of each', () => {
    const { skyOnPlane } = panelSetting({ ...BARE, tilt_deg: 90, horizon_deg: 0 })
    expect(skyOnPlane.uniform_frac).toBeCloseTo(0.5, 2)
    const input = hourOf({ tilt_deg: 90, horizon_deg: 0 })
    const blackOff = blackbody_Wm2(20) - valueAt(WINDOW_EMISSION, 20)
    const seen = skyOnPlane.uniform_frac
    expect(input.offWindow_Wm2).toBeCloseTo(seen * 250 + (1 - seen) * blackOff, 9)
    // In the window the low sky is brighter than the mean, so an upright panel meets more than half of it.
    const hidden = (1 - seen) * valueAt(WINDOW_EMISSION, 20)
    expect(input.window_Wm2 - hidden).toBeGreaterThan(seen * 70 * 1.05)
    expect(input.window_Wm2 - hidden).toBeLessThan(seen * 70 * 1.4)
  })
  test('wind carries heat in proportion; a negative reading counts as calm', () => {
    expect(hourOf({}).forced_Wm2K).toBeCloseTo(2 * panelSetting(BARE).windSlope, 12)
    expect(hourOf({}, 1).forced_Wm2K).toBe(0)
    expect(hourOf({}, 2).forced_Wm2K).toBe(0)
  })
  // Chilton & Colburn 1934: evaporation per W/m²K goes as 1/P.
  test('in thin air evaporation goes faster in proportion', () => {
    expect(massTransfer(50000) / massTransfer(100000)).toBeCloseTo(2, 12)
  })
})
