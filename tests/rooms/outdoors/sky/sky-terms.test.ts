import { describe, expect, test } from 'vitest'
import { blackbody_Wm2, vapourPressure_Pa } from '#model/outdoors/air'
import { offWindowEmissivity, windowEmissivity } from '#inside/model/outdoors/sky/bands.ts'
import {
  windowPart_Wm2,
  cloudBase_m,
  cloudyMartinBerdahl,
  BLACK,
  coolingPotential_Wm2,
  nightHours,
  type SkyOptions,
  skyHours,
} from '#model/outdoors/sky'
import {
  berdahlMartin1984,
  brutsaert1975,
  clearEmissivity,
  matsunobuCoimbra2024,
  prata1996,
} from '#inside/model/outdoors/sky/clear.ts'
import { SKY_MODELS } from '#inside/model/outdoors/sky/hours.ts'
import { inventedWeather } from '../../invented-weather.ts'

/** 2000 m up, 15 °C, dew point 5 °C, an hour past solar midnight. */
const AIR = {
  air_C: 15,
  dewPoint_C: 5,
  vapour_Pa: vapourPressure_Pa(5),
  pressure_Pa: 80000,
  altitude_m: 2000,
  solarHour_h: 1,
}

describe('terms of the clear-sky formulas', () => {
  // Martin & Berdahl 1984, Solar Energy 33, 321 (from memory): +0.013 cos(2π t/24); exact but for rounding.
  test('the night is brighter than the noon by 0.026, and six o’clock lies between', () => {
    const at = (hour: number) => berdahlMartin1984(10, hour, 100000)
    expect(at(0) - at(12)).toBeCloseTo(0.026, 12)
    expect(at(6)).toBeCloseTo((at(0) + at(12)) / 2, 12)
    expect(at(18)).toBeCloseTo(at(6), 12)
    expect(at(4) - at(6)).toBeCloseTo(0.0065, 12)
  })
  // The same: +0.00012 for each hPa over 1000; exact but for rounding.
  test('thin air is darker: 200 hPa less take 0.024 away', () => {
    expect(berdahlMartin1984(10, 0, 100000) - berdahlMartin1984(10, 0, 80000)).toBeCloseTo(0.024, 12)
  })
  test('every author is asked by name', () => {
    const want = {
      matsunobuCoimbraPrata: 0.5 * (matsunobuCoimbra2024(AIR.vapour_Pa) + prata1996(AIR.vapour_Pa, 15)),
      matsunobuCoimbra2024: matsunobuCoimbra2024(AIR.vapour_Pa),
      berdahlMartin1984: berdahlMartin1984(5, 1, 80000),
      brutsaert1975: brutsaert1975(AIR.vapour_Pa, 15),
      prata1996: prata1996(AIR.vapour_Pa, 15),
    }
    expect(new Set(Object.values(want)).size).toBe(5)
    for (const model of SKY_MODELS) expect(clearEmissivity(model, false, AIR)).toBe(want[model])
  })
  // Matsunobu & Coimbra 2024: 0.15 (exp(−2000/8500) − 1) = −0.03144, printed to four places.
  test('the altitude term darkens Matsunobu & Coimbra’s sky at 2000 m by 0.0314, and nobody else’s', () => {
    for (const model of SKY_MODELS) {
      const change = clearEmissivity(model, true, AIR) - clearEmissivity(model, false, AIR)
      expect(change).toBeCloseTo(model === 'matsunobuCoimbra2024' ? -0.0314 : 0, 4)
    }
  })
  test('an emissivity is held to 0…1', () => {
    expect(clearEmissivity('matsunobuCoimbra2024', false, { ...AIR, vapour_Pa: 7000 })).toBe(1)
    expect(clearEmissivity('berdahlMartin1984', false, { ...AIR, dewPoint_C: -40, pressure_Pa: -1e6 })).toBe(
      0,
    )
  })
})

describe('the window’s part of a sky', () => {
  // Li & Coimbra 2019: a clear sky of the table's own two emissivities falls apart into these again; exact but for rounding.
  test.each([300, 1000, 2200])('%d Pa: a sky of the table’s own bands is split into them', (vapour_Pa) => {
    const [black, window] = [420, 130]
    const inside = windowEmissivity(vapour_Pa) * window
    const total = inside + offWindowEmissivity(vapour_Pa) * (black - window)
    expect(windowPart_Wm2(total, black, window, vapour_Pa)).toBeCloseTo(inside, 9)
  })
  test('over air damper than the table the share of its end holds: the window moves without a jump', () => {
    const parts = Array.from({ length: 60 }, (_, k) => windowPart_Wm2(400, 585, 198, 2000 + 50 * k))
    for (const [k, part] of parts.slice(1).entries()) expect(Math.abs(part - parts[k]!)).toBeLessThan(2)
    expect(parts.at(-1)).toBe(parts[20])
    expect(parts.at(-1)).toBeLessThan(40)
  })
  test('a sky that lacks more than the window holds leaves it dark, not below', () => {
    expect(windowPart_Wm2(100, 400, 130, 300)).toBe(0)
  })
})

