import {
  bareResistance_m2KW,
  FABRIC_FILM_m2KW,
  ROOF_INSIDE_m2KW,
  WALL_INSIDE_m2KW,
} from '#model/room/films.ts'
import type { RoomGeometry } from '#model/room/geometry.ts'
import type { Finish, OutsideHours } from '#model/room/outside.ts'
import type { RoomSpec } from '#model/room/spec.ts'

/** Thermal emittance of walls: paint, brick, timber (ISO 6946, 0.9). */
const WALL_EMITTANCE_frac = 0.9

/** Walls and roof as the fabric node sees them. */
export interface Envelope {
  readonly fabric_m2: number
  readonly airFabric_WK: number
  /** Σ A g, W/K per hour: it moves with the wind, most of all where there is no insulation. */
  readonly loss_WK: Float64Array
  /** Σ A g T_solair, W per hour. */
  readonly drive_W: Float64Array
}

/** Roof and walls as they lie under sun and sky. */
export interface Shell<T> {
  readonly roof: T
  /** In the order of the geometry's facades. */
  readonly facades: readonly T[]
}

export function roofFinish({ roofReflectance_frac, roofEmittance_frac }: RoomSpec): Finish {
  return { absorptance_frac: 1 - roofReflectance_frac, emittance_frac: roofEmittance_frac, skyView_frac: 1 }
}

export function wallFinish({ wallReflectance_frac }: RoomSpec): Finish {
  return {
    absorptance_frac: 1 - wallReflectance_frac,
    emittance_frac: WALL_EMITTANCE_frac,
    skyView_frac: 0.5,
  }
}

/**
 * Opaque parts between the fabric node (inner surfaces) and outdoors. Each hour a surface has its sol-air temperature and
 * film h_e; the conductance is g = 1/(R + 1/h_e), R its U-value without films.
 */
export function envelope(spec: RoomSpec, geometry: RoomGeometry, outside: Shell<OutsideHours>): Envelope {
  const hours = outside.roof.temp_C.length
  const loss_WK = new Float64Array(hours)
  const drive_W = new Float64Array(hours)
  const roof_m2KW = bareResistance_m2KW(spec.roofU_Wm2K, ROOF_INSIDE_m2KW)
  const wall_m2KW = bareResistance_m2KW(spec.wallU_Wm2K, WALL_INSIDE_m2KW)
  const add = (area_m2: number, resistance_m2KW: number, { temp_C, film_Wm2K }: OutsideHours): void => {
    for (let h = 0; h < hours; h++) {
      const through_WK = area_m2 / (resistance_m2KW + 1 / film_Wm2K[h]!)
      loss_WK[h]! += through_WK
      drive_W[h]! += through_WK * temp_C[h]!
    }
  }
  add(geometry.roof_m2, roof_m2KW, outside.roof)
  geometry.facades.forEach((facade, side) => add(facade.opaque_m2, wall_m2KW, outside.facades[side]!))
  const fabric_m2 = geometry.roof_m2 + geometry.opaqueWall_m2
  return { fabric_m2, airFabric_WK: fabric_m2 / FABRIC_FILM_m2KW, loss_WK, drive_W }
}
