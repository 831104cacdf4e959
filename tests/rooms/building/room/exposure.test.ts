import { describe, expect, it } from 'vitest'
import { exposure, type Recall } from '#inside/model/building/room/exposure.ts'
import { roomGeometry } from '#inside/model/building/room/geometry.ts'
import { roomNetwork, type RoomNetwork, type RoomSpec } from '#model/building/room'
import { ROOF_BUILDS, WALL_BUILDS } from '#model/building/construction'
import { Memory } from '#studies/memory.ts'
import { madeSky, madeWeather, ROOM, sunOf } from './made-weather.ts'

const weather = madeWeather(48, { direct_Wm2: (h) => 20 * (h % 24), diffuse_Wm2: (h) => 5 * (h % 24) })
const sun = sunOf(weather)
const sky = madeSky(weather, 10)
const windowed: RoomSpec = { ...ROOM, windowRight_m2: 1 }

/** The parts, without the function that works out rows. */
const plain = ({ rowsOf, ...parts }: RoomNetwork) => ({ ...parts, rows: rowsOf(900).rows })

/** What is made afresh, by name, as the descriptions are gone through one after another. */
function madeFor(specs: readonly RoomSpec[]): string[] {
  const memory = new Memory()
  const made: string[] = []
  const recall: Recall = (part, key, make) =>
    memory.recall(part, key, () => {
      made.push(part)
      return make()
    })
  for (const spec of specs) exposure(weather, sun, sky, spec, roomGeometry(spec), recall)
  return made
}

describe('what the weather does to a room', () => {
  it('is not worked out again for U-values and masses, and for a finish only where it is', () => {
    const first = madeFor([windowed]).length
    const heavier = {
      ...windowed,
      roof: ROOF_BUILDS.concrete.layers,
      wall: WALL_BUILDS.brick.layers,
      windowU_Wm2K: 1,
    }
    expect(madeFor([windowed, heavier])).toHaveLength(first)
    expect(madeFor([windowed, { ...windowed, roofReflectance_frac: 0.9 }]).slice(first)).toEqual([
      'outside of roof',
    ])
    expect(madeFor([windowed, { ...windowed, moisture_kgh: 0.3 }]).slice(first)).toEqual(['air change'])
    expect(madeFor([windowed, { ...windowed, shading_frac: 0.4 }]).slice(first)).toEqual(['window sun'])
  })

  it('is kept under as many names when the room is turned a hundred times', () => {
    const turned = Array.from({ length: 100 }, (_, i) => ({ ...windowed, azimuth_deg: 1 + i }))
    expect(new Set(madeFor(turned)).size).toBe(new Set(madeFor([windowed])).size)
  })

  it('gives the same room, recalled or not', () => {
    const memory = new Memory()
    const specs = [windowed, { ...windowed, wallReflectance_frac: 0.8, azimuth_deg: 200 }, windowed]
    for (const spec of specs)
      expect(plain(roomNetwork(weather, sun, sky, spec, memory.recall))).toEqual(
        plain(roomNetwork(weather, sun, sky, spec)),
      )
  })
})
