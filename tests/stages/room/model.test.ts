import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { roomModel } from '#model/room/model.ts'
import type { RoomModel, RoomSpec } from '#model/room/spec.ts'
import { madeSky, madeWeather, ROOM, sunOf, type Made } from './made-weather.ts'

function modelOf(spec: RoomSpec, hours = 48, made: Made = {}, skyBelow_K = 0): RoomModel {
  const weather = madeWeather(hours, made)
  return roomModel(weather, sunOf(weather), madeSky(weather, skyBelow_K), spec)
}

/** Temperatures of air, fabric and slab that stand still under the drives of one hour: Cramer's rule on the contract's equations. */
function standing_C(room: RoomModel, hour: number, extraAir_W = 0): [number, number, number] {
  const { airFabric_WK: af, airSlab_WK: as } = room
  const fabric = af + room.fabricLoss_WK[hour]!
  const slab = as + room.slabLoss_WK
  const drive = room.airDrive_W[hour]! + extraAir_W
  const [df, ds] = [room.fabricDrive_W[hour]!, room.slabDrive_W[hour]!]
  const air =
    (drive + (af * df) / fabric + (as * ds) / slab) /
    (af + as + room.airLoss_WK[hour]! - (af * af) / fabric - (as * as) / slab)
  return [air, (df + af * air) / fabric, (ds + as * air) / slab]
}

describe('a room left in still, dark weather under a sky as warm as the air', () => {
  it('is exactly as warm as outdoors: air, fabric and slab (second law)', () => {
    for (const temp of standing_C(modelOf(ROOM), 5)) expect(temp).toBeCloseTo(20, 9)
  })

  it('gains raise it by gains over the loss of the whole room; U-values with films of ISO 6946, ground of ISO 13370, 1.5 % for the wind’s film', () => {
    // Films outside 0.04 m²K/W ask for 25 W/m²K: 4 + 4 v + 4 × 0.9 σ 293³ = 25 at v = 3.97 m/s.
    const eaves = (270 / 10) ** 0.14 * (2.5 / 270) ** 0.14
    const room = modelOf(ROOM, 48, { wind_ms: () => (25 - 4 - 0.9 * 5.71) / 4 / eaves })
    const byHand_WK =
      0.35 * 20 + // roof
      0.45 * (45 - 2) + // walls
      2.8 * 2 + // window
      (1.2042 * 50 * 1006) / 3600 + // one air change of 50 m³ at 20 °C
      groundByHand_WK()
    const [air] = standing_C(room, 5, 300)
    expect(Math.abs(300 / (air - 20) / byHand_WK - 1)).toBeLessThan(0.015)
  })

  it('one air change of 50 m³ is 16.77 W/K (ρ c n V of a handbook, 0.5 % for its air)', () => {
    const room = modelOf({ ...ROOM, windowFront_m2: 0 })
    expect(Math.abs(room.airLoss_WK[0]! / 16.77 - 1)).toBeLessThan(0.005)
  })

  it('opened windows add six air changes, and nothing when they stay shut', () => {
    const open = modelOf({ ...ROOM, nightVent: true, windowFront_m2: 0 })
    expect(open.nightVent_WK).toBeCloseTo(6 * open.airLoss_WK[0]!, 6)
    expect(modelOf(ROOM).nightVent_WK).toBe(0)
  })
})

/** ISO 13370 by hand for 5 × 4 m, w 0.15, λ 2, R_f 0.1/1.35: A U. */
function groundByHand_WK(): number {
  const width = 20 / 9
  const thick = 0.15 + 2 * (0.17 + 0.1 / 1.35 + 0.04)
  return (20 * 4 * Math.log((Math.PI * width) / thick + 1)) / (Math.PI * width + thick)
}

