import { SMALL_SLOPE_Wm2K } from '../panel-exchange.ts'
import { decay } from '#model/basis/numbers'
import type { Flat } from './numbers.ts'
import { takeWaterAhead } from './water-part.ts'

/** The running loop's relations for the plate's slope: `panel-exchange.ts` and `loop-flow.ts`, of a tank. */
export function setFlow(s: Flat): void {
  const { rate_WK, pipeShare: a, outdoor_C } = s
  const slope = s.slope_Wm2K * s.field_frac
  if (slope < SMALL_SLOPE_Wm2K)
    s.exchange_WK = s.area_m2 / (1 / s.fluidToPlate_Wm2K + s.area_m2 / (2 * rate_WK))
  else {
    const factor = 1 / (1 + slope / s.fluidToPlate_Wm2K)
    const taken_WK = rate_WK * (1 - decay((factor * (slope * s.area_m2)) / rate_WK))
    s.exchange_WK = taken_WK / (1 - taken_WK / (slope * s.area_m2))
  }
  const g = s.exchange_WK / rate_WK
  s.backTop = (1 - a) * (1 - a) * (1 - g)
  s.backPlate = (1 - a) * g
  s.backConst_C = (1 - a) * (1 - g) * a * outdoor_C + a * outdoor_C + s.pump_W / rate_WK
}

/** The loop as the plate meets it for the pump's share: `plate-step.ts`, setLoop. */
export function setLoop(s: Flat): void {
  setFlow(s)
  const shared_WK = s.share * s.exchange_WK
  s.fromSink_WK = shared_WK * (1 - s.pipeShare)
  s.fromConst_W = shared_WK * s.pipeShare * s.outdoor_C
  s.fromPlate_WK = shared_WK
}

/** How fast the loop changes the tank's top where its share is another than before: `plate-course.ts`, chargingDrift_Ks. */
export function takeDrift(s: Flat): void {
  if (s.share === s.before) return
  const renewed_1s = Math.min(s.rate_WK / s.tankCapacity_JK, 2 / s.step_s)
  const mean_C = s.meanSlope * s.tank_C + s.meanOffset_C
  const back_C = s.backTop * s.tank_C + s.backPlate * mean_C + s.backConst_C
  s.drift_Ks = s.sinkDrift_Ks + (s.share - s.before) * (renewed_1s * (back_C - s.tank_C))
}

/** What the running loop brings the tank: `plate-course.ts`, setCharging. */
export function setCharging(s: Flat): void {
  const { share, rate_WK } = s
  const fromTop = share * rate_WK * (s.backTop - 1)
  const fromPlate = share * rate_WK * s.backPlate
  s.charging_W = share * rate_WK * s.backConst_C + fromPlate * s.meanOffset_C
  s.charging_WK = -(fromTop + fromPlate * s.meanSlope)
}

/** Running plate, its water and its books at the step's end: `plate-course.ts`, finishRun. */
export function finishRun(s: Flat): void {
  const { tankMean_C, pipeShare: a, outdoor_C } = s
  const back_WK = s.shed_WK + s.fromPlate_WK
  if (s.keepsBooks === 1) {
    const plateMean_C = s.meanSlope * tankMean_C + s.meanOffset_C
    const ran_s = s.step_s * s.share
    const g = s.exchange_WK / s.rate_WK
    const into_C = (1 - a) * tankMean_C + a * outdoor_C
    const return_C = (1 - g) * into_C + g * plateMean_C
    s.shed_J += s.step_s * (s.shed_WK * plateMean_C - s.rest_W)
    s.taken_J += ran_s * (s.exchange_WK * (into_C - plateMean_C))
    s.pipes_J += ran_s * (s.rate_WK * a * (outdoor_C - tankMean_C + (outdoor_C - return_C)))
    s.pump_J += ran_s * s.pump_W
    s.return_Cs += ran_s * return_C
    s.run_s += ran_s
  }
  const net_W = s.fromSink_WK * tankMean_C + s.fromConst_W + s.rest_W - back_WK * s.plate_C
  s.ahead_s = s.step_s
  takeWaterAhead(s)
  s.water_kgm2 = s.waterAhead_kgm2
  s.plate_C = s.plate_C + s.endWeight_K_W * net_W + s.endRamp_C
  s.restStep++
  if (s.isOnRest === 1) s.isOnRest = 0
}
