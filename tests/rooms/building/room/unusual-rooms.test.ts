/* Second implementation: rooms that nobody had in mind when the modes were chosen, against our own fine finite volumes over
 * a summer, the same films, sun and drives. Tolerances as for the reference rooms: 0.15 K in the peak, 2 % in degree-hours. */
import { expect, test } from 'vitest'
import { Stages } from '#studies/stages.ts'
import { ROOF_BUILDS, WALL_BUILDS, type Construction } from '#model/building/construction'
import { type RoomSpec, roomNetwork } from '#model/building/room'
import { roomSpecOf } from '#model/design/assembly'
import { defaultScenario } from '#model/design/scenario'
import { partsOf } from '#inside/model/building/room/parts.ts'
import { groundTemp_C, type GroundFloor } from '#inside/model/building/room/ground.ts'
import { exposure } from '#inside/model/building/room/exposure.ts'
import { roomGeometry } from '#inside/model/building/room/geometry.ts'
import { contentsOf } from '#inside/model/building/room/contents.ts'
import { RoomStep } from '#inside/model/building/year/room-step.ts'
import { sampleWeather } from '../../../../src/shell/samples.ts'
import { fineRoom } from './fine-room.ts'

const layer = (
  thickness_m: number,
  conductivity_WmK: number,
  density_kgm3: number,
  specificHeat_JkgK: number,
) => ({
  thickness_m,
  conductivity_WmK,
  density_kgm3,
  specificHeat_JkgK,
})
const sheet: Construction = [layer(0.0005, 50, 7800, 450)]
const adobe: Construction = [layer(0.6, 0.8, 1700, 1000)]
const concrete = layer(0.2, 2, 2400, 1000)
const foam = layer(0.15, 0.035, 20, 1450)

const BARE = { windowFront_m2: 0, windowRight_m2: 0, windowBack_m2: 0, windowLeft_m2: 0 }
/** Name, and what is unlike an ordinary room in it. */
const ROOMS: readonly (readonly [string, Partial<RoomSpec>])[] = [
  ['walls and roof of sheet metal of half a millimetre', { wall: sheet, roof: sheet }],
  ['60 cm of adobe under earth on timber', { wall: adobe, roof: ROOF_BUILDS.earthOnTimber.layers }],
  ['straw bale under boards and felt', { wall: WALL_BUILDS.straw.layers, roof: ROOF_BUILDS.felt.layers }],
  ['concrete all round, insulated inside', { wall: [foam, concrete], roof: [foam, concrete] }],
  ['concrete all round, insulated outside', { wall: [concrete, foam], roof: [concrete, foam] }],
  ['bare concrete all round, no windows', { wall: [concrete], roof: [concrete], ...BARE }],
  [
    'thick stone slab on the ground, light walls',
    { slabThickness_m: 0.4, slabConductivity_WmK: 2.3, slabDensity_kgm3: 2600, slabInsulation_m2KW: 0 },
  ],
  [
    'a thin raised floor',
    {
      floorKind: 'raised',
      slabThickness_m: 0.02,
      slabConductivity_WmK: 0.13,
      slabDensity_kgm3: 500,
      slabInsulation_m2KW: 0.5,
    },
  ],
  [
    'nearly all glass',
    { windowFront_m2: 9, windowRight_m2: 7, windowBack_m2: 9, windowLeft_m2: 7, shading_frac: 1 },
  ],
  [
    '45 cm of stone with inner walls of brick',
    { wall: WALL_BUILDS.stone.layers, partition_m2: 30, partitionMass_kgm2: 200 },
  ],
]

const FROM_h = 130 * 24
const JUDGED_h = 150 * 24
const TO_h = 240 * 24

function summer(climate: string, unlike: Partial<RoomSpec>) {
  const { weather, sun, sky } = new Stages().prepare(defaultScenario(), sampleWeather(climate))
  const spec: RoomSpec = { ...roomSpecOf(defaultScenario()), nightVent: false, ...unlike }
  const room = roomNetwork(weather, sun, sky, spec)
  const geometry = roomGeometry(spec)
  const { furniture } = contentsOf(spec.contents_Jm2K, geometry.floor_m2, geometry.volume_m3)
  const weathered = {
    ...exposure(weather, sun, sky, spec, geometry, (_part, _key, make) => make()),
    groundUnder_C: (floor: GroundFloor) => groundTemp_C(floor, weather),
  }
  const layers = partsOf(spec, geometry, weathered, furniture).map((part) => part.layers)
  const fine = fineRoom(room, layers, 20, [FROM_h, TO_h])
  const step = new RoomStep(room, 900)
  step.begin(
    20,
    room.groups.flatMap(({ modes }) => Array.from(modes.held, (held) => 20 * held)),
  )
  const ours = fine.map((_, at) => {
    let sum = 0
    for (let k = 0; k < 4; k++) {
      step.prepare(FROM_h + at, 0)
      const air_C = step.airDrive_W / step.air_WK
      step.finish(air_C)
      sum += (air_C + step.radiantMean_C) / 8
    }
    return sum
  })
  const after = (values: Float64Array) => values.subarray(JUDGED_h - FROM_h)
  const peak = (values: Float64Array) => after(values).reduce((top, value) => Math.max(top, value), -Infinity)
  const degreeHours = (values: Float64Array, over_C: number) =>
    after(values).reduce((sum, value) => sum + Math.max(0, value - over_C), 0)
  // Over the summer's own mean: a room that never comes near 26 °C is judged too.
  const mean_C = after(fine).reduce((sum, value) => sum + value, 0) / (TO_h - JUDGED_h)
  return {
    peak_K: peak(ours) - peak(fine),
    degreeHours_frac: degreeHours(ours, mean_C) / degreeHours(fine, mean_C) - 1,
    anyHour_K: after(fine).reduce(
      (worst, value, at) => Math.max(worst, Math.abs(value - after(ours)[at]!)),
      0,
    ),
  }
}

test.each(ROOMS)('%s: a summer as fine finite volumes have it', (name, unlike) => {
  for (const climate of ['mediterranean-coast', 'continental']) {
    const { peak_K, degreeHours_frac, anyHour_K } = summer(climate, unlike)
    console.log(
      `${name}, ${climate}: peak ${peak_K.toFixed(3)} K, degree-hours over the mean ${(100 * degreeHours_frac).toFixed(2)} %, any hour ${anyHour_K.toFixed(3)} K`,
    )
    expect(Math.abs(peak_K)).toBeLessThan(0.15)
    expect(Math.abs(degreeHours_frac)).toBeLessThan(0.02)
  }
})
