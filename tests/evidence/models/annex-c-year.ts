/** A whole July of a room by ISO 13790 annex C on the same weather, areas, gains and U-values as the project's room. */
import { Stages } from '#studies/stages.ts'
import { slabOnGroundU_Wm2K } from '#inside/model/building/room/ground.ts'
import { defaultScenario, describedRoom } from '#model/design/scenario'
import { roomSpecOf, type Prepared } from '#model/design/assembly'
import type { Construction } from '#model/building/construction'
import { planeIrradiance } from '#model/outdoors/sun'
import { once, type Check } from '../check.ts'
import { JULY, meanDaily, meanOf, sampleClimate } from '../data/sample.ts'
import { iso13790Hour } from './iso13790.ts'
import { periodic } from './iso13786.ts'

type RoomFields = Prepared['scenario']['room']

function prepared(change: Partial<RoomFields>): Prepared {
  const scenario = defaultScenario()
  return new Stages().prepare(
    { ...scenario, room: { ...scenario.room, ...change } },
    sampleClimate('mediterranean-coast'),
  )
}

/** Temperature behind the opaque parts: outdoor air with sun and sky by ISO 13790 11.3, and the ground's annual mean. */
function opaqueHours(p: Prepared): { conductance_WK: number; temp_C: Float64Array } {
  const room = describedRoom(p.scenario.room)
  const floor_m2 = room.length_m * room.width_m
  const plane = (tilt: number, facing: number) =>
    planeIrradiance(p.sun, p.weather, tilt, facing, 0.2).total_Wm2
  const turned = [0, 90, 180, 270].map((turn) => plane(90, (room.azimuth_deg + turn) % 360))
  const widths = [room.length_m, room.width_m, room.length_m, room.width_m]
  const glass = [room.windowFront_m2, room.windowLeft_m2, room.windowBack_m2, room.windowRight_m2]
  const parts = turned.map((sun, k) => ({
    sun,
    ua: room.wallU_Wm2K * (widths[k]! * room.height_m - glass[k]!),
    absorptance: 1 - room.wallReflectance_frac,
    sky_Wm2: 0.5 * 5 * 0.9 * 11,
  }))
  parts.push({
    sun: plane(0, 0),
    ua: room.roofU_Wm2K * floor_m2,
    absorptance: 1 - room.roofReflectance_frac,
    sky_Wm2: 5 * room.roofEmittance_frac * 11,
  })
  const ground_WK =
    floor_m2 *
    slabOnGroundU_Wm2K({
      area_m2: floor_m2,
      perimeter_m: 2 * (room.length_m + room.width_m),
      wall_m: 0.15,
      ground_WmK: room.groundConductivity_WmK,
      floor_m2KW: room.slabThickness_m / room.slabConductivity_WmK + room.slabInsulation_m2KW,
    })
  const walls_WK = parts.reduce((sum, part) => sum + part.ua, 0)
  const ground_C = p.room.groups.find(({ name }) => name === 'floor')!.outside!.temp_C
  const temp_C = p.weather.airTemp_C.map((air, h) => {
    const gained = parts.reduce(
      (sum, part) => sum + 0.04 * part.ua * (part.absorptance * part.sun[h]! - part.sky_Wm2),
      0,
    )
    return (walls_WK * air + gained + ground_WK * ground_C[h]!) / (walls_WK + ground_WK)
  })
  return { conductance_WK: walls_WK + ground_WK, temp_C }
}

function operativeByAnnexC(p: Prepared): Float64Array {
  const { room } = p.scenario
  const floor_m2 = room.length_m * room.width_m
  const shell_m2 = floor_m2 + 2 * (room.length_m + room.width_m) * room.height_m
  const slab_Jm2K = room.slabThickness_m * room.slabDensity_kgm3 * room.slabSpecificHeat_JkgK
  const kappas = [
    [shell_m2, innerCapacity_Jm2K(p)],
    [floor_m2, slab_Jm2K],
  ] as const
  const capacity_JK = kappas.reduce((sum, [a, k]) => sum + a * k, 0)
  const mass_m2 = capacity_JK ** 2 / kappas.reduce((sum, [a, k]) => sum + a * k * k, 0)
  const opaque = opaqueHours(p)
  const windows_WK =
    room.windowU_Wm2K * (room.windowFront_m2 + room.windowBack_m2 + room.windowLeft_m2 + room.windowRight_m2)
  const operative = new Float64Array(p.weather.hours)
  let mass_C = 20
  for (let h = JULY[0] - 60 * 24; h < JULY[1]; h++) {
    const state = iso13790Hour(
      {
        floor_m2,
        mass_m2,
        capacity_JK,
        opaque_WK: opaque.conductance_WK,
        windows_WK,
        air_WK: p.room.ventilation_WK[h]!,
      },
      mass_C,
      {
        outdoor_C: p.weather.airTemp_C[h]!,
        supply_C: p.weather.airTemp_C[h]!,
        opaque_C: opaque.temp_C[h]!,
        gains_W: p.room.gains_W[h]!,
        sun_W: p.room.sun_W[h]!,
        power_W: 0,
      },
    )
    mass_C = state.massEnd_C
    operative[h] = state.operative_C
  }
  return operative
}

/** Areal heat capacity of walls and roof inside, ISO 13786, without the inner film, by area, J/m²K. */
function innerCapacity_Jm2K(p: Prepared): number {
  const { wall, roof } = roomSpecOf(p.scenario)
  const of = (layers: Construction) => periodic(layers, 1e-6).insideCapacity_Jm2K
  return (of(wall) * 2 + of(roof)) / 3
}

const ROOMS = [
  ['workshop a new scenario starts with', {}],
  ['the same in concrete inside its insulation', { wallBuild: 'concreteOut', roofBuild: 'concreteOut' }],
] as const

/** Checks of the project's room, left alone through July, against the annex. */
export function annexC(): Check[] {
  return ROOMS.flatMap(([name, change]) => {
    const both = once(() => {
      const p = prepared(change)
      return { ours: p.doNothing.room_C, theirs: operativeByAnnexC(p) }
    })
    const row = (what: string, read: (values: Float64Array) => number, within: number): Check => ({
      theme: 'Room',
      quantity: `${name}, July on an invented Mediterranean coast, ${what}: ours less the simple hourly method`,
      unit: 'K',
      kind: 'independent calculation',
      source: 'iso13790',
      where: 'annex C, five resistances and one capacity, on the same inputs',
      got: () => read(both().ours) - read(both().theirs),
      want: 0,
      within,
      because:
        'the standard has one mass node and is known to follow summers poorly (Vivian 2017, Energy and Buildings 150); the mean must agree, swings may differ more',
    })
    return [
      row('mean operative temperature', (v) => meanOf(v, JULY), 1),
      row('mean daily highest', (v) => meanDaily(v, JULY, 'max'), 1.5),
      row('mean daily lowest', (v) => meanDaily(v, JULY, 'min'), 1.5),
    ]
  })
}
