import type { Finish } from './outside.ts'
import type { RoomSpec } from './spec.ts'

/** Thermal emittance of walls: paint, brick, timber (ISO 6946, 0.9), and of glass (EN 673, 0.84). */
const WALL_EMITTANCE_frac = 0.9
const GLASS_EMITTANCE_frac = 0.84

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

/** The underside of a raised floor: open to the wind, in the shade, before ground as warm as the air. */
export const SHELTERED_FINISH: Finish = {
  absorptance_frac: 0,
  emittance_frac: WALL_EMITTANCE_frac,
  skyView_frac: 0,
}

/** What glass absorbs of the sun is in its solar gain coefficient. */
export const GLASS_FINISH: Finish = {
  absorptance_frac: 0,
  emittance_frac: GLASS_EMITTANCE_frac,
  skyView_frac: 0.5,
}
