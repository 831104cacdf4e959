export { type Cost, type Prices, type Delivery, deliveryBought, designCost, hasPrices } from './cost.ts'
export { STARTING_PRICES } from './start.ts'
export { type WayPrices, wayPrices, yearlyCost, heatingCost } from './ways.ts'
