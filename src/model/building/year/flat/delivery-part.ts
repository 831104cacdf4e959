import type { Flat } from './numbers.ts'
import { LEAST_FLOW, SAME_FAN, SAME_FLOW } from '../delivery-law.ts'
import { solveLayers } from './layers-part.ts'
import { LAYER_LOSS_WK, PER_LAYER_HERE } from './places.ts'
import { meanStep } from './room-part.ts'
import { nextShare } from './share-part.ts'

/** Laws of `delivery-law.ts`. */
const CLOSED = 0
const THROTTLED = 1
const OPEN_TO_STORE = 2
const OPEN_AT_DEW_LIMIT = 3
const FADING_TO_STORE = 4
const FADING_AT_DEW_LIMIT = 5
const PARTLY_OPEN = 6
const DIFFERENCE_FLOOR_K = 0.1
const LAW_TRIES = 4

/** Air and tank as one linear system for their means, the tank eliminated: `kernel.ts`, setTank; `delivery.ts`, add; `hub-system.ts`. */
export function solveMeans(s: Flat): void {
  const { law, portShare, portBase_C } = s
  let own_WK = s.tankLoss_WK
  let drive_W = s.tankOutside === 1 ? s.topLoss_WK * s.outdoor_C : 0
  let airTank_WK = s.tankOutside === 1 ? 0 : -s.tankLoss_WK
  let tankAir_WK = airTank_WK
  let air_WK = s.room_WK - airTank_WK
  let air_W = s.roomDrive_W
  const layersEnd = s.layers > 1 && s.tankOutside === 0 ? PER_LAYER_HERE * s.layers : 0
  for (let i = LAYER_LOSS_WK; i < layersEnd; i += PER_LAYER_HERE) air_WK += s.layerRows[i]!
  if (s.share > 0) {
    own_WK += s.charging_WK
    drive_W += s.charging_W
  }
  if (s.meetsAir === 0) drive_W += s.fanShare * s.fan_W
  else air_W += s.fanShare * s.fan_W
  if (law !== CLOSED) {
    const fading = law === FADING_TO_STORE || law === FADING_AT_DEW_LIMIT
    const lost_K = fading ? s.faded_K : 0
    let seen_WK = fading ? s.fadingSeen_WK : s.openSeen_WK
    if (law === THROTTLED || law === OPEN_AT_DEW_LIMIT || law === FADING_AT_DEW_LIMIT) {
      let perAir_WK = s.demand_WK
      let given_W = s.demand_WK * s.setpoint_C
      if (law !== THROTTLED) {
        perAir_WK = seen_WK * portShare
        given_W = seen_WK * (s.lowest_C + lost_K - portBase_C)
      }
      air_WK += portShare * perAir_WK
      air_W += portShare * given_W
      tankAir_WK -= perAir_WK
      drive_W -= given_W
    } else {
      if (law === PARTLY_OPEN)
        seen_WK = (s.fanShare * s.open_WK) / (1 + s.portOwn_KW * (s.fanShare * s.open_WK))
      const above_C = lost_K - portBase_C
      air_WK += seen_WK * portShare * portShare
      air_W += seen_WK * portShare * above_C
      airTank_WK -= seen_WK * portShare
      tankAir_WK -= seen_WK * portShare
      own_WK += seen_WK
      drive_W -= seen_WK * above_C
    }
  }
  s.joined_WK = own_WK
  s.topAir_WK = tankAir_WK
  s.airBottom_WK = airTank_WK
  s.topDrive_W = drive_W
  s.airOwn_WK = air_WK
  s.airDrive_W = air_W
  if (s.layers > 1) solveLayers(s)
  else solveMixed(s)
}