describe('sky and sun on the shell', () => {
  it('a colder sky cools the room, most where the roof is bare sheet', () => {
    const fall = (spec: RoomSpec) => 20 - standing_C(modelOf(spec, 48, {}, 20), 5)[0]
    expect(fall(ROOM)).toBeGreaterThan(0)
    expect(fall({ ...ROOM, roofU_Wm2K: 7 })).toBeGreaterThan(3 * fall(ROOM))
    expect(fall({ ...ROOM, roofEmittance_frac: 0.25 })).toBeLessThan(fall(ROOM))
  })

  it('a white roof takes in less sun than a dark one: U/h_e of the difference by hand, 10 % for T⁴ kept against a line', () => {
    const noon = { diffuse_Wm2: (hour: number) => (hour % 24 > 6 && hour % 24 < 18 ? 400 : 0) }
    const drive = (roofReflectance_frac: number) =>
      modelOf({ ...ROOM, roofReflectance_frac }, 48, noon).fabricDrive_W[12]!
    expect(drive(0.8)).toBeLessThan(drive(0.3))
    // 0.5 of 400 W/m² over h_e ≈ 4 + 5.1 (no wind) through U′ = 1/(1/0.35 − 0.14 + 1/h_e) for 20 m².
    const film = 4 + 0.9 * 4 * 5.670374419e-8 * 293.15 ** 3
    const byHand = (20 * 0.5 * 400) / film / (1 / 0.35 - 0.14 + 1 / film)
    expect(Math.abs((drive(0.3) - drive(0.8)) / byHand - 1)).toBeLessThan(0.1)
  })

  it('irradiance through glass: 2 m² × 0.7 × 0.88 of diffuse on an upright plane (½ sky + ½ ground × 0.2)', () => {
    const room = modelOf(ROOM, 48, { diffuse_Wm2: (hour) => (hour % 24 > 6 && hour % 24 < 18 ? 300 : 0) })
    expect(room.sunAndGains.sun_W[12]!).toBeCloseTo(2 * 0.7 * 0.88 * (150 + 30), 6)
    expect(room.sunAndGains.sun_W[0]!).toBe(0)
  })

  it('shading and gain multiply it; a wall without a window lets none in', () => {
    const sun = { diffuse_Wm2: () => 300, direct_Wm2: () => 0 }
    const full = modelOf(ROOM, 48, sun).sunAndGains.sun_W[12]!
    expect(modelOf({ ...ROOM, shading_frac: 0.25 }, 48, sun).sunAndGains.sun_W[12]!).toBeCloseTo(full / 4, 9)
    expect(modelOf({ ...ROOM, windowFront_m2: 0 }, 48, sun).sunAndGains.sun_W[12]!).toBe(0)
  })

  it('the east window has its sun in the morning: right of a front that faces south, seen from outside', () => {
    const clear = { direct_Wm2: () => 700, diffuse_Wm2: () => 100, start_utcMs: Date.UTC(2023, 5, 21) }
    const east = modelOf({ ...ROOM, windowFront_m2: 0, windowRight_m2: 2 }, 24, clear).sunAndGains.sun_W
    const west = modelOf({ ...ROOM, windowFront_m2: 0, windowLeft_m2: 2 }, 24, clear).sunAndGains.sun_W
    expect(east[8]!).toBeGreaterThan(3 * east[16]!)
    expect(west[16]!).toBeGreaterThan(3 * west[8]!)
  })
})

