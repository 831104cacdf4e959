import { KELVIN_OFFSET } from '#model/basis/units'
import { LN_6310, STILL_RAYLEIGH } from '#model/outdoors/air'
import {
  CONDUCTIVITY_AT_0,
  CONDUCTIVITY_SLOPE,
  FILM_REACH_K,
  FILM_STEP_K,
  MOST_FILM_STEPS,
  SECOND_ONSET,
} from '#model/panels/plate'
import { convect, evaporate } from './face-part.ts'
import {
  FILM_C,
  FILM_DRY_WM2,
  FILM_EMISSION,
  FILM_SLOPE,
  FILM_TO_PLATE,
  FLUTTER_WM2K,
  ONSET_K,
  PER_EXCHANGE,
  PER_FILM,
  PLATE_EMISSION,
  PLATE_TO_FILM,
} from './film-rows.ts'
import type { Flat } from './numbers.ts'

/** Heat leaving a plate under a film, its slope and the water gained, its dry and wet share each with a film of its own: `panels/plate/tangent.ts`, filmTangent. */
export function takeFilmTangent(s: Flat): void {
  const wetLimit_kgm2s = s.limit_kgm2s
  s.q_Wm2 = s.backLoss_Wm2K * (s.at_C - s.faceAir_C)
  s.slope_Wm2K = s.backLoss_Wm2K
  s.gain_kgm2s = 0
  for (let k = 0; k < 2; k++) {
    s.filmSide = k
    s.filmShare = k === 0 ? 1 - s.wet_frac : s.wet_frac
    s.limit_kgm2s = k === 0 ? 0 : wetLimit_kgm2s
    if (s.filmShare > 0) takeFilmShare(s)
  }
}

/** The dry or wet share, weighted; its film solved by Newton's rule in a bracket: `film-tangent.ts`, filmPart. */
export function takeFilmShare(s: Flat): void {
  const { filmRows, at_C, filmShare, faceAir_C } = s
  const row = PER_FILM * s.hour
  const from = PER_EXCHANGE * s.filmSide
  s.exchange_C = at_C
  s.exchangeAt = from + PLATE_TO_FILM
  takeExchange(s)
  const gained = filmRows[row + FILM_DRY_WM2 + s.filmSide]! + s.exchanged_Wm2
  const gainedSlope = s.exchangedSlope_Wm2K
  let coldest_C = (at_C < faceAir_C ? at_C : faceAir_C) - FILM_REACH_K
  let hottest_C = (at_C > faceAir_C ? at_C : faceAir_C) + FILM_REACH_K
  s.face_C = filmRows[row + FILM_C]! + filmRows[row + FILM_SLOPE]! * (at_C - s.balances_C[s.hour]!)
  let step = 0
  let filmSlope = 1
  for (let i = 0; i < MOST_FILM_STEPS; i++) {
    crossGap(s)
    convect(s)
    evaporate(s)
    s.exchange_C = s.face_C
    s.exchangeAt = from + FILM_EMISSION
    takeExchange(s)
    const above_K = s.face_C - faceAir_C
    const imbalance =
      s.exchanged_Wm2 - gained + s.h_Wm2K * above_K - s.gapHeat_Wm2 + s.change_Jkg * s.evaporation_kgm2s
    filmSlope =
      s.exchangedSlope_Wm2K +
      s.h_Wm2K +
      above_K * s.riseOfH_Wm2K2 +
      s.gapSlope_Wm2K +
      s.change_Jkg * s.evaporationSlope_kgm2sK
    step = -imbalance / filmSlope
    if (step < FILM_STEP_K && step > -FILM_STEP_K) break
    if (imbalance > 0) hottest_C = s.face_C
    else coldest_C = s.face_C
    const next_C = s.face_C + step
    s.face_C = next_C > coldest_C && next_C < hottest_C ? next_C : 0.5 * (coldest_C + hottest_C)
  }
  s.exchange_C = s.face_C
  s.exchangeAt = from + FILM_TO_PLATE
  takeExchange(s)
  const back_Wm2 = s.exchanged_Wm2
  const perFilm = -s.exchangedSlope_Wm2K - s.gapSlope_Wm2K
  const filmPerPlate = (gainedSlope + s.gapSlope_Wm2K) / filmSlope
  s.exchange_C = at_C
  s.exchangeAt = from + PLATE_EMISSION
  takeExchange(s)
  const plateGain_Wm2 = s.filmSide === 0 ? s.dryGain_Wm2 : s.wetGain_Wm2
  s.q_Wm2 += filmShare * (s.exchanged_Wm2 - back_Wm2 + s.gapHeat_Wm2 - plateGain_Wm2 + perFilm * step)
  s.slope_Wm2K += filmShare * (s.exchangedSlope_Wm2K + s.gapSlope_Wm2K + perFilm * filmPerPlate)
  const carried = s.evaporation_kgm2s + s.evaporationSlope_kgm2sK * step
  s.gain_kgm2s -= filmShare * (carried < s.limit_kgm2s ? carried : s.limit_kgm2s)
}

