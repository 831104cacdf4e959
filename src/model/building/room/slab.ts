import type { Construction } from '#model/building/construction'
import type { RoomGeometry } from './geometry.ts'
import { slabOnGroundU_Wm2K, type GroundFloor } from './ground.ts'
import type { RoomSpec } from './spec.ts'

/** Walls around the slab, m: the shed of the ISO 13370 check; enters only the ground's resistance. */
const WALL_m = 0.15
/** Ground that takes part in the day's swing, m, and its capacity (ISO 13370: clay 3.0e6, sand 2.0e6 J/m³K). */
const SOIL_m = 0.5
const SOIL = { density_kgm3: 2000, specificHeat_JkgK: 1000 }
/** Least resistance left between the soil layer and ISO 13370's virtual ground, m²K/W. */
const LEAST_m2KW = 0.05
const INSIDE_m2KW = 0.17

/** The floor between room and ground: slab, insulation, half a metre of soil, and what ISO 13370 leaves below. */
export interface FloorOnGround {
  readonly floor: GroundFloor
  readonly layers: Construction
  /** Conductance from the soil's lower face to the virtual ground temperature, W/m²K. */
  readonly below_Wm2K: number
}

export function floorOnGround(spec: RoomSpec, geometry: RoomGeometry): FloorOnGround {
  const own_m2KW = spec.slabThickness_m / spec.slabConductivity_WmK
  const floor: GroundFloor = {
    area_m2: geometry.floor_m2,
    perimeter_m: geometry.perimeter_m,
    wall_m: WALL_m,
    ground_WmK: spec.groundConductivity_WmK,
    floor_m2KW: own_m2KW + spec.slabInsulation_m2KW,
  }
  const soil_m2KW = SOIL_m / spec.groundConductivity_WmK
  const below_m2KW = Math.max(
    LEAST_m2KW,
    1 / slabOnGroundU_Wm2K(floor) - INSIDE_m2KW - floor.floor_m2KW - soil_m2KW,
  )
  return {
    floor,
    below_Wm2K: 1 / below_m2KW,
    layers: [
      {
        thickness_m: spec.slabThickness_m,
        conductivity_WmK: spec.slabConductivity_WmK,
        density_kgm3: spec.slabDensity_kgm3,
        specificHeat_JkgK: spec.slabSpecificHeat_JkgK,
      },
      { resistance_m2KW: spec.slabInsulation_m2KW },
      { thickness_m: SOIL_m, conductivity_WmK: spec.groundConductivity_WmK, ...SOIL },
    ],
  }
}
