/** What later rooms know of the sun: its geometry each hour. Filled by `sun/position.ts`. */
export interface SunHours {
  readonly hours: number
  /** Geometric altitude (refraction removed), degrees, at the middle of each hour's irradiance period. */
  readonly altitude_deg: Float64Array
  /** Azimuth, degrees clockwise from north. */
  readonly azimuth_deg: Float64Array
  /** Extraterrestrial irradiance normal to the beam, W/m². */
  readonly extraterrestrial_Wm2: Float64Array
}

/** Irradiance on one plane, W/m², per hour. Filled by `sun/plane.ts`. */
export interface PlaneIrradiance {
  /** Beam + circumsolar on the plane. */
  readonly beam_Wm2: Float64Array
  /** Isotropic sky diffuse + ground-reflected. */
  readonly diffuse_Wm2: Float64Array
  readonly total_Wm2: Float64Array
  /** Cosine of the incidence angle, ≥ 0. */
  readonly cosIncidence: Float64Array
}
