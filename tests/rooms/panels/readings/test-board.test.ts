import { describe, expect, it } from 'vitest'
import {
  DEMO_READINGS,
  estimateCoatings,
  USUAL_BOARD,
  boardHourOf,
  predictBoard,
  type BoardHour,
} from '#model/panels/readings'
import { POLYETHYLENE } from './field-notes.ts'

const coating = (name: string, reflectance: number, emittance: number) => ({
  name,
  optics: {
    solarReflectance_frac: reflectance,
    windowEmittance_frac: emittance,
    offWindowEmittance_frac: emittance,
  },
  reflectanceHalfWidth_frac: 0.02,
  emittanceHalfWidth_frac: 0.03,
})
const HOUR: BoardHour = {
  airTemp_C: 29,
  dewPoint_C: 8,
  wind_ms: 1.5,
  sun_Wm2: 900,
  shade_Wm2: 60,
  skyLongwave_Wm2: null,
  cloud_frac: 0,
}
const BOARD = { ...USUAL_BOARD, film: POLYETHYLENE }
const COOL = coating('cool', 0.95, 0.94)
const WHITE = coating('white', 0.8, 0.9)

describe('test board', () => {
  const rows = predictBoard(BOARD, [COOL, WHITE], HOUR)
  const at = (name: string, cover: string, light: string) =>
    rows.find((r) => r.coating === name && r.cover === cover && r.light === light)!

  it('has every coating under every cover in every light, each inside its range', () => {
    expect(rows).toHaveLength(12)
    for (const r of rows) {
      expect(r.low_C).toBeLessThanOrEqual(r.surface_C)
      expect(r.high_C).toBeGreaterThanOrEqual(r.surface_C)
    }
  })

  it('at night two bare paints sit within about a kelvin of each other, well below air (common practice, no source)', () => {
    const [cool, white] = [at('cool', 'bare', 'night'), at('white', 'bare', 'night')]
    expect(Math.abs(cool.surface_C - white.surface_C)).toBeLessThan(1)
    expect(cool.againstAir_K).toBeLessThan(-5)
  })

  it('in the sun ordinary white is up to 11 K warmer than a cooling paint (common practice, no source; 6.5–11 K allowed: 0.15 of 900 W/m² over a slope of 12–20 W/m²K)', () => {
    const gap = at('white', 'bare', 'sun').surface_C - at('cool', 'bare', 'sun').surface_C
    expect(gap).toBeGreaterThan(6.5)
    expect(gap).toBeLessThan(11)
  })

  it('a black sky at air temperature at night leaves the board at air temperature (limit; 0.001 K: the table of directions stops at emissivity 0.995)', () => {
    const black = 5.670374419e-8 * (29 + 273.15) ** 4
    const [row] = predictBoard(USUAL_BOARD, [COOL], { ...HOUR, skyLongwave_Wm2: black }).filter(
      (r) => r.light === 'night',
    )
    expect(Math.abs(row!.againstAir_K)).toBeLessThan(1e-3)
  })

  it('says when dew will hide the paint', () => {
    const humid = predictBoard(USUAL_BOARD, [COOL], { ...HOUR, airTemp_C: 20, dewPoint_C: 18 })
    expect(humid.find((r) => r.light === 'night')!.wet).toBe(true)
    expect(rows.some((r) => r.wet)).toBe(false)
  })

  it('takes an hour out of a weather record and refuses one outside it', () => {
    const one = (value: number) => Float64Array.of(value)
    const record = {
      site: { name: 'x', latitude_deg: 0, longitude_deg: 0, altitude_m: 0, utcOffset_h: 0 },
      start_utcMs: 0,
      hours: 1,
      radiationMiddle_h: 0.5,
      airTemp_C: one(25),
      dewPoint_C: one(10),
      pressure_Pa: one(101325),
      wind_ms: one(4),
      globalHorizontal_Wm2: one(800),
      directNormal_Wm2: one(700),
      diffuseHorizontal_Wm2: one(90),
      cloud_frac: one(0.1),
      skyLongwave_Wm2: one(NaN),
      origins: {},
      basis: 'test',
    }
    expect(boardHourOf(record, 0, 0.5)).toEqual({
      airTemp_C: 25,
      dewPoint_C: 10,
      wind_ms: 2,
      sun_Wm2: 800,
      shade_Wm2: 90,
      skyLongwave_Wm2: null,
      cloud_frac: 0.1,
    })
    expect(() => boardHourOf(record, 1, 1)).toThrow(RangeError)
  })
})

describe('example field notes', () => {
  it('say that they are invented, and give back the optics they were made from within their intervals', () => {
    expect(DEMO_READINGS.basis).toMatch(/invented/i)
    const estimate = estimateCoatings(DEMO_READINGS)
    // Their noise drives Pot A's emittance to 1: the notes must say that no surface reaches it.
    expect(estimate.warnings.map((w) => w.code)).toEqual(['bench-at-limit'])
    const truths = [
      [0.935, 0.93],
      [0.87, 0.9],
      [0.8, 0.9],
    ] as const
    truths.forEach(([reflectance, emittance], i) => {
      const s = estimate.samples[i]!
      expect(reflectance).toBeGreaterThan(s.solarReflectance.low)
      expect(reflectance).toBeLessThan(s.solarReflectance.high)
      expect(emittance).toBeGreaterThan(s.emittance.low)
      expect(emittance).toBeLessThan(s.emittance.high)
    })
  })
})
