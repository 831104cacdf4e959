import { describe, expect, test } from 'vitest'
import { roomNetwork, type RoomNetwork, type RoomSpec } from '#model/building/room'
import { restingRoom } from '#inside/model/building/year/room-start.ts'
import { madeSky, madeWeather, ROOM, sunOf } from './made-weather.ts'

/* Still, dark, 20 °C, sky as warm as the air: only what is asked about acts. */
const weather = madeWeather(48)
const modelOf = (spec: RoomSpec): RoomNetwork => roomNetwork(weather, sunOf(weather), madeSky(weather), spec)

const GAINS_W = 500
/** Heat that leaves for each kelvin over outdoors, W/K, of the room at rest. */
function loss_WK(spec: Partial<RoomSpec>): number {
  const room = modelOf({ ...ROOM, ...spec, gains_W: Array<number>(24).fill(GAINS_W) })
  return GAINS_W / (restingRoom(room, [5]).air_C - 20)
}
const areaOf = (room: RoomNetwork, name: string) =>
  room.groups.find((group) => group.name === name)?.area_m2 ?? 0

describe('what lies behind a wall', () => {
  const BACK: Partial<RoomSpec> = { behindBack: 'unheated' }

  test('ISO 13789: an unheated space takes the share b of the wall’s loss', () => {
    const open = loss_WK({ behindBack: 'sameRoom' })
    const half = loss_WK({ ...BACK, unheatedShare_frac: 0.5 }) - open
    const whole = loss_WK({ ...BACK, unheatedShare_frac: 1 }) - open
    // U 0.45 of 12.5 m² with an inner film on the far side: 1/(1/0.45 − 0.04 + 0.13), 4 % for the films inside.
    expect(Math.abs(whole / (12.5 / (1 / 0.45 - 0.04 + 0.13)) - 1)).toBeLessThan(0.06)
    expect(Math.abs(half / whole - 0.5)).toBeLessThan(0.02)
  })

  test('the wall keeps its whole mass, as a part that leads outdoors and a part that leads nowhere', () => {
    const room = modelOf({ ...ROOM, ...BACK, unheatedShare_frac: 0.3 })
    expect(areaOf(room, 'adjoining')).toBeCloseTo(0.7 * 12.5, 9)
    expect(areaOf(room, 'wall') + areaOf(room, 'adjoining')).toBeCloseTo(areaOf(modelOf(ROOM), 'wall'), 9)
  })

  test('a room among rooms that are kept the same has no wall outdoors, and still works', () => {
    const inner = {
      behindFront: 'sameRoom',
      behindRight: 'sameRoom',
      behindBack: 'sameRoom',
      behindLeft: 'sameRoom',
    } as const
    const room = modelOf({ ...ROOM, ...inner, windowFront_m2: 0 })
    expect(areaOf(room, 'wall')).toBe(0)
    expect(restingRoom(room, [5]).air_C).toBeCloseTo(20, 6)
  })

  test('a window in a wall that is not outdoors is asked about, by its field', () => {
    expect(() => modelOf({ ...ROOM, behindFront: 'unheated' })).toThrow(
      expect.objectContaining({ problems: [expect.objectContaining({ code: 'window-in-adjoining-wall' })] }),
    )
  })
})

describe('inside and below', () => {
  test('inner walls hold heat on both faces: m c ΔT of their mass', () => {
    const room = modelOf({ ...ROOM, partition_m2: 10, partitionMass_kgm2: 150 })
    const group = room.groups.find(({ name }) => name === 'partition')!
    const held_JK = group.area_m2 * group.modes.held.reduce((sum, e) => sum + e * e, 0)
    expect(held_JK / (10 * 150 * 1000)).toBeCloseTo(1, 9)
    // They take radiant gains from other faces, but lose nothing.
    expect(Math.abs(loss_WK({ partition_m2: 10 }) / loss_WK({}) - 1)).toBeLessThan(0.01)
  })

  test('a raised floor loses U A to the air below it: 1/(0.17 + R + film), 4 % for the films inside', () => {
    const insulated = { floorKind: 'raised', slabInsulation_m2KW: 2 } as const
    const bare = loss_WK({ ...insulated, slabInsulation_m2KW: 10 })
    const film = 4 + 0.9 * 5.71
    const byHand = (r_m2KW: number) => 20 / (0.13 + 0.1 / 1.35 + r_m2KW + 1 / film)
    expect(Math.abs((loss_WK(insulated) - bare) / (byHand(2) - byHand(10)) - 1)).toBeLessThan(0.04)
  })
})

describe('hours in which windows may open', () => {
  const hoursOf = (spec: Partial<RoomSpec>) => {
    const { ventAllowed } = modelOf({ ...ROOM, ...spec })
    return Array.from(ventAllowed.subarray(0, 24).keys()).filter((h) => ventAllowed[h] === 1)
  }
  test('by the clock, over midnight and within a day; from and to alike: never', () => {
    expect(hoursOf({ ventHours: 'clock', ventFrom_h: 21, ventTo_h: 3 })).toEqual([0, 1, 2, 21, 22, 23])
    expect(hoursOf({ ventHours: 'clock', ventFrom_h: 9, ventTo_h: 12 })).toEqual([9, 10, 11])
    expect(hoursOf({ ventHours: 'clock', ventFrom_h: 9, ventTo_h: 9 })).toEqual([])
  })
})
