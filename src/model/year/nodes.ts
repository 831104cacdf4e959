import type { YearInputs } from '#model/year/inputs.ts'

/** Where each temperature stands in the state vector: plate, store layers (top first), slab, fabric, air. */
export interface Nodes {
  readonly count: number
  readonly plate: number
  readonly layers: number
  readonly top: number
  readonly bottom: number
  readonly slab: number
  readonly fabric: number
  readonly air: number
  /** The node that the loop charges: bottom of the tank, slab, or room air. */
  readonly sink: number
  /** Share of the loop's temperature difference to that node that is exchanged: 1 for a tank, 1 − exp(−UA/ṁc) for pipes in a mass. */
  readonly sinkShare: number
  readonly tank: boolean
  /** Heat capacity of each node, J/K. */
  readonly capacity_JK: Float64Array
}

/** A node without mass still needs one for the matrix: J/K. Only the plate of a room without panels. */
const PLACEHOLDER_JK = 1

export function nodesOf({ room, plant }: YearInputs): Nodes {
  const tankLayers = plant?.store.layerCapacity_JK ?? []
  const layers = tankLayers.length
  const slab = layers + 1
  const air = layers + 3
  const kind = plant?.store.kind ?? 'building'
  const tank = layers > 0
  const rate_WK = plant?.loop.capacityRate_WK ?? 0
  const exchanger_WK = plant?.store.delivery_WK ?? 0
  return {
    count: layers + 4,
    plate: 0,
    layers,
    top: 1,
    bottom: Math.max(1, layers),
    slab,
    fabric: layers + 2,
    air,
    sink: tank ? 1 : kind === 'slab' ? slab : air,
    sinkShare: tank || rate_WK <= 0 ? 1 : 1 - Math.exp(-exchanger_WK / rate_WK),
    tank,
    capacity_JK: Float64Array.of(
      plant === null ? PLACEHOLDER_JK : plant.panel.heatCapacity_Jm2K * plant.loop.area_m2 || PLACEHOLDER_JK,
      ...tankLayers,
      room.slabCapacity_JK,
      room.fabricCapacity_JK,
      room.airCapacity_JK,
    ),
  }
}
