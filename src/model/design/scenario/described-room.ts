import { describedAs, ROOF_BUILDS, WALL_BUILDS } from '#model/building/construction'
import type { Scenario } from './fields.ts'

/** The same room with walls and roof given by U-value, mass and place, so that one of them can be changed. */
export function describedRoom(room: Scenario['room']): Scenario['room'] {
  let described = room
  if (room.wallBuild !== 'own') {
    const { U_Wm2K, mass_kgm2, place } = describedAs(WALL_BUILDS[room.wallBuild].layers)
    described = {
      ...described,
      wallBuild: 'own',
      wallU_Wm2K: U_Wm2K,
      wallMass_kgm2: mass_kgm2,
      wallMassPlace: place,
    }
  }
  if (room.roofBuild !== 'own') {
    const { U_Wm2K, mass_kgm2, place } = describedAs(ROOF_BUILDS[room.roofBuild].layers)
    described = {
      ...described,
      roofBuild: 'own',
      roofU_Wm2K: U_Wm2K,
      roofMass_kgm2: mass_kgm2,
      roofMassPlace: place,
    }
  }
  return described
}
