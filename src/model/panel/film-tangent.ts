import { airConductivity_WmK } from '#model/air/air-properties.ts'
import { slopeAt, valueAt } from '#model/air/polynomial.ts'
import { saturationFast_Pa, saturationFastSlope_PaK } from '#model/air/saturation-table.ts'
import { faceConvection_Wm2K, faceConvectionRise_Wm2K2, vapourSlope } from '#model/panel/face-convection.ts'
import type { PanelHours, PanelTangent } from '#model/panel/hours.ts'
import { changeHeat_Jkg } from '#model/panel/water.ts'
import { KELVIN_OFFSET } from '#model/units/convert.ts'

/** Conductivity of air as a straight line through its values at −10 and 30 °C, W/m K. */
const CONDUCTIVITY_SLOPE = (airConductivity_WmK(30) - airConductivity_WmK(-10)) / 40
const CONDUCTIVITY_AT_0 = airConductivity_WmK(-10) + 10 * CONDUCTIVITY_SLOPE
/** Ra cos β at which the last term of the Hollands correlation sets in, over its first. */
const SECOND_ONSET = 5830 / 1708
/**
 * Change of the onset of gap convection with the mean temperature of the gap: (1 + x)^4.62, x its distance from the
 * air over the air's absolute temperature (ν α T of air goes as T^4.62 near 290 K), as a product.
 */
function onsetChange(x: number): number {
  const square = (1 + x) * (1 + x)
  return square * square * (1 + 0.62 * x)
}

/** The film is solved until its step is below this, K; the step left over is carried on to the heat. */
const FILM_STEP_K = 0.02
const MOST_STEPS = 25
/** The film is never this much colder or hotter than both plate and air, K. */
const FILM_REACH_K = 80

/**
 * Adds the dry or wet share of a plate under a film, weighted. The film's balance is solved by Newton's rule from
 * its temperature at equilibrium, one or two steps as a rule, halving the bracket where a step leaves it.
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
  const gap = panel.gap!
  const air = panel.air_C[hour]!
  const vapour = panel.vapour_Pa[hour]!
  const perConvection = panel.massTransfer[hour]!
  const onsetAtAir = gap.onset_K[hour]!
  const toFilm = gain.film_Wm2[hour]! + valueAt(exchange.plateToFilm, plate_C)
  let film = panel.surface_C[hour]! + panel.surfaceSlope[hour]! * (plate_C - panel.equilibrium_C[hour]!)
  let low = (plate_C < air ? plate_C : air) - FILM_REACH_K
  let high = (plate_C > air ? plate_C : air) + FILM_REACH_K
  let step = 0
  let gapHeat = 0
  let gapSlope = 0
  let faceSlope = 0
  let evaporation = 0
  for (let i = 0; i < MOST_STEPS; i++) {
    // The gap: conduction, and the two terms of Hollands 1976 once the plate is hotter by the onset.
    const difference = plate_C - film
    const mean = 0.5 * (plate_C + film)
    const conduction = (CONDUCTIVITY_AT_0 + CONDUCTIVITY_SLOPE * mean) / gap.width_m
    gapHeat = difference
    gapSlope = 1
    const onset = onsetAtAir * onsetChange((mean - air) / (air + KELVIN_OFFSET))
    if (difference > onset) {
      const ratio = (gap.shear * onset) / difference
      gapHeat += 1.44 * (1 - ratio) * (difference - onset)
      gapSlope += 1.44 * (1 - (ratio * onset) / difference)
      if (difference > SECOND_ONSET * onset) {
        const root = Math.cbrt(difference / (SECOND_ONSET * onset))
        gapHeat += (root - 1) * difference
        gapSlope += (4 / 3) * root - 1
      }
    }
    gapHeat *= conduction
    gapSlope *= conduction
    // The outer face: convection and, where wet or below the dew point, vapour.
    const y = film - air
    const h = faceConvection_Wm2K(panel, hour, y)
    const rise = faceConvectionRise_Wm2K2(panel, hour, y)
    let face = h * y
    faceSlope = slopeAt(exchange.filmEmission, film) + h + y * rise
    const excess_Pa = saturationFast_Pa(film) - vapour
    evaporation = 0
    if (isWet || excess_Pa < 0) {
      const heat = changeHeat_Jkg(film)
      evaporation = perConvection * h * excess_Pa
      if (evaporation < limit_kgm2s) {
        faceSlope += heat * perConvection * vapourSlope(h, rise, saturationFastSlope_PaK(film), excess_Pa)
      } else evaporation = limit_kgm2s
      face += heat * evaporation
    }
    const imbalance = valueAt(exchange.filmEmission, film) - toFilm + face - gapHeat
    step = -imbalance / (faceSlope + gapSlope)
    if (step < FILM_STEP_K && step > -FILM_STEP_K) break
    if (imbalance > 0) high = film
    else low = film
    const next = film + step
    film = next > low && next < high ? next : 0.5 * (low + high)
  }
  // Heat at the last film temperature, carried over the small step that was left.
  const toPlateSlope = slopeAt(exchange.filmToPlate, film)
  const perFilm = -toPlateSlope - gapSlope
  const filmPerPlate = (slopeAt(exchange.plateToFilm, plate_C) + gapSlope) / (faceSlope + gapSlope)
  out.q_Wm2 +=
    weight *
    (valueAt(exchange.plateEmission, plate_C) -
      gain.plate_Wm2[hour]! -
      valueAt(exchange.filmToPlate, film) +
      gapHeat +
      perFilm * step)
  out.slope_Wm2K += weight * (slopeAt(exchange.plateEmission, plate_C) + gapSlope + perFilm * filmPerPlate)
  out.water_kgm2s -= weight * evaporation
  return film + step
}
