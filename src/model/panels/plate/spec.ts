import type { CoatingOptics, FilmOptics } from '#model/panels/coating'

/** Ground around the panel, for the wind at panel height. */
export const TERRAINS = ['open', 'suburb', 'city'] as const
export type Terrain = (typeof TERRAINS)[number]

/** Slope of the forced-convection coefficient with wind, by author. */
export const WIND_MODELS = [
  'watmuff1977',
  'mcAdams1954',
  'test1981',
  'sharplesCharlesworth1998',
  'kumarMullick2010',
] as const
export type WindModel = (typeof WIND_MODELS)[number]

/** What the energy balance of a square metre of panel needs; nothing of area, flow or store. */
export interface PanelSpec {
  readonly coating: CoatingOptics
  /** null: bare plate. */
  readonly film: FilmOptics | null
  /** 0 = facing straight up, degrees. */
  readonly tilt_deg: number
  /** The way the tilted panel faces, degrees clockwise from north. */
  readonly azimuth_deg: number
  /** Obstruction of the sky by the horizon all round, degrees above the horizontal. */
  readonly horizon_deg: number
  readonly groundAlbedo_frac: number
  /** Height of the panel above ground, m. */
  readonly height_m: number
  readonly terrain: Terrain
  readonly windModel: WindModel
  /** Multiplies the wind at the panel: shelter, exposure; 1 by default. */
  readonly windExposure_frac: number
  /** Area / perimeter of one module: the length of free convection, m. */
  readonly freeConvectionLength_m: number
  /** Heat loss through the back of a panel a metre across to the air, W/m²K; a smaller one loses more at its edges (`edgeLoss_Wm2K`). */
  readonly backLoss_Wm2K: number
  /** Heat capacity of plate and its fluid per m², J/m²K. */
  readonly heatCapacity_Jm2K: number
}
