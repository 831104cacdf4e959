export { type Bill, billOf, measurePrices, panelPrices, sumOf } from './bill.ts'
export { type Built, builtOf } from './built.ts'
export type { Combination } from './combination.ts'
export type { DesignAnswer, TakenWay } from './design-answer.ts'
export { designFlow } from './design-flow.ts'
export { designRemarks } from './design-remarks.ts'
export { type Fit, fitOf, freeArea_m2, misfitsOf } from './fit.ts'
export { modulesThatFit, roofFromAbove } from './panel-place.ts'
export { judgedLoad_kgm2, shapeInPlace, type TankPlace, tankPlaceOf } from './tank-place.ts'
export { doorWords, loadWords } from './tank-misfit.ts'
export { type Design, designOf, taskOf } from './design.ts'
export { limitOfDesign } from './limit-shares.ts'
export { mapTaskOf } from './map-task.ts'
export { hottestWeekStart_h, monthSummaries } from './months.ts'
export type { Prepared } from './prepared.ts'
export {
  loopDensity_kgm3,
  loopSpecOf,
  panelSpecOf,
  planSpecOf,
  roofOf,
  roomSpecOf,
  skyOptionsOf,
  storeSpecOf,
  targetSpecOf,
  ventStop_C,
  wallOf,
} from './to-specs.ts'
export { builtNear, type NearBuilt } from './near-built.ts'
export { roundingWords } from './rounding-words.ts'
export { outOfRange, refuseOutOfRange } from './range-check.ts'
export { tanksSoldAbout_m3 } from './tank-sizes.ts'
