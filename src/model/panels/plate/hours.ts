import type { Exchange } from './exchange.ts'

/**
 * Panel hours: each hour's weather and the coating reduced once to what the loop needs, per m² of panel.
 *
 * What depends on the hour is kept as numbers (below); what depends only on the coating and cover is kept once, as
 * polynomials of temperature (`Exchange`). Convection on the exposed face, with y = T − T_air and s = |y|, is
 *
 *   h_c = constant + first w + second w² + third w³, w = s^¼    for a face colder and one hotter than the air, s held to the fitted span
 *
 * (within 1 K of the air a straight line from one side to the other),
 *
 * so that heat leaving the plate at any temperature is a polynomial and two square roots away. Filled by
 * `panel/reduce.ts`; read by `panel/tangent.ts`.
 */
export interface PanelHours {
  readonly hours: number
  /** Plate temperature at which a dry plate takes in nothing, °C. */
  readonly equilibrium_C: Float64Array
  /** ∂q/∂T of the dry plate there, W/m²K. */
  readonly conductance_Wm2K: Float64Array
  /** Temperature of the exposed face there, °C: the plate itself, or the film over it. */
  readonly surface_C: Float64Array
  /** Its change with the plate's temperature there: 1 for a bare plate. */
  readonly surfaceSlope: Float64Array
  readonly air_C: Float64Array
  /** Vapour pressure of the air, Pa. */
  readonly vapour_Pa: Float64Array
  /** Evaporation per Pa of vapour-pressure difference and W/m²K of convection, kg/s per (Pa W/K). */
  readonly massTransfer: Float64Array
  /** Convection from a face colder and hotter than the air. */
  readonly cold: ConvectionCurve
  readonly hot: ConvectionCurve
  /** Sky, surroundings and irradiance absorbed by plate and by film, W/m², dry and wet. */
  readonly dryGain: Gain
  readonly wetGain: Gain
  /** Irradiance absorbed by plate and film together, W/m²; for the ledger and for people. */
  readonly absorbedSun_Wm2: Float64Array
  readonly dryExchange: Exchange
  readonly wetExchange: Exchange
  /** The air gap under a film; null for a bare plate. */
  readonly gap: GapHours | null
  readonly backLoss_Wm2K: number
  /** Heat capacity of plate and fluid, J/m²K. */
  readonly heatCapacity_Jm2K: number
  /** Water that stays on the surface before it runs off, kg/m². */
  readonly waterLimit_kgm2: number
}

/** Coefficients of h_c = constant + first w + second w² + third w³, W/m²K, w = s^¼ with s in K. */
export interface ConvectionCurve {
  readonly constant: Float64Array
  readonly first: Float64Array
  readonly second: Float64Array
  readonly third: Float64Array
  /** s is held to this, K. */
  readonly span_K: number
}

/** Longwave and irradiance absorbed, W/m². The film's column is all zero for a bare plate. */
export interface Gain {
  readonly plate_Wm2: Float64Array
  readonly film_Wm2: Float64Array
}

/** Air gap: conduction, convection once the plate is hotter than the film by `onset_K` or the gap is tilted, and flutter. */
export interface GapHours {
  readonly width_m: number
  /** sin β, and cos β held at 60°. */
  readonly sine: number
  readonly cosine: number
  /** What the film pumps as it flutters, W/m²K. */
  readonly flutter_Wm2K: Float64Array
  /** (sin 1.8β)^1.6 of the Hollands correlation. */
  readonly shear: number
  /** Plate-over-film difference at Ra cos β = 1708, K. */
  readonly onset_K: Float64Array
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

/**
 * Where a tangent is wanted, and the tangent there. The hour loop's form: numbers handed to a call that is not
 * inlined are boxed, fields of an object are not.
 */
export interface PanelPoint extends PanelTangent {
  plate_C: number
  /** Water or frost on the exposed face, kg/m². */
  water_kgm2: number
}
