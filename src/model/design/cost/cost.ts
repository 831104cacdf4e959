import { J_PER_KWH } from '#model/basis/hours'
/** The user's prices, in their own currency; 0 leaves one out. */
export interface Prices {
  readonly panel_perm2: number
  readonly store_perm3: number
  readonly pipe_perm: number
  /** Pump and controls, all together. */
  readonly pump_each: number
  readonly energy_perkWh: number
  /** Years over which electricity is added. */
  readonly years_y: number
}

/** What a design is made of and uses. */
export interface Quantities {
  readonly area_m2: number
  readonly storeVolume_m3: number
  readonly pipeLength_m: number
  /** Electricity of pump and delivery in a year, J. */
  readonly electric_J: number
}

/** A price and its parts, in the user's currency. */
export interface Cost {
  readonly panel: number
  readonly store: number
  readonly pipe: number
  readonly pump: number
  readonly energy: number
  readonly total: number
}

/** True once a price that can set one design apart from another is given. */
export function hasPrices(prices: Prices): boolean {
  return prices.panel_perm2 > 0 || prices.store_perm3 > 0 || prices.energy_perkWh > 0
}

/**
 * Price of a design with its electricity over the years counted; no interest, no upkeep. A design without panels
 * costs nothing.
 * @throws RangeError for a negative quantity
 */
export function designCost(prices: Prices, quantities: Quantities): Cost {
  for (const [name, value] of Object.entries(quantities))
    if (!(value >= 0)) throw new RangeError(`cost: ${name} ${value} must be 0 or more`)
  const { area_m2, storeVolume_m3, pipeLength_m, electric_J } = quantities
  const built = area_m2 > 0 ? 1 : 0
  const parts = {
    panel: prices.panel_perm2 * area_m2,
    store: built * prices.store_perm3 * storeVolume_m3,
    pipe: built * prices.pipe_perm * pipeLength_m,
    pump: built * prices.pump_each,
    energy: built * prices.energy_perkWh * (electric_J / J_PER_KWH) * prices.years_y,
  }
  return { ...parts, total: parts.panel + parts.store + parts.pipe + parts.pump + parts.energy }
}
