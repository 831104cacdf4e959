import { J_PER_KWH } from '#model/basis/hours'
import { isTank } from '#model/building/store'
import { STARTING_PRICES } from './start.ts'

/** Prices in the user's own currency; 0 is a price too: what one has already costs nothing. */
export interface Prices {
  readonly panel_perm2: number
  readonly store_perm3: number
  readonly pipe_perm: number
  /** Pump and controls, all together. */
  readonly pump_each: number
  readonly energy_perkWh: number
  /** What brings the cold from a tank into the room. */
  readonly fanCoil_each: number
  readonly deliveryPump_each: number
  readonly mixingValve_each: number
  /** Years over which electricity is added. */
  readonly years_y: number
}

/** How many of each are bought to bring the cold from a tank into the room. */
export interface Delivery {
  readonly fanCoils: number
  readonly pumps: number
  readonly mixingValves: number
}

/** A drained coil is held by its drain, every other delivery by a mixing valve; slab and building need neither pump nor coil. */
export function deliveryBought(store: {
  readonly kind: Parameters<typeof isTank>[0]
  readonly deliveryKind: string
}): Delivery {
  const { kind, deliveryKind } = store
  if (!isTank(kind)) return { fanCoils: 0, pumps: 0, mixingValves: 0 }
  const drained = deliveryKind === 'drained'
  return {
    fanCoils: drained || deliveryKind === 'surface' ? 1 : 0,
    pumps: 1,
    mixingValves: drained ? 0 : 1,
  }
}

/** What a design is made of and uses. */
export interface Quantities {
  readonly area_m2: number
  readonly storeVolume_m3: number
  readonly pipeLength_m: number
  readonly delivery: Delivery
  /** Electricity of pump and delivery in a year, J. */
  readonly electric_J: number
}

/** A price and its parts, in the user's currency. */
export interface Cost {
  readonly panel: number
  readonly store: number
  readonly pipe: number
  readonly pump: number
  readonly delivery: number
  readonly energy: number
  readonly total: number
}

/** True once a price that can set one design apart from another is the user's own. */
export function hasPrices(prices: Prices): boolean {
  const apart = ['panel_perm2', 'store_perm3', 'energy_perkWh'] as const
  return apart.some((name) => prices[name] !== STARTING_PRICES[name])
}

/**
 * Price of a design with its electricity over the years counted; no interest, no upkeep. A design without panels
 * costs nothing.
 * @throws RangeError for a negative quantity
 */
export function designCost(prices: Prices, quantities: Quantities): Cost {
  const { area_m2, storeVolume_m3, pipeLength_m, electric_J, delivery } = quantities
  for (const [name, value] of Object.entries({ area_m2, storeVolume_m3, pipeLength_m, electric_J }))
    if (!(value >= 0)) throw new RangeError(`cost: ${name} ${value} must be 0 or more`)
  const built = area_m2 > 0 ? 1 : 0
  const parts = {
    panel: prices.panel_perm2 * area_m2,
    store: built * prices.store_perm3 * storeVolume_m3,
    pipe: built * prices.pipe_perm * pipeLength_m,
    pump: built * prices.pump_each,
    delivery:
      built *
      (delivery.fanCoils * prices.fanCoil_each +
        delivery.pumps * prices.deliveryPump_each +
        delivery.mixingValves * prices.mixingValve_each),
    energy: built * prices.energy_perkWh * (electric_J / J_PER_KWH) * prices.years_y,
  }
  const { panel, store, pipe, pump, delivery: brings, energy } = parts
  return { ...parts, total: panel + store + pipe + pump + brings + energy }
}