/** The same of a mixed tank: `hub-system.ts`. */
export function solveMixed(s: Flat): void {
  const { step_s, airBottom_WK: airTank_WK } = s
  const pace = (s.joined_WK * step_s) / s.tankCapacity_JK
  if (pace !== s.tankPace) {
    s.tankPace = pace
    s.x = pace
    meanStep(s)
    s.tankEnd = s.endOverMean
  }
  const held_WK = (s.tankEnd * s.tankCapacity_JK) / step_s
  const perTank_K_W = 1 / (s.joined_WK + held_WK)
  const tankShare = s.topAir_WK * perTank_K_W
  const alone_C = (held_WK * s.tank_C + s.topDrive_W) * perTank_K_W
  s.airMean_C = (s.airDrive_W - airTank_WK * alone_C) * (1 / (s.airOwn_WK - airTank_WK * tankShare))
  s.tankMean_C = s.bottomMean_C = s.layersMean_C = alone_C - tankShare * s.airMean_C
}

/** Heat from the room under the present law at the solution: `delivery-heat.ts`, carried_W. */
export function takeCarried(s: Flat): void {
  const { law, airMean_C } = s
  if (law === CLOSED) s.heat_W = 0
  else if (law === THROTTLED) s.heat_W = s.demand_WK * (airMean_C - s.setpoint_C)
  else {
    const free_C = s.portShare * airMean_C + s.portBase_C
    const end_C = law === OPEN_AT_DEW_LIMIT || law === FADING_AT_DEW_LIMIT ? s.lowest_C : s.bottomMean_C
    if (law === PARTLY_OPEN)
      s.heat_W =
        ((s.fanShare * s.open_WK) / (1 + s.portOwn_KW * (s.fanShare * s.open_WK))) * (free_C - s.bottomMean_C)
    else if (law === FADING_TO_STORE || law === FADING_AT_DEW_LIMIT)
      s.heat_W = s.fadingSeen_WK * (free_C - end_C - s.faded_K)
    else s.heat_W = s.openSeen_WK * (free_C - end_C)
  }
}

/** What the open valve reaches at the solution: `open-valve.ts`, reaches_W. */
export function takeReach(s: Flat): void {
  const free_C = s.portShare * s.airMean_C + s.portBase_C
  const end_C = s.bottomMean_C > s.lowest_C ? s.bottomMean_C : s.lowest_C
  s.heat_W = s.openSeen_WK * (free_C - end_C)
  if (s.heat_W < s.open_WK * 2 * s.faded_K) s.heat_W = s.fadingSeen_WK * (free_C - end_C - s.faded_K)
}

/** Takes the law that holds at the solution, `changed` when it is another one: `delivery.ts`, changeLaw; `delivery-law.ts`, lawAfter. */
export function changeLaw(s: Flat): void {
  const { law: held, airMean_C, bottomMean_C, lowest_C } = s
  s.changed = false
  const over_K = airMean_C - s.setpoint_C
  if (held === CLOSED && over_K <= 0) {
    s.settled = 0
    if (s.fanShare > SAME_FAN) {
      s.fanShare = 0
      s.changed = true
    }
    return
  }
  s.changed = true
  if (s.spent || s.settled > 0) return
  if (held === THROTTLED || held === OPEN_AT_DEW_LIMIT || held === FADING_AT_DEW_LIMIT) {
    takeCarried(s)
    s.spent =
      s.layersMean_C > s.warmest_C &&
      s.layersMean_C > s.portShare * airMean_C + s.portBase_C + s.portOwn_KW * -s.heat_W
    if (s.spent) return
  }
  const demanded_W = s.demand_WK * over_K
  takeReach(s)
  const reach_W = s.heat_W
  const fading = reach_W < s.open_WK * 2 * s.faded_K
  if (demanded_W <= 0) s.law = held >= OPEN_TO_STORE ? THROTTLED : CLOSED
  else if (reach_W <= 0 && (held !== OPEN_TO_STORE || !(s.portShare * airMean_C + s.portBase_C > lowest_C)))
    s.law = CLOSED
  else if (reach_W > 0 && demanded_W < reach_W) s.law = THROTTLED
  else if (bottomMean_C >= lowest_C) s.law = fading ? FADING_TO_STORE : OPEN_TO_STORE
  else s.law = fading ? FADING_AT_DEW_LIMIT : OPEN_AT_DEW_LIMIT
  s.changed = s.law !== held
  if (s.changed) return
  s.foundShare = 0
  if (held !== CLOSED) {
    takeCarried(s)
    takeShare(s)
  }
  let isOther = Math.abs(s.foundShare - s.fanShare) > SAME_FAN
  if (s.layers > 1 && held !== CLOSED && held !== OPEN_TO_STORE) {
    const least = s.fanShare > LEAST_FLOW ? s.fanShare : LEAST_FLOW
    isOther = Math.abs((s.foundShare > LEAST_FLOW ? s.foundShare : LEAST_FLOW) - least) >= SAME_FLOW
  }
  if (isOther) {
    s.fanShare = s.foundShare
    s.changed = true
  }
}

