import { slopeAt, valueAt } from '#model/air/polynomial.ts'
import { saturationFast_Pa } from '#model/air/saturation-table.ts'
import { faceConvection_Wm2K, faceConvectionRise_Wm2K2, faceRoot } from '#model/panel/face-convection.ts'
import { faceEvaporation_kgm2s, vapourSlope_Wm2K } from '#model/panel/face-vapour.ts'
import { reducedGapHeat_Wm2, reducedGapSlope_Wm2K } from '#model/panel/film-gap.ts'
import type { PanelHours, PanelTangent } from '#model/panel/hours.ts'
import { changeHeat_Jkg } from '#model/panel/water.ts'

/** The film is solved when Newton's next step, which is still taken, is below this, K: what is left is its square. */
const FILM_STEP_K = 0.05
const MOST_STEPS = 25
/** The film is never this much colder or hotter than both plate and air, K. */
const FILM_REACH_K = 80

/**
 * Temperature of the film over a plate, °C: its own balance by Newton's rule from where it stands at equilibrium, one
 * or two steps as a rule, halving the bracket where a step leaves it.
 * @param limit_kgm2s  fastest evaporation (0 on the dry share)
 */
export function reducedFilm_C(
  panel: PanelHours,
  hour: number,
  plate_C: number,
  isWet: boolean,
  limit_kgm2s: number,
): number {
  const exchange = isWet ? panel.wetExchange : panel.dryExchange
  const gained =
    (isWet ? panel.wetGain : panel.dryGain).film_Wm2[hour]! + valueAt(exchange.plateToFilm, plate_C)
  const air = panel.air_C[hour]!
  let film = panel.surface_C[hour]! + panel.surfaceSlope[hour]! * (plate_C - panel.equilibrium_C[hour]!)
  let low = (plate_C < air ? plate_C : air) - FILM_REACH_K
  let high = (plate_C > air ? plate_C : air) + FILM_REACH_K
  for (let i = 0; i < MOST_STEPS; i++) {
    const y = film - air
    const root = faceRoot(panel, y)
    const h = faceConvection_Wm2K(panel, hour, y, root)
    const rise = faceConvectionRise_Wm2K2(panel, hour, y, root)
    let imbalance =
      valueAt(exchange.filmEmission, film) - gained + h * y - reducedGapHeat_Wm2(panel, hour, plate_C, film)
    let slope =
      slopeAt(exchange.filmEmission, film) + h + y * rise + reducedGapSlope_Wm2K(panel, hour, plate_C, film)
    const excess_Pa = saturationFast_Pa(film) - panel.vapour_Pa[hour]!
    if (isWet || excess_Pa < 0) {
      const evaporation = faceEvaporation_kgm2s(panel, hour, h, excess_Pa, limit_kgm2s)
      imbalance += changeHeat_Jkg(film) * evaporation
      slope += vapourSlope_Wm2K(panel, hour, film, h, rise, excess_Pa, evaporation, limit_kgm2s)
    }
    const next = film - imbalance / slope
    if (next - film < FILM_STEP_K && film - next < FILM_STEP_K) return next
    if (imbalance > 0) high = film
    else low = film
    film = next > low && next < high ? next : 0.5 * (low + high)
  }
  return film
}

/** Adds the dry or wet share of a plate under a film, weighted. @returns the film's temperature, °C */
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
  const gain = (isWet ? panel.wetGain : panel.dryGain).plate_Wm2[hour]!
  const film = reducedFilm_C(panel, hour, plate_C, isWet, limit_kgm2s)
  const y = film - panel.air_C[hour]!
  const root = faceRoot(panel, y)
  const h = faceConvection_Wm2K(panel, hour, y, root)
  const rise = faceConvectionRise_Wm2K2(panel, hour, y, root)
  const gapSlope = reducedGapSlope_Wm2K(panel, hour, plate_C, film)
  const excess_Pa = saturationFast_Pa(film) - panel.vapour_Pa[hour]!
  const evaporation = faceEvaporation_kgm2s(panel, hour, h, excess_Pa, limit_kgm2s)
  const filmSlope =
    slopeAt(exchange.filmEmission, film) +
    h +
    y * rise +
    gapSlope +
    vapourSlope_Wm2K(panel, hour, film, h, rise, excess_Pa, evaporation, limit_kgm2s)
  const filmPerPlate = (slopeAt(exchange.plateToFilm, plate_C) + gapSlope) / filmSlope
  out.q_Wm2 +=
    weight *
    (valueAt(exchange.plateEmission, plate_C) -
      gain -
      valueAt(exchange.filmToPlate, film) +
      reducedGapHeat_Wm2(panel, hour, plate_C, film))
  out.slope_Wm2K +=
    weight *
    (slopeAt(exchange.plateEmission, plate_C) +
      gapSlope -
      (slopeAt(exchange.filmToPlate, film) + gapSlope) * filmPerPlate)
  out.water_kgm2s -= weight * evaporation
  return film
}
