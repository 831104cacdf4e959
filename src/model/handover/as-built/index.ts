export { type Agreement, houseAgreement } from './agreement.ts'
export { type AsBuiltResult, asBuiltCheck } from './check.ts'
export { FAULTS, type Fault, type RealFault } from './causes.ts'
export type { Departure } from './departure.ts'
export { asBuiltInputs } from './inputs.ts'
export { type InventedLog, inventedLogFile } from './invented.ts'
export { type OpenedLog, logHeaders, openLog } from './open.ts'
export {
  FLOW_UNIT_NAMES,
  type FlowUnitName,
  LOG_LABELS,
  LOG_QUANTITIES,
  type LogQuantity,
} from './columns.ts'
export type { LogColumns } from './taken-columns.ts'
export { asFoundScenario } from './resize.ts'
export type { HeatShare } from './shortfall.ts'
