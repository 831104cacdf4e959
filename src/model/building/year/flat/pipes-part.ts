import {
  CONVECTION_INSIDE_Wm2K,
  FILM_INSIDE_Wm2K,
  PER_GROUP,
  RADIATION_INSIDE_Wm2K,
} from '#model/building/room'
import type { Flat } from './numbers.ts'
import { ENVELOPE_M2, GROUND_M2, INNER_C, OUTER_C, PER_GROUP_HERE, PER_MODE_HERE, STATE } from './places.ts'

const BEFORE_GROUPS = 6

/** How pipes in a layer and the room answer each other in an hour: `room-port.ts`, setPipes. */
export function setPipesHour(s: Flat): void {
  const { rows, pipeDc } = s
  const alpha = rows[s.at + BEFORE_GROUPS + PER_GROUP * s.piped]!
  s.pipeReach = s.pipeDb - alpha * s.pipeCb * pipeDc
  s.toAir = (CONVECTION_INSIDE_Wm2K * s.pipeInner_Wm2K * s.pipeReach) / FILM_INSIDE_Wm2K
  s.toRadiant = (RADIATION_INSIDE_Wm2K * s.pipeInner_Wm2K * s.pipeReach) / FILM_INSIDE_Wm2K
  s.pipeOwn_KW = (s.pipeDd - alpha * pipeDc * pipeDc) / s.pipeArea_m2
}

/** What the pipes read in the step without heat and a room at 0 °C: `room-step.ts`, preparePipes; `room-port.ts`, setPipes. */
export function takePipes(s: Flat): void {
  const { rows, pipeRows, modeRows } = s
  const mine = s.at + BEFORE_GROUPS + PER_GROUP * s.piped
  let mean_C = s.pipeDc * rows[mine]! * (rows[mine + 1]! - s.groupRows[PER_GROUP_HERE * s.piped + OUTER_C]!)
  for (let k = 0, m = s.pipedFrom + STATE; k < pipeRows.length; k++, m += PER_MODE_HERE)
    mean_C += pipeRows[k]! * modeRows[m]!
  s.portBase_C = mean_C + s.pipeReach * rows[mine + 2]!
}

/** The pipes now: `room-step.ts`, pipe_C. */
export function readPipes(s: Flat): void {
  const { pipeShapes, modeRows } = s
  s.tank_C = 0
  for (let k = 0, m = s.pipedFrom + STATE; k < pipeShapes.length; k++, m += PER_MODE_HERE)
    s.tank_C += pipeShapes[k]! * modeRows[m]!
}

/** What heat at the pipes adds to their group's masses, and at its outer face within the step: `room-step.ts`, enterPipes. */
export function enterPipes(s: Flat): void {
  const { groupRows, pipeRows, modeRows, step_s } = s
  const group = PER_GROUP_HERE * s.piped
  const perArea_Wm2 = s.portHeat_W / s.pipeArea_m2
  const less_Wm2 = s.rows[s.at + BEFORE_GROUPS + PER_GROUP * s.piped]! * s.pipeDc * perArea_Wm2
  let inner = 0
  let outer = 0
  for (let k = 0, m = s.pipedFrom; k < pipeRows.length; k++, m += PER_MODE_HERE) {
    const b = modeRows[m + 1]!
    const c = modeRows[m + 2]!
    const z = modeRows[m + STATE]! + step_s * (pipeRows[k]! * perArea_Wm2 - c * less_Wm2)
    modeRows[m + STATE] = z
    inner += b * z
    outer += c * z
  }
  groupRows[group + INNER_C] = inner
  groupRows[group + OUTER_C] = outer
  if (s.keepsBooks === 1) {
    s.envelope_J -= groupRows[group + ENVELOPE_M2]! * step_s * less_Wm2
    s.ground_J -= groupRows[group + GROUND_M2]! * step_s * less_Wm2
  }
}
