export { type Cost, type Prices, designCost, hasPrices } from './cost.ts'
export { type WayPrices, wayPrices, yearlyCost } from './ways.ts'
