export { type Cost, type Prices, designCost, hasPrices } from './cost.ts'
export { STARTING_PRICES, type WayPrices, wayPrices, yearlyCost, heatingCost } from './ways.ts'
