import { designCost, hasPrices, type Cost, type Delivery, type Prices } from '#model/design/cost'
import type { DesignMap } from './design-map.ts'

/** A design on the edge of the target, read between two simulated ones. */
export interface EdgeDesign {
  /** Row of the map: which store or flow. */
  readonly row: number
  readonly area_m2: number
  readonly electric_J: number
}
export interface CheapestDesign extends EdgeDesign {
  readonly cost: Cost
}

/** The smallest area in each row of the map that meets the target; rows in which none does are left out. */
export function edgeDesigns(map: DesignMap): EdgeDesign[] {
  const { area_m2: areas, other } = map.axes
  return other.flatMap((_, row) => {
    const known = areas
      .map((area_m2, i) => {
        const at = row * areas.length + i
        return { row, area_m2, measure: map.measure[at]!, electric_J: map.electric_J[at]! }
      })
      .filter(({ measure }) => !Number.isNaN(measure))
    const met = known.findIndex(({ measure }) => measure <= 0)
    if (met < 0) return []
    const high = known[met]!
    const low = known[met - 1]
    if (low === undefined) return [{ row, area_m2: high.area_m2, electric_J: high.electric_J }]
    const share = low.measure / (low.measure - high.measure)
    return [
      {
        row,
        area_m2: low.area_m2 + share * (high.area_m2 - low.area_m2),
        electric_J: low.electric_J + share * (high.electric_J - low.electric_J),
      },
    ]
  })
}

/**
 * The cheapest design that meets the target: more area than the edge needs only costs more, so it is looked for
 * along the edge, one design a row.
 * @param bought          what every design of the map needs alike
 * @param storeVolume_m3  the tank of an edge design, m³
 * @returns null without prices of the user’s own, or where nothing on the map meets the target
 */
export function cheapestOn(
  map: DesignMap,
  prices: Prices,
  bought: { readonly pipeLength_m: number; readonly delivery: Delivery },
  storeVolume_m3: (edge: EdgeDesign) => number,
): CheapestDesign | null {
  if (!hasPrices(prices)) return null
  const priced = edgeDesigns(map).map((edge) => ({
    ...edge,
    cost: designCost(prices, { ...edge, ...bought, storeVolume_m3: storeVolume_m3(edge) }),
  }))
  return priced.reduce<CheapestDesign | null>(
    (best, one) => (best === null || one.cost.total < best.cost.total ? one : best),
    null,
  )
}
