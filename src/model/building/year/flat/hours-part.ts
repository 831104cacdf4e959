import { enterDelivery } from './delivery-part.ts'
import { moveLayers } from './layers-part.ts'
import { finishRun } from './loop-part.ts'
import { moveMass } from './mass-part.ts'
import type { Flat } from './numbers.ts'
import { finishRest } from './plate-part.ts'
import { beginDuty, mayPump, solveWithPump } from './pump-part.ts'
import { finishRoom, prepareRoom, takeGiven } from './room-part.ts'
import { openWindows } from './window-part.ts'

const HOUR_S = 3600
/** Numbers of an hour's face: `face-rows.ts`. */
const PER_FACE = 15

/** Hours from `first` to before `end`, which may pass the record's end. */
export function runHours(s: Flat): void {
  for (let run = s.fromRun; run < s.toRun; run++) {
    s.hour = run % s.hours
    runHour(s)
  }
}

/** One hour. */
export function runHour(s: Flat): void {
  beginHour(s)
  for (let k = s.stepsPerHour; k > 0; k--) runStep(s)
  s.room_C[s.hour] = (0.5 * (s.air_Cs + s.radiant_Cs)) / HOUR_S
}

/** What holds for an hour, and its sums begun. */
export function beginHour(s: Flat): void {
  const { hour } = s
  s.at = hour * s.stride
  s.rowVent_WK = -1
  takeGiven(s)
  s.outdoor_C = s.outdoors_C[hour]!
  s.air_Cs = s.radiant_Cs = s.envelope_J = s.ground_J = s.nightVent_J = s.shed_J = s.taken_J = s.pipes_J = 0
  s.pump_J = s.fan_J = s.gain_J = s.delivered_J = s.run_s = s.return_Cs = 0
  if (s.hasPlant === 0) return
  s.lowest_C = s.dews_C[hour]! + s.dewMargin_K
  if (s.mayRun[hour] === 1 && s.rate_WK > 0) beginDuty(s)
  const { faceRows } = s
  const face = PER_FACE * hour
  s.faceAir_C = faceRows[face]!
  s.vapour_Pa = faceRows[face + 1]!
  s.massTransfer = faceRows[face + 2]!
  s.dryGain_Wm2 = faceRows[face + 3]!
  s.wetGain_Wm2 = faceRows[face + 4]!
  s.cold0 = faceRows[face + 5]!
  s.cold1 = faceRows[face + 6]!
  s.cold2 = faceRows[face + 7]!
  s.cold3 = faceRows[face + 8]!
  s.hot0 = faceRows[face + 9]!
  s.hot1 = faceRows[face + 10]!
  s.hot2 = faceRows[face + 11]!
  s.hot3 = faceRows[face + 12]!
  s.still_Wm2K = faceRows[face + 13]!
  s.stillRise_Wm2K2 = faceRows[face + 14]!
}

/** One step with the controls held through it: `kernel.ts`, step and finish. */
export function runStep(s: Flat): void {
  const { step_s } = s
  if (s.nightVent_WK > 0 && s.ventAllowed[s.hour] === 1) openWindows(s)
  else {
    s.opening = 0
    s.vent_WK = 0
    prepareRoom(s)
  }
  if (s.hasPlant === 0) {
    s.airMean_C = s.roomDrive_W * (1 / s.room_WK)
    finishRoom(s)
  } else {
    mayPump(s)
    s.hasBegun = false
    solveWithPump(s)
    if (s.layers > 0) enterDelivery(s)
    finishRoom(s)
    if (s.layers > 1) moveLayers(s)
    else if (s.layers === 0) moveMass(s)
    else {
      const begun_C = s.tank_C
      s.tank_C += s.tankEnd * (s.tankMean_C - begun_C)
      s.sinkDrift_Ks = (s.tank_C - begun_C) / step_s
    }
    if (s.share > 0) finishRun(s)
    else finishRest(s)
  }
  if (s.keepsBooks === 1) enterStep(s)
  s.air_Cs += step_s * s.airMean_C
  s.radiant_Cs += step_s * s.radiant_C
}

/** What the windows let in and what crossed the tank in a step: `room-flows.ts`. */
export function enterStep(s: Flat): void {
  s.nightVent_J += s.step_s * s.vent_WK * (s.outdoor_C - s.airMean_C)
  if (s.hasPlant === 0 || s.layers === 0) return
  const around_C = s.tankOutside === 1 ? s.outdoor_C : s.airMean_C
  s.fan_J += s.step_s * (s.fanShare * s.fan_W)
  s.delivered_J += s.step_s * s.delivered_W
  s.gain_J += s.step_s * s.tankLoss_WK * (around_C - s.tankMean_C)
}
