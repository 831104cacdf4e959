export { addressCode, addressCodeSvg } from './address-code.ts'
export { buildUp } from './build-up.ts'
export {
  airHoleHeight_m,
  FALL,
  fieldOf,
  FIXING_INSET_frac,
  type PlantFacts,
  drainsBack,
  liftOf_m,
  waterLine_m,
} from './facts.ts'
export { modulePlan } from './module.ts'
export { crankOf, EDGE_WALL_m, edgeInside_m, FLANGE_m } from './panel-edge.ts'
export { roofPlan } from './roof-plan.ts'
export { AIR_HOLE_m } from './schematic-store.ts'
export { drawnIn, scaleNote } from './scales.ts'
export { schematic } from './schematic.ts'
export { section } from './section.ts'
export { unitTop_m } from './section-room.ts'
export { type Drawing } from './shapes.ts'
export { elementsOf, escaped, frameOf, svgText } from './svg.ts'
export { CABLES, drivenWires, readWires, RESIDUAL, wiring } from './wiring.ts'
export { wayDrawings } from './way/way-drawings.ts'
export { FAN_m, type WayFacts, type WayWindow } from './way/way-facts.ts'
