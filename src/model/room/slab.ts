import { FLOOR_FILM_m2KW } from '#model/room/films.ts'
import type { RoomGeometry } from '#model/room/geometry.ts'
import { slabOnGroundU_Wm2K, type GroundFloor } from '#model/room/ground.ts'
import type { RoomSpec } from '#model/room/spec.ts'

/** Walls around the slab, m: the shed of the ISO 13370 check; enters only the ground's resistance. */
const WALL_m = 0.15

/** The floor slab between room air and ground. */
export interface Slab {
  readonly capacity_JK: number
  readonly airSlab_WK: number
  readonly slabLoss_WK: number
  readonly drive_W: Float64Array
  /** Share of the resistance between air and node that is film: how far the surface follows the node. */
  readonly filmShare_frac: number
}

/**
 * Slab node behind 1/h + L/(3k): within 0.2 % of the exact response of a slab with an insulated back after 4 h, where a
 * plain lump is 6 % off. Below it the rest of ISO 13370's resistance, to the ground's temperature.
 * @param groundUnder_C  temperature of the ground under a floor, °C per hour (`groundTemp_C`)
 */
export function slabNode(
  spec: RoomSpec,
  geometry: RoomGeometry,
  groundUnder_C: (floor: GroundFloor) => Float64Array,
): Slab {
  const own_m2KW = spec.slabThickness_m / spec.slabConductivity_WmK
  const above_m2KW = FLOOR_FILM_m2KW + own_m2KW / 3
  const floor: GroundFloor = {
    area_m2: geometry.floor_m2,
    perimeter_m: geometry.perimeter_m,
    wall_m: WALL_m,
    ground_WmK: spec.groundConductivity_WmK,
    floor_m2KW: own_m2KW + spec.slabInsulation_m2KW,
  }
  const slabLoss_WK = geometry.floor_m2 / (1 / slabOnGroundU_Wm2K(floor) - above_m2KW)
  return {
    capacity_JK:
      geometry.floor_m2 * spec.slabThickness_m * spec.slabDensity_kgm3 * spec.slabSpecificHeat_JkgK,
    airSlab_WK: geometry.floor_m2 / above_m2KW,
    slabLoss_WK,
    drive_W: groundUnder_C(floor).map((temp_C) => slabLoss_WK * temp_C),
    filmShare_frac: FLOOR_FILM_m2KW / above_m2KW,
  }
}
