export { type Exceedance, type Yardstick, exceedance } from './exceedance.ts'
export type { TargetSpec } from './target.ts'
export { yardstickOf } from './yardstick-of.ts'
