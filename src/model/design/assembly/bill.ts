import { deliveryBought, designCost } from '#model/design/cost'
import { isStartPrice, type Scenario } from '#model/design/scenario'
import type { Measure } from '#model/design/measures'

/** A price with what it is for. */
export interface Priced {
  readonly what: string
  readonly price: number
}

/** What a design costs at first and each year, in the user's currency, and whose prices that rests on. */
export interface Bill {
  readonly first: readonly Priced[]
  readonly yearly: readonly Priced[]
  /** Prices that the sums hang on: the user's own, and those that are invented start values. */
  readonly own_count: number
  readonly invented_count: number
}

/** What is bought and used, by the prices of a description. */
type Reckoned = (scenario: Scenario) => Pick<Bill, 'first' | 'yearly'>

/** Panels with tank, pipe, pump and what cools the room; nothing without panels. */
export function panelPrices(
  { prices, loop, store }: Scenario,
  area_m2: number,
  storeVolume_m3: number,
): readonly Priced[] {
  if (area_m2 === 0) return []
  const { pipeLength_m } = loop
  const bought = { area_m2, storeVolume_m3, pipeLength_m, electric_J: 0, delivery: deliveryBought(store) }
  const cost = designCost(prices, bought)
  return [
    { what: 'panels', price: cost.panel },
    { what: 'store', price: cost.store },
    { what: 'pipe', price: cost.pipe },
    { what: loop.fluid === 'air' ? 'fan FN and controls' : 'pump P1 and controls', price: cost.pump },
    { what: 'what cools the room from the tank', price: cost.delivery },
  ]
}

export const measurePrices = (scenario: Scenario, measures: readonly Measure[]): readonly Priced[] =>
  measures.map(({ name, price }) => ({ what: name.toLowerCase(), price: price(scenario) }))

export const sumOf = (all: readonly Priced[]): number => all.reduce((sum, { price }) => sum + price, 0)

/** The bill, with the prices it hangs on found by moving each of them. */
export function billOf(scenario: Scenario, reckoned: Reckoned): Bill {
  const { first, yearly } = reckoned(scenario)
  const total = sumOf(first) + sumOf(yearly)
  const names = Object.keys(scenario.prices) as (keyof Scenario['prices'])[]
  const used = names.filter((name) => {
    const moved = reckoned({
      ...scenario,
      prices: { ...scenario.prices, [name]: scenario.prices[name] + 1 },
    })
    return Math.abs(sumOf(moved.first) + sumOf(moved.yearly) - total) > 1e-9 * Math.max(1, total)
  })
  const invented = used.filter((name) => isStartPrice(`prices.${name}`, scenario.prices[name])).length
  return {
    first: first.filter(({ price }) => price > 0),
    yearly: yearly.filter(({ price }) => price > 0),
    own_count: used.length - invented,
    invented_count: invented,
  }
}
