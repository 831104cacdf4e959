/** Downwelling longwave from the sky on a horizontal plane, split in two bands. Filled by `sky/longwave.ts`. */
export interface SkyHours {
  readonly hours: number
  /** Whole hemisphere, all wavelengths, W/m². */
  readonly total_Wm2: Float64Array
  /** Part inside 8–13 µm, W/m². */
  readonly window_Wm2: Float64Array
  /** The rest: total − window, W/m². */
  readonly offWindow_Wm2: Float64Array
  /** 1 where a measured value was used, 0 where the model was. */
  readonly measured: Uint8Array
}

/** Clear-sky emissivity formulas on offer, by author. */
export const SKY_MODELS = [
  'matsunobuCoimbraPrata',
  'matsunobuCoimbra2024',
  'berdahlMartin1984',
  'brutsaert1975',
  'prata1996',
] as const
export type SkyModel = (typeof SKY_MODELS)[number]

export interface SkyOptions {
  readonly model: SkyModel
  /** Adds 0.15 (exp(−z/8500) − 1) to the Matsunobu & Coimbra emissivity; off by default. */
  readonly altitudeTerm: boolean
  /** When false, a measured column is ignored, so that the model can be judged against it. */
  readonly useMeasured: boolean
  /** Multiplies the clear-sky deficit (1 − ε): 1 by default, drawn in the uncertainty run. */
  readonly deficitFactor_frac: number
}
