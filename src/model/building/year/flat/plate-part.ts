import { decay } from '#model/basis/numbers'
import { FULL_COVER_KGM2 } from '#model/panels/plate'
import { MEAN, SAME_K, SAME_KGM2, SHED, SLOPE, STRIDE, WATER } from '../resting-course.ts'
import { setCharging, setLoop, takeDrift } from './loop-part.ts'
import { askMixing, setMixedLoop } from './mass-part.ts'
import type { Flat } from './numbers.ts'
import { takeTangent } from './tangent-part.ts'
import { takeWaterAhead } from './water-part.ts'

const SHORT_STEP = 1e-4
const SHORT_RAMP = 1e-2
const DRYING_PARTS = 4
const BARED_SHARE = 0.05

/** Weights of one step: `plate-step.ts`, prepare. */
export function preparePlate(s: Flat): void {
  const pace_K_W = s.part_s * s.perCapacity_K_J
  const back_WK = s.shed_WK + s.fromPlate_WK
  const z = back_WK * pace_K_W
  const perZ = 1 / z
  const end = z > SHORT_STEP ? (1 - decay(z)) * perZ : 1 - z / 2
  const mean = z > SHORT_STEP ? (1 - end) * perZ : 0.5 - z / 6
  const perWatt = mean * pace_K_W
  s.meanSlope = perWatt * s.fromSink_WK
  s.meanOffset_C = s.plate_C + perWatt * (s.fromConst_W + s.rest_W - back_WK * s.plate_C)
  s.endWeight_K_W = end * pace_K_W
  s.endRamp_C = 0
  if (s.fromSink_WK === 0) return
  const ramp_C = s.fromSink_WK * s.drift_Ks * s.part_s * pace_K_W
  s.meanOffset_C += ramp_C * (z < SHORT_RAMP ? z / 24 - 1 / 12 : (end / 2 - mean) * perZ)
  s.endRamp_C = ramp_C * (z < SHORT_RAMP ? z / 12 : mean - end / 2)
}

/**
 * A plate running or at rest through a step: the tangent where it begins, the same for every share tried, or that
 * of a dry plate which rested in the same hour; then once more about the mean it leads to, twice where dew or drying change fast.
 * Running without a tank it is settled anew, from the tangent it has, where pipes would be supplied too cold for what the loop
 * charges: as a step begins, with the tangent about the mean, or (`remixes`) at the mean that the step was solved for.
 * `plate-alone.ts`, prepareAlone and refine; `plate-course.ts`, prepareRun, mustMix and prepareMixed.
 */
export function settlePlate(s: Flat): void {
  s.drift_Ks = s.sinkDrift_Ks
  s.at_C = s.plate_C
  s.atWater_kgm2 = s.water_kgm2
  const goesOn = s.share === 0 && s.hour === s.restHour && s.water_kgm2 === 0
  let takes = !goesOn && !s.hasBegun && !s.remixes
  if (!goesOn && s.hasBegun && !s.remixes) recallBegun(s)
  s.about_C = s.remixes ? s.tankMean_C : s.tank_C
  let rounds = 1
  for (let round = 0; ; round++) {
    if (takes) {
      takeTangent(s)
      if (round === 0) noteBegun(s)
    }
    if (round === 0 && s.share > 0) {
      if (s.isMixing === 1) setMixedLoop(s)
      else setLoop(s)
    }
    preparePlate(s)
    if (s.layers === 0 && s.share > 0 && s.isMixing < 1 && (round === 0 || round === rounds)) {
      askMixing(s)
      if (s.isMixing === 1) {
        takes = false
        round = -1
        continue
      }
    }
    if (round === 0) {
      if (s.share > 0) takeDrift(s)
      rounds = s.water_kgm2 > 0 || s.gain_kgm2s > 0 ? 2 : 1
    }
    if (round === rounds) break
    takes = true
    const sink_C = s.isMixing === 1 ? s.about_C : s.tank_C + 0.5 * s.step_s * s.drift_Ks
    s.at_C = s.meanSlope * sink_C + s.meanOffset_C
    s.ahead_s = 0.5 * s.part_s
    takeWaterAhead(s)
    s.atWater_kgm2 = s.waterAhead_kgm2
  }
}

