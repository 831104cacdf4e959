export { type Cost, type Prices, designCost, hasPrices } from './cost.ts'