describe('gains by the clock', () => {
  const gains_W = Array.from({ length: 24 }, (_, hour) => 100 + hour)
  it('follow local standard time wherever the record begins', () => {
    const atNoon = modelOf({ ...ROOM, gains_W }, 30, { start_utcMs: Date.UTC(2023, 6, 1, 12) })
    expect(Array.from(atNoon.sunAndGains.gains_W.subarray(0, 13))).toEqual([...gains_W.slice(12), 100])
    const east = modelOf({ ...ROOM, gains_W }, 30, {
      start_utcMs: Date.UTC(2023, 6, 1, 12),
      utcOffset_h: 5.5,
    })
    expect(east.sunAndGains.gains_W[0]).toBe(118)
    const before1970 = modelOf({ ...ROOM, gains_W }, 2, {
      start_utcMs: Date.UTC(1960, 0, 1, 3),
      utcOffset_h: -5,
    })
    expect(before1970.sunAndGains.gains_W[0]).toBe(122)
  })

  it('reach air, fabric and slab without loss: the drives grow by exactly gains and sun (200 random rooms)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 2000, noNaN: true }),
        fc.double({ min: 0, max: 4, noNaN: true }),
        fc.double({ min: 0, max: 900, noNaN: true }),
        (gain_W, windowFront_m2, diffuse) => {
          const made = { diffuse_Wm2: () => diffuse }
          const spec = { ...ROOM, windowFront_m2, gains_W: Array<number>(24).fill(gain_W) }
          const full = modelOf(spec, 24, made)
          const bare = modelOf({ ...spec, windowGain_frac: 0, gains_W: ROOM.gains_W }, 24, made)
          const drives = (room: RoomModel) =>
            room.airDrive_W[12]! + room.fabricDrive_W[12]! + room.slabDrive_W[12]!
          const { sun_W, gains_W: inside_W, toSlab_W } = full.sunAndGains
          const inside = sun_W[12]! + inside_W[12]!
          return (
            Math.abs(drives(full) - drives(bare) - inside) < 1e-8 * (1 + inside) &&
            Math.abs(full.slabDrive_W[12]! - bare.slabDrive_W[12]! - toSlab_W[12]!) < 1e-8 * (1 + inside)
          )
        },
      ),
      { numRuns: 200, seed: 3 },
    )
  })

  it('40 % of internal gains and 10 % of sunlight are the air’s at once (ISO 52016-1 split)', () => {
    const room = modelOf({ ...ROOM, windowFront_m2: 0, gains_W: Array<number>(24).fill(100) })
    expect(room.airDrive_W[3]! - room.airLoss_WK[3]! * 20).toBeCloseTo(40, 9)
  })
})

describe('shape of the model', () => {
  it('capacities are the fields times their areas', () => {
    const room = modelOf(ROOM)
    expect(room.airCapacity_JK).toBe(15000 * 20)
    expect(room.fabricCapacity_JK).toBeCloseTo(17000 * (20 + 45 - 2), 6)
    expect(room.slabCapacity_JK).toBeCloseTo(20 * 0.1 * 2000 * 1000, 6)
  })

  it('the slab node stands behind 1/h + L/3k: 20 m²/(0.17 + 0.1/4.05)', () => {
    expect(modelOf(ROOM).airSlab_WK).toBeCloseTo(20 / (0.17 + 0.1 / 4.05), 9)
  })

  it('operative weights add to 1, half air and half surfaces with a thin floor', () => {
    for (const slabThickness_m of [0.001, 0.1, 0.5]) {
      const weights = modelOf({ ...ROOM, slabThickness_m }).operativeWeights
      expect(weights[0] + weights[1] + weights[2]).toBeCloseTo(1, 12)
    }
    expect(modelOf({ ...ROOM, slabThickness_m: 0.001 }).operativeWeights[0]).toBeCloseTo(0.5, 2)
  })

  it('night is when the sun is down: 9 of 24 hours at 40° N on 21 June (sunset to sunrise is 9.0 h)', () => {
    const room = modelOf(ROOM, 24, { start_utcMs: Date.UTC(2023, 5, 21) })
    expect(room.night.reduce((sum, value) => sum + value, 0)).toBe(9)
  })

  it('any record length works: 1 h, a 100 h logger file, a leap year', () => {
    for (const hours of [1, 100, 8784]) {
      const room = modelOf(ROOM, hours, { air_C: (h) => 20 + 5 * Math.sin(h / 4) })
      for (const value of Object.values(room))
        if (value instanceof Float64Array) {
          expect(value.length).toBe(hours)
          expect(value.every(Number.isFinite)).toBe(true)
        }
    }
  })
})

describe('refusals', () => {
  it('a window larger than its wall is a problem for people, with the field', () => {
    expect(() => modelOf({ ...ROOM, windowLeft_m2: 10.1 })).toThrow(
      /room\.windowLeft_m2.*10\.1 m².*only 10 m²/,
    )
  })
  it('a number out of range is named', () => {
    expect(() => modelOf({ ...ROOM, slabThickness_m: 0 })).toThrow(/slabThickness_m/)
    expect(() => modelOf({ ...ROOM, gains_W: [1, 2] })).toThrow(/24/)
  })
  it('weather and sun of unequal length do not pass', () => {
    const weather = madeWeather(24)
    expect(() => roomModel(weather, sunOf(madeWeather(23)), madeSky(weather), ROOM)).toThrow(/24, 23, 24/)
  })
})
