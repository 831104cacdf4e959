import { NARROWEST_K, THERMOSTAT_K } from '../pump-duty.ts'
import { setFlow, takeWater } from './loop-part.ts'
import { solveMass } from './mass-part.ts'
import { nextShare } from './share-part.ts'
import { takePlate } from './plate-part.ts'
import { solveStep } from './delivery-part.ts'
import { decay } from '#model/basis/numbers'
import type { Flat } from './numbers.ts'

/** Freeze protection and whether the pump may run: `controls.ts`. */
export function mayPump(s: Flat): void {
  const allowed = s.mayRun[s.hour] === 1
  let freezing = s.plate_C < s.freezeLimit_C
  if (s.freeze === 1) freezing = allowed && freezing
  else if (s.freeze === 2) freezing = allowed && s.plate_C < (s.freezeLimit_C > 0 ? s.freezeLimit_C : 0)
  s.isFreezing = freezing ? 1 : 0
  s.mayPump = allowed && s.rate_WK > 0 && (!freezing || s.freeze === 0)
}

/**
 * The band of switching of the hour: from the tank at which, with the plate in balance, the panel takes just the stop difference (of a tank in layers anything, of a mass that against it), and
 * no less than pump and pipes bring, to the start difference over that plate: `pump-duty.ts`, begin; `loop-flow.ts`, paysFrom_C.
 */
export function beginDuty(s: Flat): void {
  const { pipeShare: a, rate_WK } = s
  const balance_C = s.balances_C[s.hour]!
  const slope = s.field_frac * s.conductances_Wm2K[s.hour]!
  const factor = 1 / (1 + slope / s.fluidToPlate_Wm2K)
  const e = slope > 0 ? 1 - decay((factor * (slope * s.area_m2)) / rate_WK) : 0
  const p = (1 - a) * (1 - a) * (1 - e)
  const q = (1 - a) * e * balance_C + a * (1 + (1 - a) * (1 - e)) * s.outdoor_C + s.pump_W / rate_WK
  const against = 1 - (1 - e) * (1 - s.sinkShare)
  const pays_C = Math.max(balance_C + (s.stopDifference_K * against) / e, q / (1 - p))
  s.from_C = Math.max(balance_C + (s.leastDrop_K * against) / e, q / (1 - p))
  const wide_K = Math.max(balance_C + s.startDifference_K, pays_C) - s.from_C
  s.band_K = wide_K > NARROWEST_K ? wide_K : NARROWEST_K
}

/** The step solved for a share: what is left over the controller's limits, K: `kernel.ts`, slackAt; `pump-duty.ts`, slack_K; `plate-course.ts`, drop_K and gain_K. */
export function takeSlack(s: Flat): void {
  const { tankMean_C } = s
  const sinkEnd_C = s.layers === 0 ? tankMean_C : s.tank_C + s.tankEnd * (tankMean_C - s.tank_C)
  s.slack_K = sinkEnd_C - s.from_C - s.band_K * s.share
  if (s.share === 0) {
    if (s.slack_K < 0) return
    setFlow(s)
  }
  s.about_C = tankMean_C
  takeWater(s)
  const g = s.exchange_WK / s.rate_WK
  let drop_K = s.into_C - ((1 - g) * s.into_C + g * s.plateMean_C)
  if (s.layers === 0) {
    drop_K += Math.max(0, tankMean_C - s.into_C)
    s.back_C = Math.max(s.back_C, s.lowest_C)
    s.slack_K = Math.min(s.slack_K, s.airMean_C - s.setpoint_C + THERMOSTAT_K * (1 - s.share))
  }
  s.slack_K = Math.min(drop_K - s.leastDrop_K, tankMean_C - s.back_C, s.slack_K, sinkEnd_C - s.lowestStore_C)
}

/** The step solved with the largest share of the pump that the controller lets run: `pump-duty.ts`, shareUsed; a mass once more where that lets return water be blended in: `kernel.ts`, solveStep. */
export function solveWithPump(s: Flat): void {
  s.firstTried = s.mayPump && s.before > 0.5 ? 1 : 0
  s.trial = 0
  s.tried = s.firstTried
  for (;;) {
    s.share = s.tried
    s.remixes = false
    for (;;) {
      takePlate(s)
      if (s.layers === 0) solveMass(s)
      else solveStep(s)
      if (!s.remixes) break
    }
    if (!s.mayPump) break
    takeSlack(s)
    nextShare(s)
    if (s.isFound) break
  }
  s.before = s.share
}
