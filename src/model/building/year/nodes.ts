import type { YearInputs } from './inputs.ts'

/** Where each temperature is in the list: store layers (top first), pipes or ceiling, air. The plate and the room's masses are kept apart. */
export interface Nodes {
  readonly count: number
  readonly layers: number
  readonly top: number
  readonly bottom: number
  /** Where the plant meets the room: pipes or ceiling; the air itself where it meets that. */
  readonly port: number
  readonly air: number
  /** The node that the loop draws from and charges: top of the tank, or where the plant meets the room. */
  readonly sink: number
  /** Share of the loop's temperature difference to that node that is exchanged: 1 for a tank, 1 − exp(−UA/ṁc) for pipes in a mass. */
  readonly sinkShare: number
  readonly tank: boolean
  /** Heat capacity of each layer, J/K. */
  readonly capacity_JK: Float64Array
  /** Heat capacity of all plates and the fluid in them, J/K. */
  readonly plateCapacity_JK: number
}

/** A tank of no size still has the fluid in its pipe ends: no layer holds less than a tenth of a litre of water, J/K. */
const LEAST_LAYER_JK = 400

export function nodesOf({ plant }: Pick<YearInputs, 'plant'>): Nodes {
  const tankLayers = (plant?.store.layerCapacity_JK ?? []).map((layer_JK) =>
    Math.max(layer_JK, LEAST_LAYER_JK),
  )
  const layers = tankLayers.length
  const air = layers + 1
  const port = plant === null || plant.store.port === 'air' ? air : layers
  const tank = layers > 0
  const rate_WK = plant?.loop.capacityRate_WK ?? 0
  const exchanger_WK = plant?.store.delivery_WK ?? 0
  return {
    count: layers + 2,
    layers,
    top: 0,
    bottom: Math.max(0, layers - 1),
    port,
    air,
    sink: tank ? 0 : port,
    sinkShare: tank || rate_WK <= 0 ? 1 : 1 - Math.exp(-exchanger_WK / rate_WK),
    tank,
    capacity_JK: Float64Array.from(tankLayers),
    plateCapacity_JK: plant === null ? 0 : plant.panel.heatCapacity_Jm2K * plant.loop.area_m2,
  }
}