/** One of the polynomials of exchange and its slope: `basis/numbers/polynomial.ts`, valueAt and slopeAt. */
export function takeExchange(s: Flat): void {
  const { filmExchange, exchange_C: T } = s
  const p = s.exchangeAt | 0
  const p1 = filmExchange[p + 1]!
  const p2 = filmExchange[p + 2]!
  const p3 = filmExchange[p + 3]!
  const p4 = filmExchange[p + 4]!
  const p5 = filmExchange[p + 5]!
  s.exchanged_Wm2 = filmExchange[p]! + T * (p1 + T * (p2 + T * (p3 + T * (p4 + T * p5))))
  s.exchangedSlope_Wm2K = p1 + T * (2 * p2 + T * (3 * p3 + T * (4 * p4 + T * 5 * p5)))
}

/** Heat from plate to film through the gap, and its slope with the difference: `film-gap.ts`, cross. */
export function crossGap(s: Flat): void {
  const { filmRows } = s
  const flutter_Wm2K = filmRows[PER_FILM * s.hour + FLUTTER_WM2K]!
  const mean_C = 0.5 * (s.at_C + s.face_C)
  const difference_K = s.at_C - s.face_C
  s.gapHeat_K = difference_K
  s.gapSlope = 1
  if (difference_K > 0 || s.gapSine !== 0) {
    // `film-gap.ts`, onset_K.
    const warmer = (mean_C - s.faceAir_C) / (s.faceAir_C + KELVIN_OFFSET)
    const square = (1 + warmer) * (1 + warmer)
    s.onset_K = filmRows[PER_FILM * s.hour + ONSET_K]! * square * square * (1 + 0.62 * warmer)
    if (difference_K > 0) crossHotter(s)
    else crossColder(s)
  }
  const conduction_Wm2K = (CONDUCTIVITY_AT_0 + CONDUCTIVITY_SLOPE * mean_C) / s.gapWidth_m
  s.gapHeat_Wm2 = conduction_Wm2K * s.gapHeat_K + flutter_Wm2K * difference_K
  s.gapSlope_Wm2K = conduction_Wm2K * s.gapSlope + flutter_Wm2K
}

/** Convection of a plate hotter than the film: the same. */
export function crossHotter(s: Flat): void {
  const { onset_K } = s
  const difference_K = s.gapHeat_K
  if (difference_K <= onset_K) return
  const ratio = onset_K / difference_K
  const second_K = SECOND_ONSET * onset_K
  s.gapHeat_K += 1.44 * (1 - s.gapShear * ratio) * (difference_K - onset_K)
  s.gapSlope += 1.44 * (1 - s.gapShear * ratio * ratio)
  if (difference_K <= second_K) return
  const root = Math.cbrt(difference_K / second_K)
  s.gapHeat_K += (root - 1) * difference_K
  s.gapSlope += (4 / 3) * root - 1
}

/** Convection of a plate colder than the film, tilted: the same; `outdoors/air/upright-gap.ts`, uprightGap. */
export function crossColder(s: Flat): void {
  const rayleigh = (-1708 * s.gapHeat_K) / (s.onset_K * s.gapCosine)
  if (rayleigh < STILL_RAYLEIGH) return
  const log = Math.log(rayleigh)
  const onset = Math.exp(1.36 * (LN_6310 - log))
  const cell = (0.104 * Math.exp(0.293 * log)) / (1 + onset)
  const cubed = cell * cell * cell
  const turbulent = 0.0605 * Math.cbrt(rayleigh)
  const laminar = Math.cbrt(1 + cubed)
  let nusselt = laminar
  let growth = (cubed / (laminar * laminar)) * (0.293 + (1.36 * onset) / (1 + onset))
  if (turbulent > laminar) {
    nusselt = turbulent
    growth = turbulent / 3
  }
  s.gapHeat_K *= 1 + (nusselt - 1) * s.gapSine
  s.gapSlope += (nusselt - 1 + growth) * s.gapSine
}
