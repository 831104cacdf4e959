import { J_PER_KWH } from '#model/basis/hours'
import type { Prices } from './cost.ts'

/** Prices in the user's currency that ways are compared by; what has no price in a description is in `Prices`. */
export interface WayPrices extends Prices {
  readonly water_perm3: number
  /** Share of the price of anything that runs, spent on its upkeep each year. */
  readonly upkeep_frac: number
}

/** Of all prices those that ways are compared by. */
export function wayPrices(prices: WayPrices): WayPrices {
  const { panel_perm2, store_perm3, pipe_perm, pump_each, energy_perkWh } = prices
  const { fanCoil_each, deliveryPump_each, mixingValve_each } = prices
  return {
    panel_perm2,
    store_perm3,
    pipe_perm,
    pump_each,
    energy_perkWh,
    fanCoil_each,
    deliveryPump_each,
    mixingValve_each,
    water_perm3: prices.water_perm3,
    upkeep_frac: prices.upkeep_frac,
    years_y: prices.years_y,
  }
}

/** What a change of the yearly heating (J, positive: more) costs over so many years, in the user's currency. */
export function heatingCost(
  { heat_perkWh, years_y }: { readonly heat_perkWh: number; readonly years_y: number },
  change_J: number,
): number {
  return (heat_perkWh * years_y * change_J) / J_PER_KWH
}

/** Electricity, water and upkeep of a year. */
export function yearlyCost(
  prices: WayPrices,
  used: { readonly electric_J: number; readonly water_m3: number; readonly running: number },
): number {
  const { electric_J, water_m3, running } = used
  return (
    (prices.energy_perkWh * electric_J) / J_PER_KWH +
    prices.water_perm3 * water_m3 +
    prices.upkeep_frac * running
  )
}
