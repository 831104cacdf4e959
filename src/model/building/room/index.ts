export {
  CEILING_CONVECTIVE_frac,
  CONVECTION_INSIDE_Wm2K,
  FILM_INSIDE_Wm2K,
  RADIATION_INSIDE_Wm2K,
} from './films.ts'
export { CONVECTIVE_GAINS_frac } from './gains.ts'
export { endOverMean } from './mean-step.ts'
export { roomExposure, roomNetwork, roomWithin, withRows } from './network.ts'
export type { Exposure } from './exposure.ts'
export {
  ACROSS_WK,
  AIR_WK,
  BACK_WK,
  RADIANT_WK,
  TO_AIR_W,
  TO_RADIANT_W,
  absorbed_Wm2,
  groupAt,
  PER_GROUP,
  PER_MODE,
} from './rows.ts'
export type {
  GroupStep,
  OutsideHours,
  RoomNetwork,
  RoomParts,
  RoomPortKind,
  RoomRows,
  RoomSpec,
} from './spec.ts'
