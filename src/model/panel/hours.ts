/**
 * Panel hours: each hour's weather and the coating reduced once to what the loop needs, per m² of panel.
 *
 * About the temperature at which a dry plate takes in nothing (`equilibrium_C`), with x = T_plate − T_eq,
 *
 *   q_dry(x) = U x + B x² + C x³ + J max(0, x − k)         heat leaving the plate, W/m²
 *
 * U is the conductance at equilibrium, B and C the bend of radiation and free convection, J and k the knee
 * where convection starts in the gap under a film (J = 0 for a bare plate). A wet surface radiates as water
 * does: q_wet is the same form about the same x with a constant `wetOffset`. Dew, frost and drying add
 * h_lat (e_sat(T_surface) − e_air), T_surface = surface0 + surface1 · x.
 * Filled by `panel/reduce.ts`; read by `panel/tangent.ts`.
 */
export interface PanelHours {
  readonly hours: number
  /** Plate temperature at which a dry plate takes in nothing, °C. */
  readonly equilibrium_C: Float64Array
  readonly dry: PanelCurve
  readonly wet: PanelCurve
  /** Latent coefficient of the exposed surface: W/m² per Pa of vapour-pressure difference. */
  readonly latent_Wm2Pa: Float64Array
  /** Vapour pressure of the air, Pa. */
  readonly vapour_Pa: Float64Array
  /** Exposed-surface temperature at x = 0, °C, and its slope with x (1 for a bare plate). */
  readonly surface_C: Float64Array
  readonly surfaceSlope: Float64Array
  /** Sunshine absorbed by plate (and film), W/m²; for the ledger. */
  readonly absorbedSun_Wm2: Float64Array
  /** Heat that a latent watt at the surface takes from the plate: 1 for a bare plate, less under a film. */
  readonly latentShare: Float64Array
  /** Heat capacity of plate and fluid, J/m²K. */
  readonly heatCapacity_Jm2K: number
  /** Water that stays on the surface before it runs off, kg/m². */
  readonly waterLimit_kgm2: number
}

/** Coefficients of q(x) = offset + U x + B x² + C x³ + J max(0, x − k); x in K, q in W/m². */
export interface PanelCurve {
  readonly offset_Wm2: Float64Array
  readonly conductance_Wm2K: Float64Array
  readonly bend_Wm2K2: Float64Array
  readonly twist_Wm2K3: Float64Array
  readonly kneeSlope_Wm2K: Float64Array
  readonly knee_K: Float64Array
}

/** What `panelTangent` writes: heat leaving the plate and its slope at one plate temperature. */
export interface PanelTangent {
  /** Net heat leaving the plate, W/m². */
  q_Wm2: number
  /** ∂q/∂T_plate, W/m²K. */
  slope_Wm2K: number
  /** Water gained by the exposed surface (positive: dew or frost), kg/m² s. */
  water_kgm2s: number
}
