import { describe, expect, test } from 'vitest'
import { inventClimate, stressWeather } from '#model/outdoors/climate'
import { hotSpellWeights, type WeatherRecord } from '#model/outdoors/weather'
import { placeById } from '#inside/model/outdoors/climate/places.ts'
import { skyHours } from '#model/outdoors/sky'
import { mean } from './series.ts'

const NEUTRAL = { wholeYear_K: 0, hotSpell_K: 0, moreHumid_K: 0, windFactor_frac: 1 }
const MODEL = {
  model: 'matsunobuCoimbraPrata',
  altitudeTerm: false,
  useMeasured: false,
  deficitFactor_frac: 1,
} as const
const record = inventClimate(placeById('semi-arid-south'))

/** A record with a made-up measured longwave, 12 W/m² above the model, and every hundredth hour missing. */
function withLongwave(): WeatherRecord {
  const skyLongwave_Wm2 = skyHours(record, MODEL).total_Wm2.map((value, hour) =>
    hour % 100 === 7 ? NaN : value + 12,
  )
  const origin = { kind: 'read', note: 'Column LW.', filledHours: 3 } as const
  return { ...record, skyLongwave_Wm2, origins: { ...record.origins, skyLongwave_Wm2: origin } }
}

test('nothing asked for: the very same record comes back', () => {
  expect(stressWeather(record, NEUTRAL)).toBe(record)
})

test('a warmer year: every hour and every dew point up alike, so that the air stays as damp', () => {
  const warm = stressWeather(record, { ...NEUTRAL, wholeYear_K: 1.5 })
  for (let hour = 0; hour < 8760; hour += 1) {
    expect(warm.airTemp_C[hour]! - record.airTemp_C[hour]!).toBeCloseTo(1.5, 9)
    expect(warm.dewPoint_C[hour]! - record.dewPoint_C[hour]!).toBeCloseTo(1.5, 9)
  }
  expect(warm.basis).toContain('all hours + 1.5 K')
})

describe('a hot year', () => {
  const hot = stressWeather(record, { ...NEUTRAL, hotSpell_K: 4 })
  const added = hot.airTemp_C.map((air, hour) => air - record.airTemp_C[hour]!)

  test('the hottest week gets the full 4 K, four fifths of the year nothing, nothing gets more', () => {
    expect(Math.max(...added)).toBeCloseTo(4, 9)
    expect(added.filter((kelvin) => kelvin > 4 - 1e-9).length / 8760).toBeCloseTo(0.02, 2)
    expect(added.filter((kelvin) => kelvin < 1e-9).length / 8760).toBeCloseTo(0.8, 2)
    expect(Math.min(...added)).toBeGreaterThan(-1e-9)
    const hottest = record.airTemp_C.indexOf(Math.max(...record.airTemp_C))
    expect(added[hottest]).toBeGreaterThan(3)
  })

  test('it comes and goes smoothly: by no more than 0.5 K an hour', () => {
    for (let hour = 1; hour < 8760; hour += 1) {
      expect(Math.abs(added[hour]! - added[hour - 1]!)).toBeLessThan(0.5)
    }
  })

  test('dew point, wind, pressure, sunlight and cloud are untouched; the note says what was done', () => {
    expect(hot.dewPoint_C).toEqual(record.dewPoint_C)
    expect(hot.wind_ms).toEqual(record.wind_ms)
    expect(hot.globalHorizontal_Wm2).toBe(record.globalHorizontal_Wm2)
    expect(hot.cloud_frac).toBe(record.cloud_frac)
    expect(hot.basis).toBe(`${record.basis} Made harder: hottest spells + 4 K.`)
  })
})

test('a humid year: every dew point 3 K up, but never above the air and never down', () => {
  const humid = stressWeather(record, { ...NEUTRAL, moreHumid_K: 3 })
  for (let hour = 0; hour < 8760; hour += 1) {
    const want = Math.min(record.dewPoint_C[hour]! + 3, record.airTemp_C[hour]!)
    expect(humid.dewPoint_C[hour]).toBe(Math.max(want, record.dewPoint_C[hour]!))
  }
  expect(mean(humid.dewPoint_C) - mean(record.dewPoint_C)).toBeGreaterThan(2)
  expect(humid.airTemp_C).toEqual(record.airTemp_C)
})

test('a still-air year: wind × 0.3; all three at once are all noted; the input is not written to', () => {
  const before = record.wind_ms.slice()
  const harder = stressWeather(record, { ...NEUTRAL, hotSpell_K: 2, moreHumid_K: 1, windFactor_frac: 0.3 })
  expect(harder.wind_ms[4000]).toBe(record.wind_ms[4000]! * 0.3)
  expect(harder.basis).toContain(
    'Made harder: hottest spells + 2 K; dew points + 1 K, never above the air; wind × 0.3.',
  )
  expect(record.wind_ms).toEqual(before)
})

describe('measured longwave', () => {
  const measured = withLongwave()
  const harder = stressWeather(measured, { ...NEUTRAL, hotSpell_K: 5, moreHumid_K: 3 })

  test('is scaled as the model changes; missing hours stay missing; the scaling is noted', () => {
    const was = skyHours(measured, MODEL).total_Wm2
    const becomes = skyHours(harder, MODEL).total_Wm2
    for (let hour = 0; hour < 8760; hour += 37) {
      const value = measured.skyLongwave_Wm2![hour]!
      if (Number.isNaN(value)) expect(harder.skyLongwave_Wm2![hour]).toBeNaN()
      else expect(harder.skyLongwave_Wm2![hour]! / value).toBeCloseTo(becomes[hour]! / was[hour]!, 9)
    }
    expect(harder.origins.skyLongwave_Wm2).toEqual({
      kind: 'derived',
      note: 'Column LW.; scaled by the modelled change under hotter, damper air.',
      filledHours: 3,
    })
    expect(harder.basis).toContain('longwave is scaled')
  })

  // physics: damper air sends more, 3 K of dew point about 4–10 W/m² on a clear sky (Matsunobu & Coimbra 2024)
  test('goes up with damp', () => {
    const damp = stressWeather(measured, { ...NEUTRAL, moreHumid_K: 3 })
    const pairs = [...measured.skyLongwave_Wm2!.keys()].filter((hour) => hour % 100 !== 7)
    const rise = mean(pairs.map((hour) => damp.skyLongwave_Wm2![hour]! - measured.skyLongwave_Wm2![hour]!))
    expect(rise).toBeGreaterThan(3)
    expect(rise).toBeLessThan(12)
  })

  test('is left alone when only the wind changes, to rounding', () => {
    const still = stressWeather(measured, { ...NEUTRAL, windFactor_frac: 0.3 })
    expect(still.skyLongwave_Wm2![4000]).toBeCloseTo(measured.skyLongwave_Wm2![4000]!, 9)
  })
})

test('weights need no whole year: a one-day and a constant record get through without NaN', () => {
  expect(hotSpellWeights(new Float64Array(24).fill(20)).every((weight) => weight === 1)).toBe(true)
  expect(hotSpellWeights(Float64Array.of(12))).toEqual(Float64Array.of(1))
  expect(hotSpellWeights(new Float64Array(0))).toEqual(new Float64Array(0))
})

test.each([
  ['hotSpell_K', -6],
  ['moreHumid_K', NaN],
  ['windFactor_frac', -0.5],
  ['hotSpell_K', Infinity],
])('%s of %s is a programmer’s error', (name, value) => {
  expect(() => stressWeather(record, { ...NEUTRAL, [name]: value })).toThrow(RangeError)
})
