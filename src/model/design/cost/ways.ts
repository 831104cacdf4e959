import { J_PER_KWH } from '#model/basis/hours'
import type { Prices } from './cost.ts'

/** Prices in the user's currency that ways are compared by; what has no price in a description is in `Prices`. */
export interface WayPrices extends Prices {
  readonly water_perm3: number
  /** Share of the price of anything that runs, spent on its upkeep each year. */
  readonly upkeep_frac: number
}

/** Invented: the price of the panels where theirs is left at 0. */
export const STARTING_PRICES = {
  panel_perm2: 120,
  store_perm3: 800,
  pipe_perm: 12,
  pump_each: 300,
  energy_perkWh: 0.25,
} as const

/** The user's prices where they are given, invented ones elsewhere. */
export function wayPrices(prices: WayPrices): WayPrices {
  const own = (name: keyof typeof STARTING_PRICES) =>
    prices[name] > 0 ? prices[name] : STARTING_PRICES[name]
  return {
    panel_perm2: own('panel_perm2'),
    store_perm3: own('store_perm3'),
    pipe_perm: own('pipe_perm'),
    pump_each: own('pump_each'),
    energy_perkWh: own('energy_perkWh'),
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
