export { runningMeanOutdoor_C } from './comfort.ts'
export { type Yardstick, exceedance } from './exceedance.ts'
export type { TargetSpec } from './target.ts'
export { yardstickOf } from './yardstick-of.ts'
