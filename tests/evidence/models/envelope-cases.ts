/**
 * The envelope cases of ANSI/ASHRAE Standard 140 (after the International Energy Agency's task 12), true layers: 8 × 6 ×
 * 2.7 m, 12 m² of south glass, 0.5 air changes, 200 W of gains. All from memory. The standard's weather file is not held:
 * the year is our own, made from twelve open monthly values of the same city (39.8° N, 104.9° W, 1609 m) and brought to the
 * yearly figures recalled of that file (`envelope-year.ts`), so that what hangs on single hours (the lowest temperature)
 * is not compared. Infiltration and fan are volumes of thin air; gains 0.6 radiant; sun inside is kept as the standard gives
 * it. Not as given: films inside (7.63 for 8.29 W/m²K) and outside (with the wind, for 29.3), which the room has of its own.
 */
import { Stages } from '#studies/stages.ts'
import type { Construction } from '#model/building/construction'
import { type RoomSpec, roomNetwork, withRows } from '#model/building/room'
import { idealLoad } from '#inside/model/building/year/ideal-load.ts'
import { simulateYear } from '#model/building/year'
import { defaultScenario } from '#model/design/scenario'
import { findPlace, placeWeather } from '#model/outdoors/place'
import { PLACES, TOWNS } from '../../rooms/outdoors/place/held-data.ts'
import { once } from '../check.ts'
import { standardYear } from './envelope-year.ts'

const layer = (
  thickness_m: number,
  conductivity_WmK: number,
  density_kgm3: number,
  specificHeat_JkgK: number,
) => ({ thickness_m, conductivity_WmK, density_kgm3, specificHeat_JkgK })

const siding = layer(0.009, 0.14, 530, 900)
const ROOF: Construction = [
  layer(0.01, 0.16, 950, 840),
  layer(0.1118, 0.04, 12, 840),
  layer(0.019, 0.14, 530, 900),
]
const LIGHT: Construction = [layer(0.012, 0.16, 950, 840), layer(0.066, 0.04, 12, 840), siding]
const HEAVY: Construction = [layer(0.1, 0.51, 1400, 1000), layer(0.0615, 0.04, 10, 1400), siding]

/** Air alone; the standard's rooms are empty. */
const AIR_Jm2K = 1007 * 2.7
const NO_SHADE = { overhang_m: 0, overhangAbove_m: 0, reveal_m: 0, windowHeight_m: 2 }

const LIGHT_ROOM: RoomSpec = {
  length_m: 8,
  width_m: 6,
  height_m: 2.7,
  azimuth_deg: 180,
  terrain: 'open',
  roof: ROOF,
  wall: LIGHT,
  roofReflectance_frac: 0.4,
  roofEmittance_frac: 0.9,
  wallReflectance_frac: 0.4,
  windowFront_m2: 12,
  windowRight_m2: 0,
  windowBack_m2: 0,
  windowLeft_m2: 0,
  windowU_Wm2K: 3,
  windowGain_frac: 0.789,
  shading_frac: 1,
  ...NO_SHADE,
  behindFront: 'outdoors',
  behindRight: 'outdoors',
  behindBack: 'outdoors',
  behindLeft: 'outdoors',
  unheatedShare_frac: 1,
  partition_m2: 0,
  partitionMass_kgm2: 100,
  floorKind: 'ground',
  airChange_1h: 0.5,
  airChangeWind_1hms: 0,
  nightAirChange_1h: 1703.16 / (8 * 6 * 2.7),
  nightVent: false,
  ventHours: 'clock',
  ventFrom_h: 18,
  ventTo_h: 7,
  gains_W: Array<number>(24).fill(200),
  moisture_kgh: 0,
  contents_Jm2K: AIR_Jm2K,
  slabThickness_m: 0.025,
  slabConductivity_WmK: 0.14,
  slabDensity_kgm3: 650,
  slabSpecificHeat_JkgK: 1200,
  slabInsulation_m2KW: 25.175,
  groundConductivity_WmK: 1.5,
  pipes: 'none',
}
const HEAVY_ROOM: RoomSpec = {
  ...LIGHT_ROOM,
  wall: HEAVY,
  slabThickness_m: 0.08,
  slabConductivity_WmK: 1.13,
  slabDensity_kgm3: 1400,
  slabSpecificHeat_JkgK: 1000,
}

