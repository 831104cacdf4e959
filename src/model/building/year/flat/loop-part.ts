import { SMALL_SLOPE_Wm2K } from '../panel-exchange.ts'
import { decay } from '#model/basis/numbers'
import type { Flat } from './numbers.ts'
import { takeWaterAhead } from './water-part.ts'

/** The running loop's relations for the plate's slope: `panel-exchange.ts`; `loop-flow.ts`, set. */
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
  if (s.sinkShare === 1) return
  const kept = 1 - s.sinkShare
  const own = 1 / (1 - kept * s.backTop)
  s.topSink = s.sinkShare * own
  s.topPlate = kept * s.backPlate * own
  s.topConst_C = kept * s.backConst_C * own
}

/** The loop as the plate meets it for the pump's share: `plate-step.ts`, setLoop. */
export function setLoop(s: Flat): void {
  setFlow(s)
  const shared_WK = s.share * s.exchange_WK
  const toInlet_WK = shared_WK * (1 - s.pipeShare)
  s.fromSink_WK = toInlet_WK * s.topSink
  s.fromConst_W = toInlet_WK * s.topConst_C + shared_WK * s.pipeShare * s.outdoor_C
  s.fromPlate_WK = shared_WK - toInlet_WK * s.topPlate
}

/** What comes back where the loop charges the mean `about_C`, no return water blended in: `plate-course.ts`, supply_C. */
export function takeBack(s: Flat): void {
  const { about_C } = s
  s.plateMean_C = s.meanSlope * about_C + s.meanOffset_C
  s.top_C = s.topSink * about_C + s.topPlate * s.plateMean_C + s.topConst_C
  s.back_C = s.backTop * s.top_C + s.backPlate * s.plateMean_C + s.backConst_C
}

/** The same as it is, and what goes into the panel: `loop-flow.ts`, into_C; `mixed-supply.ts`, top_C. */
export function takeWater(s: Flat): void {
  takeBack(s)
  if (s.isMixing === 1) {
    s.top_C = s.sinkShare * s.about_C + (1 - s.sinkShare) * s.lowest_C
    s.back_C = s.lowest_C
  }
  s.into_C = (1 - s.pipeShare) * s.top_C + s.pipeShare * s.outdoor_C
}

/** How fast the loop changes the tank's top where its share is another than before: `plate-course.ts`, chargingDrift_Ks. */
export function takeDrift(s: Flat): void {
  if (s.layers === 0 || s.share === s.before) return
  const renewed_1s = Math.min(s.rate_WK / s.tankCapacity_JK, 2 / s.step_s)
  s.about_C = s.tank_C
  takeBack(s)
  s.drift_Ks = s.sinkDrift_Ks + (s.share - s.before) * (renewed_1s * (s.back_C - s.tank_C))
}

/** What the running loop brings a mixed tank, or what it charges without one: `plate-course.ts`, setCharging. */
export function setCharging(s: Flat): void {
  const { share, rate_WK } = s
  const fromTop = share * rate_WK * (s.backTop - 1)
  const fromPlate = fromTop * s.topPlate + share * rate_WK * s.backPlate
  const constant_W = fromTop * s.topConst_C + share * rate_WK * s.backConst_C
  s.charging_W = constant_W + fromPlate * s.meanOffset_C
  s.charging_WK = -(fromTop * s.topSink + fromPlate * s.meanSlope)
}

/** Running plate, its water and its books at the step's end: `plate-course.ts`, finishRun. */
export function finishRun(s: Flat): void {
  const back_WK = s.shed_WK + s.fromPlate_WK
  if (s.keepsBooks === 1) enterRun(s)
  const net_W = s.fromSink_WK * s.tankMean_C + s.fromConst_W + s.rest_W - back_WK * s.plate_C
  s.ahead_s = s.step_s
  takeWaterAhead(s)
  s.water_kgm2 = s.waterAhead_kgm2
  s.plate_C = s.plate_C + s.endWeight_K_W * net_W + s.endRamp_C
  s.restStep++
  if (s.isOnRest === 1) s.isOnRest = 0
}

/** Heat and water of the running loop in a step: `plate-course.ts`, finishRun. */
export function enterRun(s: Flat): void {
  const { outdoor_C } = s
  const ran_s = s.step_s * s.share
  const g = s.exchange_WK / s.rate_WK
  s.about_C = s.tankMean_C
  takeWater(s)
  let return_C = (1 - g) * s.into_C + g * s.plateMean_C
  let taken_W = s.exchange_WK * (s.into_C - s.plateMean_C)
  if (s.isMixing === 1) {
    return_C = s.lowest_C
    taken_W = (s.fromSink_WK * s.tankMean_C + s.fromConst_W) / s.share
  }
  s.shed_J += s.step_s * (s.shed_WK * s.plateMean_C - s.rest_W)
  s.taken_J += ran_s * taken_W
  s.pipes_J += ran_s * (s.rate_WK * s.pipeShare * (outdoor_C - s.top_C + (outdoor_C - return_C)))
  s.pump_J += ran_s * s.pump_W
  s.return_Cs += ran_s * return_C
  s.run_s += ran_s
}
