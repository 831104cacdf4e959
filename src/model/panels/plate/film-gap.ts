import { airConductivity_WmK, uprightGap, type UprightGap } from '#model/outdoors/air'
import type { PanelHours } from './hours.ts'
import { KELVIN_OFFSET } from '#model/basis/units'

/** Conductivity of air as a straight line through its values at −10 and 30 °C, W/m K. */
export const CONDUCTIVITY_SLOPE = (airConductivity_WmK(30) - airConductivity_WmK(-10)) / 40
export const CONDUCTIVITY_AT_0 = airConductivity_WmK(-10) + 10 * CONDUCTIVITY_SLOPE
/** Ra cos β at which the last term of the Hollands correlation sets in, over its first. */
export const SECOND_ONSET = 5830 / 1708

/**
 * The gap between plate and film in one hour: that hour's numbers copied once, as `Face` does, and what the gap does at two
 * temperatures: `gapHeat_Wm2` of the full balance, written in differences instead of Rayleigh numbers.
 */
export class FilmGap {
  /** Heat from plate to film, W/m², and its slope with the difference, W/m²K (`cross`). */
  heat_Wm2 = 0
  slope_Wm2K = 0
  private air_C = 0
  private width_m = 0
  private shear = 0
  private sine = 0
  private cosine = 0
  private flutter_Wm2K = 0
  private hourOnset_K = 0
  private readonly upright: UprightGap = { nusselt: 1, growth: 0 }

  /** Copies one hour of a panel under a film. */
  set(gap: NonNullable<PanelHours['gap']>, air_C: number, hour: number): void {
    this.air_C = air_C
    this.width_m = gap.width_m
    this.shear = gap.shear
    this.sine = gap.sine
    this.cosine = gap.cosine
    this.flutter_Wm2K = gap.flutter_Wm2K[hour]!
    this.hourOnset_K = gap.onset_K[hour]!
  }

  /** Heat and slope at two temperatures. */
  cross(plate_C: number, film_C: number): void {
    const mean_C = 0.5 * (plate_C + film_C)
    const difference = plate_C - film_C
    const still = (CONDUCTIVITY_AT_0 + CONDUCTIVITY_SLOPE * mean_C) / this.width_m
    let heat = difference
    let slope = 1
    if (difference <= 0) {
      if (this.sine !== 0) {
        const { upright, sine } = this
        uprightGap((-1708 * difference) / (this.onset_K(mean_C) * this.cosine), upright)
        heat *= 1 + (upright.nusselt - 1) * sine
        slope += (upright.nusselt - 1 + upright.growth) * sine
      }
    } else {
      const onset = this.onset_K(mean_C)
      if (difference > onset) {
        const ratio = onset / difference
        const second = SECOND_ONSET * onset
        heat += 1.44 * (1 - this.shear * ratio) * (difference - onset)
        slope += 1.44 * (1 - this.shear * ratio * ratio)
        if (difference > second) {
          const root = Math.cbrt(difference / second)
          heat += (root - 1) * difference
          slope += (4 / 3) * root - 1
        }
      }
    }
    this.heat_Wm2 = still * heat + this.flutter_Wm2K * difference
    this.slope_Wm2K = still * slope + this.flutter_Wm2K
  }

  /**
   * Plate-over-film difference at which convection starts, K: the hour's value at air temperature carried to the mean of
   * the gap by (1 + x)^4.62, x the way there over the air's absolute temperature (ν α T of air near 290 K), written
   * as a product.
   */
  private onset_K(mean_C: number): number {
    const x = (mean_C - this.air_C) / (this.air_C + KELVIN_OFFSET)
    const square = (1 + x) * (1 + x)
    return this.hourOnset_K * square * square * (1 + 0.62 * x)
  }
}
