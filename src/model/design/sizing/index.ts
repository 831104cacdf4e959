export { type Trial } from './area-search.ts'
export { type AboutArea, type NearDesign, aboutArea } from './about.ts'
export { AreaCurve, alongCurve } from './area-curve.ts'
export { type CheapestDesign, cheapestOn } from './cheapest.ts'
export { type DesignMap, type MapTask, candidateAt, designMap, placeAt, reached } from './design-map.ts'
export { drawnHow } from './drawn-how.ts'
export { drawsToSimulate, areasFromFirst, FIRST_DRAWS } from './fitted-areas.ts'
export { flowKnee, flowRows } from './flow-knee.ts'
export { LIMIT_NAMES, limitOf, worstHour } from './limit.ts'
export { judgedAlso } from './map-judged.ts'
export { MAP_KINDS, type MapAxes, type MapKind, mapAxes, placeOn } from './map-axes.ts'
export { LIMIT_CAUSES, type Limit, type LimitCause, type LimitShare } from './result.ts'
export type { LoadCut, SizingResult, UncertaintyResult } from './result.ts'
export { type Season, seasonAtRisk, seasonDecides } from './season.ts'
export {
  type AreaAlone,
  type Candidate,
  type SizingTask,
  judgeOwnArea,
  judged,
  sizePanels,
  slopeNearZero,
} from './size.ts'
export { type UncertainInput, spreadOf } from './spread.ts'
