import { takeBack } from './loop-part.ts'
import type { Flat } from './numbers.ts'
import { readPipes } from './pipes-part.ts'

/** Whether pipes would be supplied too cold for the mean `about_C` of what the loop charges: `plate-course.ts`, mustMix. */
export function askMixing(s: Flat): void {
  takeBack(s)
  s.isMixing = s.back_C < s.lowest_C ? 1 : 0
}

/** The loop with return water blended in, as plate and mass meet it: `mixed-supply.ts`; `plate-step.ts`, setHeat; `plate-course.ts`, prepareMixed. */
export function setMixedLoop(s: Flat): void {
  const { rate_WK, pipeShare: a, lowest_C } = s
  const mixed_WK = rate_WK * s.sinkShare
  const mixed_W = mixed_WK * lowest_C
  s.fromSink_WK = s.share * (mixed_WK * (1 - a))
  s.fromConst_W =
    s.share * (s.pump_W - mixed_W + rate_WK * a * (2 * s.outdoor_C - (2 - s.sinkShare) * lowest_C))
  s.fromPlate_WK = 0
  s.charging_W = s.share * mixed_W
  s.charging_WK = s.share * mixed_WK
}

/**
 * Room and loop of one step without a tank, and whether return water must be blended in for the mean that this leads to:
 * `kernel.ts`, solveStep, solveMeans, charged_W and sinkMean_C.
 */
export function solveMass(s: Flat): void {
  const { portShare, portBase_C, portOwn_KW, charging_W: gives_W, charging_WK: gives_WK } = s
  let air_WK = s.room_WK
  let air_W = s.roomDrive_W
  s.portHeat_W = 0
  s.remixes = false
  if (s.share > 0) {
    const seen = portShare / (1 + portOwn_KW * gives_WK)
    air_WK += seen * gives_WK * portShare
    air_W += seen * (gives_W - gives_WK * portBase_C)
  }
  const found_C = air_W * (1 / air_WK)
  if (s.share > 0)
    s.portHeat_W = (gives_W - gives_WK * (portShare * found_C + portBase_C)) / (1 + portOwn_KW * gives_WK)
  s.airMean_C = found_C
  s.tankMean_C = portShare * found_C + portBase_C + portOwn_KW * s.portHeat_W
  if (s.share === 0 || s.isMixing === 1) return
  s.about_C = s.tankMean_C
  askMixing(s)
  s.remixes = s.isMixing === 1
}

/** What the loop charges, at the step's end: `room-step.ts`, portNow_C; `kernel.ts`, finish. */
export function moveMass(s: Flat): void {
  const begun_C = s.tank_C
  if (s.piped >= 0) readPipes(s)
  else s.tank_C = s.toAir * s.air_C + s.toRadiant * s.radiant_C
  s.sinkDrift_Ks = (s.tank_C - begun_C) / s.step_s
}
