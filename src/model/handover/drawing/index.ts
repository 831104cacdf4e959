export { buildUp } from './build-up.ts'
export {
  FALL,
  FIXING_INSET_frac,
  type PlantFacts,
  ROW_GAP_m,
  drainsBack,
  liftOf_m,
  waterLine_m,
} from './facts.ts'
export { overhangOf, roofPlan } from './roof-plan.ts'
export { AIR_HOLE_m } from './schematic-store.ts'
export { schematic } from './schematic.ts'
export { section } from './section.ts'
export { type Drawing } from './shapes.ts'
export { elementsOf, escaped, frameOf, svgText } from './svg.ts'
export { wayDrawings } from './way/way-drawings.ts'
export type { WayFacts, WayWindow } from './way/way-facts.ts'
