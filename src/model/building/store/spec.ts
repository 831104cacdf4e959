export const STORE_KINDS = ['mixed', 'layered', 'slab', 'building'] as const
export type StoreKind = (typeof STORE_KINDS)[number]

/**
 * Where cold is kept.
 * - mixed: a tank at one temperature; layered: a tank of n layers, drawn at the top for the panel, at the
 *   bottom for the room; slab: pipes in the floor slab; building: ceiling pipes or coil, the room's own mass.
 */
export interface StoreSpec {
  /** Only for a tank. surface: nothing cooled may be colder than dew point + margin; drained: a fan coil with a drip tray and drain. */
  readonly deliveryKind: 'surface' | 'drained'
  readonly kind: StoreKind
  readonly volume_m3: number
  /** Only for `layered`, 2…8. */
  readonly layers: number
  readonly insulation_m: number
  readonly insulationConductivity_WmK: number
  /** Real tanks lose more than ideal ones (fittings, feet): multiplies the loss; 1.5–2.5 is usual. */
  readonly fittingsFactor_frac: number
  /** Where the tank stands: its loss goes to the room or to the outdoor air. */
  readonly place: 'room' | 'outside'
  /** Conductance of the cooled surface or fan coil between store and room, W/K; for slab and building: pipe to mass. */
  readonly delivery_WK: number
  /** Flow through the delivery coil per W/K of delivery is taken as large; heat picked up by its pump or fan, W while it runs. */
  readonly deliveryPower_W: number
  /** The cooled surface is held this far above the indoor dew point, K. */
  readonly dewMargin_K: number
}

/** The store worked out for the year loop. */
export interface StoreModel {
  readonly kind: StoreKind
  /** Heat capacity of each layer, J/K, top first (one entry for a mixed tank; none for slab and building). */
  readonly layerCapacity_JK: readonly number[]
  /** Loss conductance of each layer, W/K. */
  readonly layerLoss_WK: readonly number[]
  readonly lossTo: 'room' | 'outside'
  /** Conduction between neighbouring layers, W/K. */
  readonly betweenLayers_WK: number
  readonly delivery_WK: number
  readonly deliveryPower_W: number
  readonly dewMargin_K: number
  /** What is delivered through has a drip tray and a drain, and may be colder than the dew point. */
  readonly drained: boolean
  /** Mass of water when full, kg. */
  readonly waterMass_kg: number
}
