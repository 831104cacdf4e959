import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { constructionOf } from '#model/building/construction'
import { roomNetwork, absorbed_Wm2, type RoomNetwork, type RoomSpec } from '#model/building/room'
import { sunShares } from '#inside/model/building/room/sun-inside.ts'
import { restingRoom } from '#inside/model/building/year/room-start.ts'
import { madeSky, madeWeather, ROOM, sunOf, type Made } from './made-weather.ts'

function modelOf(spec: RoomSpec, hours = 48, made: Made = {}, skyBelow_K = 0): RoomNetwork {
  const weather = madeWeather(hours, made)
  return roomNetwork(weather, sunOf(weather), madeSky(weather, skyBelow_K), spec)
}

/** Air, and the inner faces of all groups, of the room at rest under one hour. */
function resting_C(room: RoomNetwork, hour: number): number[] {
  const { air_C, masses } = restingRoom(room, [hour])
  let begin = 0
  const faces = room.groups.map(({ modes }) => {
    const face = modes.inner.reduce((sum, b, k) => sum + b * masses[begin + k]!, 0)
    begin += modes.count
    return face
  })
  return [air_C, ...faces]
}

describe('a room left in still, dark weather under a sky as warm as the air', () => {
  it('is exactly as warm as outdoors: air and every face (second law)', () => {
    for (const temp of resting_C(modelOf(ROOM), 5)) expect(temp).toBeCloseTo(20, 8)
  })

  it('gains raise it by gains over the loss of the whole room; U-values of ISO 6946, ground of ISO 13370, 4 % for inner films by ISO 52016 and the wind’s film', () => {
    // Films outside 0.04 m²K/W ask for 25 W/m²K: 4 + 4 v + 4 × 0.9 σ 293³ = 25 at v = 3.97 m/s.
    const eaves = (270 / 10) ** 0.14 * (2.5 / 270) ** 0.14
    const spec = { ...ROOM, gains_W: Array<number>(24).fill(300) }
    const room = modelOf(spec, 48, { wind_ms: () => (25 - 4 - 0.9 * 5.71) / 4 / eaves })
    const byHand_WK =
      0.35 * 20 + // roof
      0.45 * (45 - 2) + // walls
      2.8 * 2 + // window
      (1.2042 * 50 * 1006) / 3600 + // one air change of 50 m³ at 20 °C
      groundByHand_WK()
    const { air_C } = restingRoom(room, [5])
    expect(Math.abs(300 / (air_C - 20) / byHand_WK - 1)).toBeLessThan(0.04)
  })

  it('one air change of 50 m³ is 16.77 W/K (ρ c n V of a handbook, 0.5 % for its air)', () => {
    const room = modelOf({ ...ROOM, windowFront_m2: 0 })
    expect(Math.abs(room.ventilation_WK[0]! / 16.77 - 1)).toBeLessThan(0.005)
  })

  it('opened windows add six air changes, and nothing when they stay shut', () => {
    const open = modelOf({ ...ROOM, nightVent: true, windowFront_m2: 0 })
    expect(open.nightVent_WK).toBeCloseTo(6 * open.ventilation_WK[0]!, 6)
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
    const fall = (spec: RoomSpec) => 20 - resting_C(modelOf(spec, 48, {}, 20), 5)[0]!
    expect(fall(ROOM)).toBeGreaterThan(0)
    expect(
      fall({ ...ROOM, roof: constructionOf({ U_Wm2K: 5, mass_kgm2: 6, place: 'through' }) }),
    ).toBeGreaterThan(2 * fall(ROOM))
    expect(fall({ ...ROOM, roofEmittance_frac: 0.25 })).toBeLessThan(fall(ROOM))
  })

  it('a white roof takes in less sun than a dark one: sol-air rise α I/h_e by hand with h_r at the mean surface, 3 %', () => {
    const noon = { diffuse_Wm2: (hour: number) => (hour % 24 > 6 && hour % 24 < 18 ? 400 : 0) }
    const solAir_C = (roofReflectance_frac: number) =>
      modelOf({ ...ROOM, roofReflectance_frac }, 48, noon).groups.find(({ name }) => name === 'roof')!
        .outside!.temp_C[12]!
    // 0.5 of 400 W/m² over h_e (no wind); the two roofs are about 28 and 9 K over the air, 18 K in the mean.
    const film = 4 + 0.9 * 4 * 5.670374419e-8 * (293.15 + 18) ** 3
    expect(Math.abs((solAir_C(0.3) - solAir_C(0.8)) / ((0.5 * 400) / film) - 1)).toBeLessThan(0.03)
  })

  it('irradiance through glass: 2 m² × 0.7 × 0.891 of diffuse on an upright plane (½ sky + ½ ground × 0.2)', () => {
    const room = modelOf(ROOM, 48, { diffuse_Wm2: (hour) => (hour % 24 > 6 && hour % 24 < 18 ? 300 : 0) })
    expect(room.sun_W[12]!).toBeCloseTo(2 * 0.7 * 0.891 * (150 + 30), 6)
    expect(room.sun_W[0]!).toBe(0)
  })

  it('shading and gain multiply it; a wall without a window lets none in', () => {
    const sun = { diffuse_Wm2: () => 300, direct_Wm2: () => 0 }
    const full = modelOf(ROOM, 48, sun).sun_W[12]!
    expect(modelOf({ ...ROOM, shading_frac: 0.25 }, 48, sun).sun_W[12]!).toBeCloseTo(full / 4, 9)
    expect(modelOf({ ...ROOM, windowFront_m2: 0 }, 48, sun).sun_W[12]!).toBe(0)
  })

  it('the east window has its sun in the morning: right of a front that faces south, seen from outside', () => {
    const clear = { direct_Wm2: () => 700, diffuse_Wm2: () => 100, start_utcMs: Date.UTC(2023, 5, 21) }
    const east = modelOf({ ...ROOM, windowFront_m2: 0, windowRight_m2: 2 }, 24, clear).sun_W
    const west = modelOf({ ...ROOM, windowFront_m2: 0, windowLeft_m2: 2 }, 24, clear).sun_W
    expect(east[8]!).toBeGreaterThan(3 * east[16]!)
    expect(west[16]!).toBeGreaterThan(3 * west[8]!)
  })
})

