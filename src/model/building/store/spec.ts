import type { RoomPortKind } from '#model/building/room'

export const STORE_KINDS = ['mixed', 'layered', 'slab', 'building'] as const
export type StoreKind = (typeof STORE_KINDS)[number]

export const DELIVERY_KINDS = ['surface', 'drained', 'ceiling', 'floorPipes', 'roofPipes'] as const
/**
 * How cold gets into the room. surface: a coil kept dry; drained: a fan coil with a drip tray and drain (tanks only);
 * ceiling: cooled panels under it; floorPipes, roofPipes: pipes inside the slab or the roof's innermost layer. All but the
 * drained one are kept above dew point + margin.
 */
export type DeliveryKind = (typeof DELIVERY_KINDS)[number]

/**
 * Where cold is kept.
 * - mixed: a tank at one temperature; layered: a tank of n layers, drawn at the top for the panel, at the
 *   bottom for the room; slab: pipes in the floor slab; building: the room's own mass, by what delivers.
 */
export interface StoreSpec {
  /** Not for a slab, whose pipes deliver. */
  readonly deliveryKind: DeliveryKind
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
  /** Where cold enters the room. */
  readonly port: RoomPortKind
  /** What is delivered through has a drip tray and a drain, and may be colder than the dew point. */
  readonly drained: boolean
  /** Mass of water when full, kg. */
  readonly waterMass_kg: number
}
