import type { CoatingOptics, FilmOptics } from '#model/panels/coating'
import type { PanelSpec } from '#model/panels/plate'

/** A near-black radiator, white in the sun. */
export const GREY: CoatingOptics = {
  solarReflectance_frac: 0.93,
  windowEmittance_frac: 0.94,
  offWindowEmittance_frac: 0.92,
}
/** One that radiates in the window alone. */
export const SELECTIVE: CoatingOptics = {
  solarReflectance_frac: 0.97,
  windowEmittance_frac: 0.9,
  offWindowEmittance_frac: 0.15,
}
/** Thin polyethylene over 20 mm of air. */
export const FILM: FilmOptics = {
  solarTransmittance_frac: 0.9,
  solarReflectance_frac: 0.08,
  windowTransmittance_frac: 0.86,
  windowReflectance_frac: 0.08,
  offWindowTransmittance_frac: 0.8,
  offWindowReflectance_frac: 0.08,
  gap_m: 0.02,
  flutter_frac: 0.3,
}
/** Bare, nearly level, on a suburban roof. */
export const BARE: PanelSpec = {
  coating: GREY,
  film: null,
  tilt_deg: 5,
  azimuth_deg: 0,
  horizon_deg: 5,
  groundAlbedo_frac: 0.2,
  height_m: 3,
  terrain: 'suburb',
  windModel: 'watmuff1977',
  windExposure_frac: 1,
  freeConvectionLength_m: 1 / 3,
  backLoss_Wm2K: 0.8,
  heatCapacity_Jm2K: 8000,
}
/** The build-ups the reduction is held to: bare and filmed, level and tilted, grey and selective. */
export const PANELS: readonly (readonly [string, PanelSpec])[] = [
  ['bare, grey, 5°', BARE],
  ['bare, selective, 30°', { ...BARE, coating: SELECTIVE, tilt_deg: 30 }],
  ['bare, grey, upright, small modules', { ...BARE, tilt_deg: 90, freeConvectionLength_m: 0.12 }],
  ['film, grey, 5°', { ...BARE, film: FILM }],
  [
    'film, selective, level, 40 mm gap',
    { ...BARE, coating: SELECTIVE, tilt_deg: 0, film: { ...FILM, gap_m: 0.04 } },
  ],
  ['film, grey, 45°, 10 mm gap', { ...BARE, tilt_deg: 45, film: { ...FILM, gap_m: 0.01 } }],
]
