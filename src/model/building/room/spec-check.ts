import { checkConstruction } from '#model/building/construction'
import type { RoomSpec } from './spec.ts'

/** Least and greatest a room's numbers may be; the stage refuses what lies outside. */
const RANGES: Readonly<Partial<Record<keyof RoomSpec, readonly [min: number, max: number]>>> = {
  length_m: [0.1, 1000],
  width_m: [0.1, 1000],
  height_m: [0.1, 100],
  azimuth_deg: [-360, 720],
  roofReflectance_frac: [0, 1],
  roofEmittance_frac: [0, 1],
  wallReflectance_frac: [0, 1],
  windowFront_m2: [0, 1e5],
  windowRight_m2: [0, 1e5],
  windowBack_m2: [0, 1e5],
  windowLeft_m2: [0, 1e5],
  windowU_Wm2K: [0, 25],
  windowGain_frac: [0, 1],
  shading_frac: [0, 1],
  overhang_m: [0, 20],
  overhangAbove_m: [0, 20],
  reveal_m: [0, 5],
  windowHeight_m: [0.05, 100],
  unheatedShare_frac: [0, 1],
  partition_m2: [0, 1e5],
  partitionMass_kgm2: [0.1, 5000],
  ventFrom_h: [0, 24],
  ventTo_h: [0, 24],
  airChange_1h: [1e-4, 1000],
  airChangeWind_1hms: [0, 100],
  nightAirChange_1h: [0, 1000],
  moisture_kgh: [0, 1000],
  contents_Jm2K: [100, 1e8],
  slabThickness_m: [1e-3, 5],
  slabConductivity_WmK: [0.01, 500],
  slabDensity_kgm3: [1, 20000],
  slabSpecificHeat_JkgK: [100, 10000],
  slabInsulation_m2KW: [0, 100],
  groundConductivity_WmK: [0.05, 20],
}

/** Throws RangeError with quantity, value and range when a room is not one. */
export function checkRoomSpec(spec: RoomSpec): void {
  for (const [name, [min, max]] of Object.entries(RANGES)) {
    const value = spec[name as keyof RoomSpec]
    if (!(typeof value === 'number' && value >= min && value <= max))
      throw new RangeError(`room ${name} must be ${min}…${max}, got ${String(value)}`)
  }
  checkConstruction(spec.roof)
  checkConstruction(spec.wall)
  if (spec.gains_W.length !== 24 || !spec.gains_W.every((gain_W) => Number.isFinite(gain_W)))
    throw new RangeError(`room gains_W must be 24 finite numbers, got ${spec.gains_W.length}`)
}
