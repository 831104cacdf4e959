import { airConductivity_WmK, uprightGap, type UprightGap } from '#model/outdoors/air'
import type { PanelHours } from './hours.ts'
import { KELVIN_OFFSET } from '#model/basis/units'

/** Conductivity of air as a straight line through its values at −10 and 30 °C, W/m K. */
const CONDUCTIVITY_SLOPE = (airConductivity_WmK(30) - airConductivity_WmK(-10)) / 40
const CONDUCTIVITY_AT_0 = airConductivity_WmK(-10) + 10 * CONDUCTIVITY_SLOPE
/** Ra cos β at which the last term of the Hollands correlation sets in, over its first. */
const SECOND_ONSET = 5830 / 1708

/** Conduction through the still gap, W/m²K. */
function conduction_Wm2K(width_m: number, mean_C: number): number {
  return (CONDUCTIVITY_AT_0 + CONDUCTIVITY_SLOPE * mean_C) / width_m
}

/**
 * Plate-over-film difference at which convection starts, K: the hour's value at air temperature carried to the mean of
 * the gap by (1 + x)^4.62, x the way there over the air's absolute temperature (ν α T of air near 290 K), written
 * as a product.
 */
function onset_K(panel: PanelHours, hour: number, mean_C: number): number {
  const air_C = panel.air_C[hour]!
  const x = (mean_C - air_C) / (air_C + KELVIN_OFFSET)
  const square = (1 + x) * (1 + x)
  return panel.gap!.onset_K[hour]! * square * square * (1 + 0.62 * x)
}

const upright: UprightGap = { nusselt: 1, growth: 0 }

/** Convection in a tilted gap that is colder below: `uprightGap`, from the difference at which Ra cos β is 1708. */
function settleUpright(panel: PanelHours, hour: number, mean_C: number, difference: number): void {
  const { cosine } = panel.gap!
  uprightGap((-1708 * difference) / (onset_K(panel, hour, mean_C) * cosine), upright)
}

/** Heat from plate to film, W/m²: `gapHeat_Wm2` of the full balance, written in differences instead of Rayleigh numbers. */
export function reducedGapHeat_Wm2(panel: PanelHours, hour: number, plate_C: number, film_C: number): number {
  const { width_m, shear, sine, flutter_Wm2K } = panel.gap!
  const mean_C = 0.5 * (plate_C + film_C)
  const difference = plate_C - film_C
  const still = conduction_Wm2K(width_m, mean_C)
  const pumped = flutter_Wm2K[hour]! * difference
  if (difference <= 0) {
    if (sine === 0) return still * difference + pumped
    settleUpright(panel, hour, mean_C, difference)
    return still * (1 + (upright.nusselt - 1) * sine) * difference + pumped
  }
  const onset = onset_K(panel, hour, mean_C)
  if (difference <= onset) return still * difference + pumped
  let heat = difference + 1.44 * (1 - (shear * onset) / difference) * (difference - onset)
  const second = SECOND_ONSET * onset
  if (difference > second) heat += (Math.cbrt(difference / second) - 1) * difference
  return still * heat + pumped
}

/** Its slope with the difference, W/m²K. */
export function reducedGapSlope_Wm2K(
  panel: PanelHours,
  hour: number,
  plate_C: number,
  film_C: number,
): number {
  const { width_m, shear, sine, flutter_Wm2K } = panel.gap!
  const mean_C = 0.5 * (plate_C + film_C)
  const difference = plate_C - film_C
  const still = conduction_Wm2K(width_m, mean_C)
  const pumped = flutter_Wm2K[hour]!
  if (difference <= 0) {
    if (sine === 0) return still + pumped
    settleUpright(panel, hour, mean_C, difference)
    return still * (1 + (upright.nusselt - 1 + upright.growth) * sine) + pumped
  }
  const onset = onset_K(panel, hour, mean_C)
  if (difference <= onset) return still + pumped
  const ratio = onset / difference
  let slope = 1 + 1.44 * (1 - shear * ratio * ratio)
  const second = SECOND_ONSET * onset
  if (difference > second) slope += (4 / 3) * Math.cbrt(difference / second) - 1
  return still * slope + pumped
}