/** Share of full output that `heat_W` is at the solution: `open-valve.ts`, share. */
export function takeShare(s: Flat): void {
  const least_W = s.open_WK * DIFFERENCE_FLOOR_K
  const full_W =
    s.open_WK * (s.portShare * s.airMean_C + s.portBase_C + s.portOwn_KW * -s.heat_W - s.bottomMean_C)
  const found = least_W > 0 ? s.heat_W / (full_W > least_W ? full_W : least_W) : 0
  s.foundShare = found < 0 ? 0 : found > 1 ? 1 : found
}

/** Heat that is asked for and let in less that carried, in terms of UA, K: `delivery.ts`, slackAt_K. */
export function takeSettleSlack(s: Flat): void {
  const asked_W = s.demand_WK * (s.airMean_C - s.setpoint_C)
  takeReach(s)
  const letIn_W = s.heat_W
  s.dewHolds = s.bottomMean_C < s.lowest_C && letIn_W < asked_W ? 1 : 0
  takeCarried(s)
  s.slack_K = ((letIn_W < asked_W ? letIn_W : asked_W) - s.heat_W) / s.open_WK
}

/** Room, delivery and tank of one step: `kernel.ts`, solveStep. */
export function solveStep(s: Flat): void {
  s.warmest_C = s.tank_C
  s.spent = false
  if (s.law === PARTLY_OPEN) s.law = CLOSED
  const ahead = 2 * s.latestShare - s.earlierShare
  s.fanShare = ahead < 0 ? 0 : ahead > 1 ? 1 : ahead
  for (let attempt = 0; ; attempt++) {
    solveMeans(s)
    changeLaw(s)
    if (!s.changed) return
    if (attempt >= LAW_TRIES || s.spent || s.settled > 0) break
  }
  settle(s)
}

/**
 * Where laws come to no end or a small tank is spent: the share of the flow found with its heat; the search for the pump's
 * share is put aside meanwhile. `delivery.ts`, settle.
 */
export function settle(s: Flat): void {
  const { low: low1, high: high1, lowSlack_K: lowSlack1, highSlack_K: highSlack1 } = s
  const { side: side1, trial: trial1, firstTried: first1, tried: tried1 } = s
  s.firstTried = s.settled > 0.5 ? 1 : 0
  s.tried = s.firstTried
  s.trial = 0
  for (;;) {
    s.fanShare = s.tried
    s.law = s.fanShare > 0 ? PARTLY_OPEN : CLOSED
    solveMeans(s)
    takeSettleSlack(s)
    nextShare(s)
    if (s.isFound) break
  }
  s.settled = s.fanShare
  s.low = low1
  s.high = high1
  s.lowSlack_K = lowSlack1
  s.highSlack_K = highSlack1
  s.side = side1
  s.trial = trial1
  s.firstTried = first1
  s.tried = tried1
}

/** Heat from room to tank and the share of full output at the solution: `delivery.ts`, enter. */
export function enterDelivery(s: Flat): void {
  takeCarried(s)
  s.delivered_W = s.heat_W
  s.portHeat_W = -s.heat_W
  s.earlierShare = s.latestShare
  if (s.law === CLOSED) s.latestShare = 0
  else if (s.law === PARTLY_OPEN) s.latestShare = s.fanShare
  else {
    takeShare(s)
    s.latestShare = s.foundShare
  }
}
