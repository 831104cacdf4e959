import { J_PER_KWH } from '#model/basis/hours'
import type { Prices } from './cost.ts'

/** Prices in the user's currency; what the user left at 0 is an invented starting value, to be replaced. */
export interface WayPrices extends Omit<Prices, 'years_y'> {
  readonly water_perm3: number
  /** For each m³/h of supply air. */
  readonly directCooler: number
  readonly indirectCooler: number
  /** For each watt of sensible cooling, and what it costs to have one at all. */
  readonly airConditioner: number
  readonly airConditioner_each: number
  /** Share of the price of anything that runs, spent on its upkeep each year. */
  readonly upkeep_frac: number
  readonly years_y: number
}

/** Invented. */
const STARTING = {
  panel_perm2: 120,
  store_perm3: 800,
  pipe_perm: 12,
  pump_each: 300,
  energy_perkWh: 0.25,
  water_perm3: 3,
  directCooler: 0.4,
  indirectCooler: 1.2,
  airConditioner: 0.25,
  airConditioner_each: 700,
  upkeep_frac: 0.03,
} as const

/** The user's prices where they are given, invented ones elsewhere. */
export function wayPrices(prices: Prices): WayPrices {
  const own = Object.fromEntries(Object.entries(prices).filter(([, value]) => value > 0))
  return { ...STARTING, ...own, years_y: prices.years_y }
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