/** Notes, or takes up again, the tangent where the step begins: `plate-alone.ts`, beginAtPlate. */
export function noteBegun(s: Flat): void {
  s.begunSlope_Wm2K = s.slope_Wm2K
  s.begunGain_kgm2s = s.gain_kgm2s
  s.begunShed_WK = s.shed_WK
  s.begunRest_W = s.rest_W
  s.hasBegun = true
}
export function recallBegun(s: Flat): void {
  s.slope_Wm2K = s.begunSlope_Wm2K
  s.gain_kgm2s = s.begunGain_kgm2s
  s.shed_WK = s.begunShed_WK
  s.rest_W = s.begunRest_W
}

/** At rest, read from the plate that never runs where this one is on its course: `plate-course.ts`, prepareRest. */
export function prepareRest(s: Flat): void {
  const n = STRIDE * s.restStep
  s.meanSlope = 0
  s.meanOffset_C = s.restRows[n + MEAN]!
  s.slope_Wm2K = s.restRows[n + SLOPE]!
}

/** The plate of a step with the pump's present share. */
export function takePlate(s: Flat): void {
  if (!s.remixes) s.isMixing = 0
  if (s.share === 0) {
    if (s.isOnRest === 1) {
      prepareRest(s)
      return
    }
    s.fromSink_WK = s.fromConst_W = s.fromPlate_WK = 0
  } else s.restHour = -1
  s.part_s = s.step_s
  settlePlate(s)
  if (s.share > 0) {
    if (s.layers < 2 && s.isMixing === 0) setCharging(s)
    return
  }
  s.restHour = s.hour
}

/** A part of a rest in which the plate dries off, from the tangent where it begins: `plate-alone.ts`, finishAlone. */
export function settlePart(s: Flat): void {
  s.at_C = s.plate_C
  s.atWater_kgm2 = s.water_kgm2
  let rounds = 0
  for (let round = 0; ; round++) {
    takeTangent(s)
    preparePlate(s)
    if (round === 0) rounds = s.water_kgm2 > 0 || s.gain_kgm2s > 0 ? 2 : 1
    if (round === rounds) break
    s.at_C = s.meanOffset_C
    s.ahead_s = 0.5 * s.part_s
    takeWaterAhead(s)
    s.atWater_kgm2 = s.waterAhead_kgm2
  }
}

/** The prepared rest is taken, in finer parts while it dries off: `plate-alone.ts`, finishAlone. */
export function finishAlone(s: Flat): void {
  let parts = 1
  if (s.water_kgm2 > 0 && s.water_kgm2 < 2 * FULL_COVER_KGM2)
    if (-s.begunGain_kgm2s * s.step_s > BARED_SHARE * FULL_COVER_KGM2) parts = DRYING_PARTS
  s.part_s = s.step_s / parts
  let given_J = 0
  for (let k = 0; k < parts; k++) {
    if (parts > 1) settlePart(s)
    given_J += s.part_s * (s.shed_WK * s.meanOffset_C - s.rest_W)
    s.ahead_s = s.part_s
    takeWaterAhead(s)
    s.water_kgm2 = s.waterAhead_kgm2
    s.plate_C += s.endWeight_K_W * (s.rest_W - s.shed_WK * s.plate_C)
  }
  s.shed_J += given_J
}

/** The rest is over; the course of the plate that never ran is taken up again where this one has come to it: `plate-course.ts`, finishRest. */
export function finishRest(s: Flat): void {
  const next = STRIDE * (s.restStep + 1)
  if (s.isOnRest === 1) {
    if (s.keepsBooks === 1) enterRest(s)
    s.plate_C = s.restRows[next]!
    s.water_kgm2 = s.restRows[next + WATER]!
    s.restStep++
    return
  }
  finishAlone(s)
  s.restStep++
  if (s.isOnRest < 0) return
  const warmer_K = s.plate_C - s.restRows[next]!
  const wetter_kgm2 = s.water_kgm2 - s.restRows[next + WATER]!
  if (!(warmer_K < SAME_K && warmer_K > -SAME_K && wetter_kgm2 < SAME_KGM2 && wetter_kgm2 > -SAME_KGM2))
    return
  s.isOnRest = 1
  s.shed_J += s.plateCapacity_JK * warmer_K
  s.plate_C = s.restRows[next]!
  s.water_kgm2 = s.restRows[next + WATER]!
}

/** What the plate gave off in a step read from the course of the one that never runs: `plate-course.ts`, finishRest. */
export function enterRest(s: Flat): void {
  s.shed_J += s.area_m2 * s.restRows[STRIDE * s.restStep + SHED]!
}
