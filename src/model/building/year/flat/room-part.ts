import {
  CONVECTION_INSIDE_Wm2K,
  FILM_INSIDE_Wm2K,
  PER_GROUP,
  RADIATION_INSIDE_Wm2K,
} from '#model/building/room'
import { decay } from '#model/basis/numbers'
import type { Flat } from './numbers.ts'
import { enterPipes, setPipesHour, takePipes } from './pipes-part.ts'
import {
  CB,
  ENVELOPE_M2,
  GIVEN_WK,
  GROUND_M2,
  INNER_C,
  INNER_WM2K,
  OUTER_C,
  PER_GROUP_HERE,
  PER_MODE_HERE,
  STATE,
} from './places.ts'

/** Below this exponent the series is used. */
const SMALL = 1e-3
const BEFORE_GROUPS = 6

/** How far a capacity has come over its mean: `room/mean-step.ts`, E(x). */
export function meanStep(s: Flat): void {
  const { x } = s
  if (x < SMALL) {
    s.endOverMean = (1 - x / 2 + (x * x) / 6) / (0.5 - x / 6 + (x * x) / 24)
    return
  }
  const left = decay(x)
  s.endOverMean = (x * (1 - left)) / (x - 1 + left)
}

/** An hour's row with the windows as they are: `room-step.ts`, setHour. */
export function setRoomHour(s: Flat): void {
  const { rows, at } = s
  const air_WK = rows[at]! + s.vent_WK
  if (air_WK !== s.endOf_WK) {
    s.endOf_WK = air_WK
    s.x = (air_WK * s.step_s) / s.airCapacity_JK
    meanStep(s)
    s.airEnd = s.endOverMean
  }
  s.rowVent_WK = s.vent_WK
  s.inertia_WK = (s.airEnd * s.airCapacity_JK) / s.step_s
  s.across_WK = rows[at + 2]!
  s.radiant_WK = rows[at + 3]!
  s.radiantShare = s.radiant_WK > 0 ? s.across_WK / s.radiant_WK : 0
  s.hourToAir_W = rows[at + 4]! + s.vent_WK * s.outdoor_C
  s.hourToRadiant_W = rows[at + 5]!
  s.room_WK = air_WK + s.inertia_WK - rows[at + 1]! - s.radiantShare * s.across_WK
  if (s.piped >= 0) setPipesHour(s)
  // What the plant meets: `room-port.ts`, follow.
  s.portShare = s.toAir + s.toRadiant * (s.radiant_WK > 0 ? -s.radiantShare : 1)
  s.portOwn_KW = s.pipeOwn_KW + (s.radiant_WK > 0 ? (s.toRadiant * s.toRadiant) / s.radiant_WK : 0)
  s.openSeen_WK = s.open_WK / (1 + s.portOwn_KW * s.open_WK)
  s.fadingSeen_WK = (2 * s.open_WK) / (1 + s.portOwn_KW * (2 * s.open_WK))
}

/** What the faces give air and radiant temperature as the masses now are: `room-step.ts`, prepare. */
export function takeGiven(s: Flat): void {
  const { rows, groupRows } = s
  const last = PER_GROUP_HERE * s.groups
  s.faces_W = 0
  for (let g = 0, mine = s.at + BEFORE_GROUPS; g < last; g += PER_GROUP_HERE, mine += PER_GROUP)
    s.faces_W +=
      groupRows[g + GIVEN_WK]! *
      (groupRows[g + INNER_C]! +
        groupRows[g + CB]! * rows[mine]! * (rows[mine + 1]! - groupRows[g + OUTER_C]!))
}

/** The room before its plant: `room-step.ts`, prepare. */
export function prepareRoom(s: Flat): void {
  if (s.vent_WK !== s.rowVent_WK) setRoomHour(s)
  s.toRadiant_W = s.hourToRadiant_W + RADIATION_INSIDE_Wm2K * s.faces_W
  s.roomDrive_W =
    s.hourToAir_W +
    CONVECTION_INSIDE_Wm2K * s.faces_W +
    s.inertia_WK * s.air_C -
    s.radiantShare * s.toRadiant_W
  s.portBase_C = 0
  if (s.piped >= 0) takePipes(s)
  if (s.meetsAir === 0 && s.radiant_WK > 0) s.portBase_C += s.toRadiant * (s.toRadiant_W / s.radiant_WK)
}

/** Air at the step's end, and the faces' heat, for the mean that the air has had: `room-step.ts`, finish. */
export function finishRoom(s: Flat): void {
  const { airMean_C } = s
  s.radiant_C = airMean_C
  if (s.radiant_WK > 0) {
    s.radiant_C = (s.toRadiant_W - s.across_WK * airMean_C) / s.radiant_WK
    if (s.meetsAir === 0) s.radiant_C += (s.toRadiant * s.portHeat_W) / s.radiant_WK
  }
  s.star_C = (CONVECTION_INSIDE_Wm2K * airMean_C + RADIATION_INSIDE_Wm2K * s.radiant_C) / FILM_INSIDE_Wm2K
  s.air_C += s.airEnd * (airMean_C - s.air_C)
  advance(s)
  if (s.piped >= 0 && s.portHeat_W !== 0) {
    enterPipes(s)
    takeGiven(s)
  }
}

/** Masses at the step's end, and in the same pass what they give in the next step of the hour: `room-step.ts`, advance and prepare. */
export function advance(s: Flat): void {
  const { rows, groupRows, modeRows, ends, step_s, star_C } = s
  s.faces_W = 0
  for (let i = 0, g = 0, m = 0, mine = s.at + BEFORE_GROUPS; i < ends.length; i++) {
    const alpha = rows[mine]!
    const outside_C = rows[mine + 1]!
    const u = groupRows[g + INNER_WM2K]! * star_C + rows[mine + 2]!
    const w = alpha * (outside_C - groupRows[g + OUTER_C]! - groupRows[g + CB]! * u)
    const inner_Jm2 = step_s * u
    const outer_Jm2 = step_s * w
    let inner = 0
    let outer = 0
    for (const last = ends[i]!; m < last; m += PER_MODE_HERE) {
      const b = modeRows[m + 1]!
      const c = modeRows[m + 2]!
      const z = modeRows[m]! * modeRows[m + STATE]! + b * inner_Jm2 + c * outer_Jm2
      modeRows[m + STATE] = z
      inner += b * z
      outer += c * z
    }
    groupRows[g + INNER_C] = inner
    groupRows[g + OUTER_C] = outer
    s.faces_W += groupRows[g + GIVEN_WK]! * (inner + groupRows[g + CB]! * alpha * (outside_C - outer))
    if (s.keepsBooks === 1) {
      s.envelope_J += groupRows[g + ENVELOPE_M2]! * outer_Jm2
      s.ground_J += groupRows[g + GROUND_M2]! * outer_Jm2
    }
    g += PER_GROUP_HERE
    mine += PER_GROUP
  }
}
