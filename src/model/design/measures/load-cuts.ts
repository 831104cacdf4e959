import { isPainted, WHITE_frac } from '#model/design/sizing'
import { FIELDS, type Scenario, describedRoom } from '#model/design/scenario'

/** A change of the room or its use that lowers the load, and how the scenario looks with it. */
export interface LoadCutOption {
  readonly name: string
  readonly apply: (scenario: Scenario) => Scenario
  /** False where the room has it already; always true when left out. */
  readonly fits?: (scenario: Scenario) => boolean
}

const withRoom = (scenario: Scenario, room: Partial<Scenario['room']>): Scenario => ({
  ...scenario,
  room: { ...scenario.room, ...room },
})

/** The cuts every user asks about, in plain words. They are also the baselines of the comparison. */
export const LOAD_CUTS: readonly LoadCutOption[] = [
  {
    name: 'Halve the roof’s U-value (insulate the roof)',
    apply: (s) => {
      const room = describedRoom(s.room)
      return withRoom(s, { ...room, roofU_Wm2K: room.roofU_Wm2K / 2 })
    },
  },
  {
    name: 'Halve the walls’ U-value',
    apply: (s) => {
      const room = describedRoom(s.room)
      return withRoom(s, { ...room, wallU_Wm2K: room.wallU_Wm2K / 2 })
    },
  },
  {
    name: 'Paint the roof white',
    fits: ({ room }) => !isPainted(room.roofReflectance_frac),
    apply: (s) => withRoom(s, { roofReflectance_frac: WHITE_frac, roofEmittance_frac: 0.9 }),
  },
  {
    name: 'Shade the windows outside',
    apply: (s) => withRoom(s, { shading_frac: Math.min(0.15, s.room.shading_frac) }),
  },
  {
    name: 'Halve the air leaks by day',
    apply: (s) =>
      withRoom(s, {
        airChange_1h: s.room.airChange_1h / 2,
        airChangeWind_1hms: s.room.airChangeWind_1hms / 2,
      }),
  },
  { name: 'Open the windows at night', apply: (s) => withRoom(s, { nightVent: true }) },
  {
    name: 'Double the mass of walls and roof',
    apply: (s) => {
      const room = describedRoom(s.room)
      return withRoom(s, {
        ...room,
        wallMass_kgm2: Math.min(FIELDS.room.wallMass_kgm2.max, room.wallMass_kgm2 * 2),
        roofMass_kgm2: Math.min(FIELDS.room.roofMass_kgm2.max, room.roofMass_kgm2 * 2),
      })
    },
  },
  {
    name: 'Double the delivery (a larger fan coil or ceiling)',
    apply: (s) => ({ ...s, store: { ...s.store, delivery_WK: Math.min(5000, s.store.delivery_WK * 2) } }),
  },
]
