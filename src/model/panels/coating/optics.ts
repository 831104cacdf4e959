/** Optical properties of a coated plate as they act today (after soiling and ageing). */
export interface CoatingOptics {
  /** Solar reflectance, 0…1; absorptance is 1 − this (opaque plate). */
  readonly solarReflectance_frac: number
  /** Hemispherical emittance inside 8–13 µm, 0…1. */
  readonly windowEmittance_frac: number
  /** Hemispherical emittance outside 8–13 µm, 0…1. */
  readonly offWindowEmittance_frac: number
}

/** A cover film over the plate, as it acts today. Absorptance (= emittance) of each band is 1 − t − r. */
export interface FilmOptics {
  readonly solarTransmittance_frac: number
  readonly solarReflectance_frac: number
  readonly windowTransmittance_frac: number
  readonly windowReflectance_frac: number
  readonly offWindowTransmittance_frac: number
  readonly offWindowReflectance_frac: number
  /** Air gap between plate and film, m. */
  readonly gap_m: number
  /** How far the film pumps the gap's air as it flutters: share of the outside forced convection that the gap has besides, 0 taut … 0.5. */
  readonly flutter_frac: number
}
