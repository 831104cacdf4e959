export { LOOP_TEMP_C, builtDuty, loopDuty } from './duty.ts'
export { fluidProperties } from './fluid.ts'
export { pressureGradient_Pam } from './friction.ts'
export { type FieldLayout, type ModulePassages, builtLayout, modulePassages } from './layout.ts'
export { AIR_RULE, WATER_RULE, standardBore_m } from './pipes.ts'
export {
  EDGE_m,
  fieldSize_m,
  MODULE_GAP_m,
  ROW_GAP_m,
  type RowPlace,
  rowsFor,
  rowsWithin,
} from './row-place.ts'
export type { FluidProperties } from './properties.ts'
export type { LoopDuty, LoopSpec } from './spec.ts'
