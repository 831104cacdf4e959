import {
  EVAPORATION_HEAT_FALL_JKGK,
  EVAPORATION_HEAT_JKG,
  LOWEST_C,
  SEGMENTS,
  STEPS_PER_K,
  STILL_SPAN_K,
  SUBLIMATION_HEAT_JKG,
} from '#model/outdoors/air'
import type { Flat } from './numbers.ts'

/** A face freezes and melts in patches over this much either side of 0 °C, K. */
const PATCHY_K = 0.5

/** Heat leaving a bare plate, its slope and the water gained at `at_C`: `panels/plate/tangent.ts`, bareTangent. */
export function takeBareTangent(s: Flat): void {
  s.face_C = s.at_C
  convect(s)
  evaporate(s)
  radiate(s)
  const y = s.at_C - s.faceAir_C
  const through = s.backLoss_Wm2K + s.h_Wm2K
  const active = s.evaporation_kgm2s < 0 ? 1 : s.wet_frac
  const heat_Jkg = active * s.change_Jkg
  s.q_Wm2 = through * y + s.radiated_Wm2 + heat_Jkg * s.evaporation_kgm2s
  s.slope_Wm2K = through + y * s.riseOfH_Wm2K2 + s.radiatedSlope_Wm2K + heat_Jkg * s.evaporationSlope_kgm2sK
  s.gain_kgm2s = -active * s.evaporation_kgm2s
}

/** Convection at the face, the plate or a film over it: `face.ts`, convect. */
export function convect(s: Flat): void {
  const y = s.face_C - s.faceAir_C
  const distance = y < 0 ? -y : y
  if (distance < STILL_SPAN_K) {
    s.h_Wm2K = s.still_Wm2K + s.stillRise_Wm2K2 * y
    s.riseOfH_Wm2K2 = s.stillRise_Wm2K2
    return
  }
  const span_K = y < 0 ? s.coldSpan_K : s.hotSpan_K
  const c1 = y < 0 ? s.cold1 : s.hot1
  const c2 = y < 0 ? s.cold2 : s.hot2
  const c3 = y < 0 ? s.cold3 : s.hot3
  const w = Math.sqrt(Math.sqrt(distance < span_K ? distance : span_K))
  s.h_Wm2K = (y < 0 ? s.cold0 : s.hot0) + w * (c1 + w * (c2 + w * c3))
  s.riseOfH_Wm2K2 = distance < span_K ? (0.25 * w * (c1 + w * (2 * c2 + w * 3 * c3))) / y : 0
}

/** Dew, frost and drying: `face.ts`, evaporate. */
export function evaporate(s: Flat): void {
  const { face_C, limit_kgm2s, saturation_Pa, h_Wm2K } = s
  const place = (face_C - LOWEST_C) * STEPS_PER_K
  const i = place < 0 ? 0 : place < SEGMENTS ? Math.floor(place) : SEGMENTS - 1
  const from_Pa = saturation_Pa[i]!
  const step_Pa = saturation_Pa[i + 1]! - from_Pa
  const excess_Pa = from_Pa + step_Pa * (place - i) - s.vapour_Pa
  s.evaporation_kgm2s = s.evaporationSlope_kgm2sK = s.change_Jkg = 0
  if (excess_Pa >= 0 && limit_kgm2s === 0) return
  s.change_Jkg = EVAPORATION_HEAT_JKG - EVAPORATION_HEAT_FALL_JKGK * face_C
  if (face_C <= -PATCHY_K) s.change_Jkg = SUBLIMATION_HEAT_JKG
  else if (face_C < PATCHY_K) {
    const melted = (face_C + PATCHY_K) / (2 * PATCHY_K)
    s.change_Jkg = SUBLIMATION_HEAT_JKG + (s.change_Jkg - SUBLIMATION_HEAT_JKG) * melted
  }
  const wish = s.massTransfer * h_Wm2K * excess_Pa
  s.evaporation_kgm2s = wish < limit_kgm2s ? wish : limit_kgm2s
  const slope = h_Wm2K * step_Pa * STEPS_PER_K + s.riseOfH_Wm2K2 * excess_Pa
  if (wish < limit_kgm2s && slope > 0) s.evaporationSlope_kgm2sK = s.massTransfer * slope
}

/** Longwave and irradiance, out less in, dry and wet share together: `face.ts`, radiate. */
export function radiate(s: Flat): void {
  const { at_C: T, wet_frac: wet } = s
  let { dry0: p0, dry1: p1, dry2: p2, dry3: p3, dry4: p4, dry5: p5 } = s
  if (wet === 1) {
    p0 = s.wet0
    p1 = s.wet1
    p2 = s.wet2
    p3 = s.wet3
    p4 = s.wet4
    p5 = s.wet5
  } else if (wet > 0) {
    p0 += wet * (s.wet0 - p0)
    p1 += wet * (s.wet1 - p1)
    p2 += wet * (s.wet2 - p2)
    p3 += wet * (s.wet3 - p3)
    p4 += wet * (s.wet4 - p4)
    p5 += wet * (s.wet5 - p5)
  }
  const gain_Wm2 = s.dryGain_Wm2 + wet * (s.wetGain_Wm2 - s.dryGain_Wm2)
  s.radiated_Wm2 = p0 + T * (p1 + T * (p2 + T * (p3 + T * (p4 + T * p5)))) - gain_Wm2
  s.radiatedSlope_Wm2K = p1 + T * (2 * p2 + T * (3 * p3 + T * (4 * p4 + T * 5 * p5)))
}