const stages = once(() => {
  const asked = { latitude_deg: 39.8, longitude_deg: -104.9, altitude_m: 1609, name: null, warming_K: null }
  return new Stages().prepare(defaultScenario(), standardYear(placeWeather(findPlace(PLACES, TOWNS, asked))))
})

/** Where the sunlight let in is kept, as the standard gives it (from memory); the rest is lost through the glass. */
const SUN_KEPT: Readonly<Record<string, number>> = { floor: 0.642, roof: 0.168, wall: 0.155 }
const SUN_LOST = 0.035

function room(spec: RoomSpec) {
  const { weather, sun, sky } = stages()
  const network = roomNetwork(weather, sun, sky, spec)
  return withRows({
    ...network,
    groups: network.groups.map((group) => ({ ...group, sunShare: SUN_KEPT[group.name] ?? 0 })),
    windows: network.windows === null ? null : { ...network.windows, sunShare: SUN_LOST },
  })
}

/** Air's mean and highest hour of a room left alone, °C, with and without the night fan. */
function floating(spec: RoomSpec) {
  const inputs = { room: room(spec), plant: null, nightVentStop_C: -60 }
  const { air_C } = simulateYear(inputs)
  return {
    highest_C: Math.max(...air_C),
    mean_C: air_C.reduce((sum, value) => sum + value, 0) / air_C.length,
  }
}

/** Heat that keeps the air between 20 and 27 °C, MWh a year. */
function held(spec: RoomSpec) {
  const found = idealLoad(room(spec), { by: 'air', heat_C: 20, cool_C: 27, stepsPerHour: 4, warmUp_h: 504 })
  return { heating_MWh: found.heating_J / 3.6e9, cooling_MWh: found.cooling_J / 3.6e9 }
}

const overhang = { overhang_m: 1, overhangAbove_m: 0.5 }
const fan = { nightVent: true }

/** Left alone: name, room, published band of the highest hour and of the mean, °C (from memory). */
export const FLOATING = [
  ['light (600FF)', once(() => floating(LIGHT_ROOM)), [64.9, 75.1], [24.2, 27.4]],
  ['heavy (900FF)', once(() => floating(HEAVY_ROOM)), [41.8, 46.4], [24.5, 27.5]],
  [
    'light with a night fan (650FF)',
    once(() => floating({ ...LIGHT_ROOM, ...fan })),
    [63.2, 73.5],
    [18, 20.8],
  ],
  [
    'heavy with a night fan (950FF)',
    once(() => floating({ ...HEAVY_ROOM, ...fan })),
    [35.5, 38.5],
    [14, 15.3],
  ],
] as const

/** Held by ideal plant: name, room, published band of heating and cooling, MWh a year (from memory). */
export const HELD = [
  ['light (600)', once(() => held(LIGHT_ROOM)), [4.296, 5.709], [6.137, 8.448]],
  [
    'light under an overhang (610)',
    once(() => held({ ...LIGHT_ROOM, ...overhang })),
    [4.355, 5.786],
    [3.915, 6.139],
  ],
  ['heavy (900)', once(() => held(HEAVY_ROOM)), [1.17, 2.041], [2.132, 3.415]],
  [
    'heavy under an overhang (910)',
    once(() => held({ ...HEAVY_ROOM, ...overhang })),
    [1.575, 2.282],
    [0.821, 1.872],
  ],
] as const

/** Of the year they run through, kWh/m². */
export function globalSun_kWhm2(): number {
  return stages().weather.globalHorizontal_Wm2.reduce((sum, value) => sum + value, 0) / 1000
}