const OPTIONS: SkyOptions = {
  model: 'berdahlMartin1984',
  altitudeTerm: false,
  useMeasured: true,
  deficitFactor_frac: 1,
}

/** 48 equal hours, clear, from 0 h universal time on a day of 2023. */
function evenWeather(longitude_deg: number) {
  const { weather } = inventedWeather(48)
  weather.airTemp_C.fill(15)
  weather.dewPoint_C.fill(5)
  weather.pressure_Pa.fill(100000)
  weather.cloud_frac.fill(0)
  return { ...weather, start_utcMs: Date.UTC(2023, 5, 1), site: { ...weather.site, longitude_deg } }
}

describe('hours of a sky', () => {
  // The hour's middle by the sun: universal time + ½ h + longitude/15; an hour term of 0.013 cos(2π t/24) shows it.
  test.each([0, 75, -75, 170])('longitude %d°: the sky is brightest around solar midnight', (longitude) => {
    const sky = skyHours(evenWeather(longitude), OPTIONS)
    for (let hour = 0; hour < 48; hour++) {
      const emissivity = berdahlMartin1984(5, hour + 0.5 + longitude / 15, 100000)
      expect(sky.total_Wm2[hour]! / blackbody_Wm2(15)).toBeCloseTo(emissivity, 9)
    }
  })
  test('half the deficit: half as far from a blackbody; ten times the deficit: nothing comes down, not less', () => {
    const black = blackbody_Wm2(15)
    const lack = (deficitFactor_frac: number) =>
      black - skyHours(evenWeather(0), { ...OPTIONS, deficitFactor_frac }).total_Wm2[0]!
    expect(lack(0.5)).toBeCloseTo(lack(1) / 2, 9)
    expect(lack(10)).toBeCloseTo(black, 9)
  })
  // Martin & Berdahl 1984: an observed overcast at 1250 m, exp(−1250/8200) of the deficit gone; exact but for rounding.
  test('observed cloud counts by the height of its base', () => {
    const weather = evenWeather(0)
    weather.cloud_frac.fill(0.8)
    const read = { ...weather, origins: { cloud_frac: { kind: 'read', note: '', filledHours: 0 } as const } }
    const clear = berdahlMartin1984(5, 0.5, 100000)
    const want = cloudyMartinBerdahl(clear, 0.8, cloudBase_m(15, 5))
    expect(skyHours(read, OPTIONS).total_Wm2[0]! / blackbody_Wm2(15)).toBeCloseTo(want, 9)
    expect(skyHours(weather, OPTIONS).total_Wm2[0]! / blackbody_Wm2(15)).toBeCloseTo(0.8 + 0.2 * clear, 9)
  })
  test('a window never holds more than the whole, even where a reading is absurd', () => {
    const weather = { ...evenWeather(0), skyLongwave_Wm2: new Float64Array(48).fill(-5) }
    const sky = skyHours(weather, OPTIONS)
    expect(sky.window_Wm2[0]).toBe(-5)
    expect(sky.offWindow_Wm2[0]).toBe(0)
  })
})

describe('limits of what a surface loses', () => {
  test('emittances of exactly 0 and 1 are allowed, each refused beyond', () => {
    const weather = evenWeather(0)
    const sky = skyHours(weather, OPTIONS)
    const loses = (windowEmittance_frac: number, offWindowEmittance_frac: number) =>
      coolingPotential_Wm2(weather, sky, { windowEmittance_frac, offWindowEmittance_frac })[0]
    expect(loses(0, 0)).toBe(0)
    expect(loses(1, 1)).toBe(coolingPotential_Wm2(weather, sky, BLACK)[0])
    for (const [window, rest] of [
      [-0.01, 0.5],
      [1.01, 0.5],
      [0.5, -0.01],
      [0.5, 1.01],
      [NaN, 0.5],
    ] as const)
      expect(() => loses(window, rest)).toThrow(RangeError)
  })
  // Sunset to the eye: 34′ of refraction and 16′ of half the disc, −0.833° (common practice, no source).
  test('a sun at −0.833° still sets; a hair below is night', () => {
    expect([...nightHours({ altitude_deg: Float64Array.of(-0.833, -0.834, 0, -30) })]).toEqual([0, 1, 0, 1])
  })
})