describe('gains by the clock', () => {
  const gains_W = Array.from({ length: 24 }, (_, hour) => 100 + hour)
  it('follow local standard time wherever the record begins', () => {
    const atNoon = modelOf({ ...ROOM, gains_W }, 30, { start_utcMs: Date.UTC(2023, 6, 1, 12) })
    expect(Array.from(atNoon.gains_W.subarray(0, 13))).toEqual([...gains_W.slice(12), 100])
    const east = modelOf({ ...ROOM, gains_W }, 30, {
      start_utcMs: Date.UTC(2023, 6, 1, 12),
      utcOffset_h: 5.5,
    })
    expect(east.gains_W[0]).toBe(118)
    const before1970 = modelOf({ ...ROOM, gains_W }, 2, {
      start_utcMs: Date.UTC(1960, 0, 1, 3),
      utcOffset_h: -5,
    })
    expect(before1970.gains_W[0]).toBe(122)
  })

  it('all sunlight and gains end in air and faces, but for what the glass lets out again (200 random rooms)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 2000, noNaN: true }),
        fc.double({ min: 0.1, max: 4, noNaN: true }),
        fc.double({ min: 0, max: 900, noNaN: true }),
        (gain_W, windowFront_m2, diffuse) => {
          const spec = { ...ROOM, windowFront_m2, gains_W: Array<number>(24).fill(gain_W) }
          const room = modelOf(spec, 24, { diffuse_Wm2: () => diffuse })
          const onFaces_W = room.groups.reduce(
            (sum, group) => sum + group.area_m2 * absorbed_Wm2(room, group, 12),
            room.windows!.area_m2 * absorbed_Wm2(room, room.windows!, 12, false),
          )
          const out_W = room.sun_W[12]! * room.windows!.sunShare
          return (
            Math.abs(0.4 * gain_W + onFaces_W + out_W - gain_W - room.sun_W[12]!) <
            1e-8 * (1 + gain_W + diffuse)
          )
        },
      ),
      { numRuns: 200, seed: 3 },
    )
  })

  it('the shares of sunlight of a reference room: floor 0.4492, wall faces 0.2487, roof 0.1244, out again 0.0177 (second implementation, printed digits)', () => {
    const shares = sunShares([
      { area_m2: 48, absorptance_frac: 0.5, floor: false },
      { area_m2: 24, absorptance_frac: 0.5, floor: false },
      { area_m2: 24, absorptance_frac: 0.6, floor: true },
      { area_m2: 30, absorptance_frac: 0.5, floor: false },
      { area_m2: 4, absorptance_frac: 0.6 * 0.891, floor: false },
    ])
    expect(shares.map((share) => Number(share.toFixed(4)))).toEqual([0.2487, 0.1244, 0.4492, 0.1555, 0.0222])
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12)
  })
})

describe('shape of the model', () => {
  it('contents are air and light things, and furniture: together the field times the floor', () => {
    const room = modelOf(ROOM)
    expect(room.airCapacity_JK).toBeCloseTo(2 * 1207 * 50, 6)
    const furniture = room.groups.find(({ name }) => name === 'contents')!
    const held = furniture.modes.held.reduce((sum, e) => sum + e * e, 0) * furniture.area_m2
    expect(room.airCapacity_JK + held).toBeCloseTo(15000 * 20, 3)
  })

  it('areas: walls without their window, roof and floor, shares of faces add to 1', () => {
    const room = modelOf(ROOM)
    const area = (name: string) => room.groups.find((group) => group.name === name)!.area_m2
    expect([area('wall'), area('roof'), area('floor')]).toEqual([43, 20, 20])
    const all = room.groups.reduce((sum, { areaShare }) => sum + areaShare, room.windows!.areaShare)
    expect(all).toBeCloseTo(1, 12)
  })

  it('night is when the sun is down: 9 of 24 hours at 40° N on 21 June (sunset to sunrise is 9.0 h)', () => {
    const room = modelOf(ROOM, 24, { start_utcMs: Date.UTC(2023, 5, 21) })
    expect(room.ventAllowed.reduce((sum, value) => sum + value, 0)).toBe(9)
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
    expect(() => roomNetwork(weather, sunOf(madeWeather(23)), madeSky(weather), ROOM)).toThrow(/24, 23, 24/)
  })
})
