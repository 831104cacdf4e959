import { slopeAt, valueAt } from '#model/air/polynomial.ts'
import { saturationFast_Pa } from '#model/air/saturation-table.ts'
import { faceConvection_Wm2K, faceConvectionRise_Wm2K2, faceRoot } from '#model/panel/face-convection.ts'
import { faceEvaporation_kgm2s, vapourSlope_Wm2K } from '#model/panel/face-vapour.ts'
import { reducedGapHeat_Wm2, reducedGapSlope_Wm2K } from '#model/panel/film-gap.ts'
import type { PanelHours, PanelTangent } from '#model/panel/hours.ts'
import { changeHeat_Jkg } from '#model/panel/water.ts'

/** The film is solved when Newton's next step is below this, K; that step is carried on to the heat. */
const FILM_STEP_K = 0.05
const MOST_STEPS = 25
/** The film is never this much colder or hotter than both plate and air, K. */
const FILM_REACH_K = 80

/**
 * Adds the dry or wet share of a plate under a film, weighted. The film's own balance is solved by Newton's rule from
 * where it stands at equilibrium, one or two steps as a rule, halving the bracket where a step leaves it. One function
 * for solving and reading, since it is called in every step of the year and each value would be worked out twice.
 * @param limit_kgm2s  fastest evaporation (0 on the dry share)
 * @returns the film's temperature, °C
 */
export function filmPart(
  panel: PanelHours,
  hour: number,
  plate_C: number,
  isWet: boolean,
  weight: number,
  limit_kgm2s: number,
  out: PanelTangent,
): number {
  const exchange = isWet ? panel.wetExchange : panel.dryExchange
  const gain = isWet ? panel.wetGain : panel.dryGain
  const gained = gain.film_Wm2[hour]! + valueAt(exchange.plateToFilm, plate_C)
  const air = panel.air_C[hour]!
  let low = (plate_C < air ? plate_C : air) - FILM_REACH_K
  let high = (plate_C > air ? plate_C : air) + FILM_REACH_K
  let film = panel.surface_C[hour]! + panel.surfaceSlope[hour]! * (plate_C - panel.equilibrium_C[hour]!)
  let step = 0
  let gapHeat = 0
  let gapSlope = 0
  let filmSlope = 1
  let evaporation = 0
  let vapourSlope = 0
  for (let i = 0; i < MOST_STEPS; i++) {
    gapHeat = reducedGapHeat_Wm2(panel, hour, plate_C, film)
    gapSlope = reducedGapSlope_Wm2K(panel, hour, plate_C, film)
    const y = film - air
    const root = faceRoot(panel, y)
    const h = faceConvection_Wm2K(panel, hour, y, root)
    const rise = faceConvectionRise_Wm2K2(panel, hour, y, root)
    let imbalance = valueAt(exchange.filmEmission, film) - gained + h * y - gapHeat
    filmSlope = slopeAt(exchange.filmEmission, film) + h + y * rise + gapSlope
    const excess_Pa = saturationFast_Pa(film) - panel.vapour_Pa[hour]!
    evaporation = 0
    vapourSlope = 0
    if (isWet || excess_Pa < 0) {
      evaporation = faceEvaporation_kgm2s(panel, hour, h, excess_Pa, limit_kgm2s)
      vapourSlope = vapourSlope_Wm2K(panel, hour, film, h, rise, excess_Pa, evaporation, limit_kgm2s)
      imbalance += changeHeat_Jkg(film) * evaporation
      filmSlope += vapourSlope
    }
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
  const carried = evaporation + (vapourSlope * step) / changeHeat_Jkg(film)
  out.water_kgm2s -= weight * (carried < limit_kgm2s ? carried : limit_kgm2s)
  return film + step
}
