import { slopeAt, valueAt } from '#model/basis/numbers'
import type { Face } from './face.ts'
import type { PanelTangent } from './hours.ts'

/** The film is solved when Newton's next step is below this, K; that step is carried on to the heat. */
export const FILM_STEP_K = 0.05
export const MOST_FILM_STEPS = 25
/** The film is never this much colder or hotter than both plate and air, K. */
export const FILM_REACH_K = 80

/**
 * Adds the dry or wet share of a plate under a film, weighted. The film's own balance is solved by Newton's rule from
 * where it is at equilibrium, one or two steps as a rule, halving the bracket where a step leaves it. One function
 * for solving and reading, since it is called in every step of the year and each value would be worked out twice.
 * @param limit_kgm2s  fastest evaporation (0 on the dry share)
 * @returns the film's temperature, °C
 */
export function filmPart(
  face: Face,
  plate_C: number,
  isWet: boolean,
  weight: number,
  limit_kgm2s: number,
  out: PanelTangent,
): number {
  const panel = face.panel!
  const { hour, gap } = face
  const exchange = isWet ? panel.wetExchange : panel.dryExchange
  const gain = isWet ? panel.wetGain : panel.dryGain
  const gained = gain.film_Wm2[hour]! + valueAt(exchange.plateToFilm, plate_C)
  const air = face.air_C
  let low = (plate_C < air ? plate_C : air) - FILM_REACH_K
  let high = (plate_C > air ? plate_C : air) + FILM_REACH_K
  let film = panel.surface_C[hour]! + panel.surfaceSlope[hour]! * (plate_C - panel.equilibrium_C[hour]!)
  face.limit_kgm2s = limit_kgm2s
  let step = 0
  let gapHeat = 0
  let gapSlope = 0
  let filmSlope = 1
  for (let i = 0; i < MOST_FILM_STEPS; i++) {
    gap.cross(plate_C, film)
    gapHeat = gap.heat_Wm2
    gapSlope = gap.slope_Wm2K
    const y = film - air
    face.temp_C = film
    face.convect()
    face.evaporate()
    const imbalance =
      valueAt(exchange.filmEmission, film) -
      gained +
      face.h_Wm2K * y -
      gapHeat +
      face.changeHeat_Jkg * face.evaporation_kgm2s
    filmSlope =
      slopeAt(exchange.filmEmission, film) +
      face.h_Wm2K +
      y * face.rise_Wm2K2 +
      gapSlope +
      face.changeHeat_Jkg * face.evaporationSlope_kgm2sK
    step = -imbalance / filmSlope
    if (step < FILM_STEP_K && step > -FILM_STEP_K) break
    if (imbalance > 0) high = film
    else low = film
    const next = film + step
    film = next > low && next < high ? next : 0.5 * (low + high)
  }
  const perFilm = -slopeAt(exchange.filmToPlate, film) - gapSlope
  const filmPerPlate = (slopeAt(exchange.plateToFilm, plate_C) + gapSlope) / filmSlope
  const exchanged = valueAt(exchange.plateEmission, plate_C) - valueAt(exchange.filmToPlate, film) + gapHeat
  out.q_Wm2 += weight * (exchanged - gain.plate_Wm2[hour]! + perFilm * step)
  out.slope_Wm2K += weight * (slopeAt(exchange.plateEmission, plate_C) + gapSlope + perFilm * filmPerPlate)
  const carried = face.evaporation_kgm2s + face.evaporationSlope_kgm2sK * step
  out.water_kgm2s -= weight * (carried < limit_kgm2s ? carried : limit_kgm2s)
  return film + step
}
