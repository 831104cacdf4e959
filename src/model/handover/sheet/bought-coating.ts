import { blackbody_Wm2, WINDOW_EMISSION } from '#model/outdoors/air'
import { valueAt } from '#model/basis/numbers'
import { figure, words, type Wording } from '#model/basis/words'

/** A plate on a summer night, °C: the share of 8–13 µm in what it emits moves by 0.01 in 20 K. */
const PLATE_C = 15

/** What the year was reckoned with. */
export interface CoatingAsked {
  readonly fresh_frac: number
  /** As sized, `age_y` years after a wash. */
  readonly aged_frac: number
  readonly age_y: number
  readonly window_frac: number
  readonly offWindow_frac: number
}

/** Hemispherical emittance over all wavelengths of a plate at a summer night’s temperature. */
export function thermalEmittance_frac({ window_frac, offWindow_frac }: CoatingAsked): number {
  const share = valueAt(WINDOW_EMISSION, PLATE_C) / blackbody_Wm2(PLATE_C)
  return share * window_frac + (1 - share) * offWindow_frac
}

/** What any coating must measure that is bought in place of the recipe (methods: from memory). */
export function boughtCoating(asked: CoatingAsked, where = 'metal outdoors'): Wording {
  const { fresh_frac, aged_frac, age_y, window_frac } = asked
  const aged =
    age_y > 0 ? words` and ${figure(aged_frac, 'frac')} after ${figure(age_y, 'y')} outdoors` : words``
  return words`In its place any bought coating for ${where} whose data sheet or sample measures at least: solar reflectance ${figure(fresh_frac, 'frac')} fresh${aged} (ASTM E903 or C1549), thermal emittance ${figure(thermalEmittance_frac(asked), 'frac', 2)} (ASTM E408 or C1371), ${figure(window_frac, 'frac', 2)} at 8–13 µm (infrared spectrum; where it is not known, the thermal emittance); no metal flakes; thickness, coats and primer as its maker says`
}
