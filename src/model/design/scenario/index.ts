export { crossFieldProblems, unusualValues } from './checks.ts'
export { describedRoom } from './described-room.ts'
export { drawnScenarios, firstDraws, spreadOfAreas } from './draws.ts'
export type { ChoiceField, DayProfileField, Field, NumberField, SwitchField, TextField } from './field.ts'
export { FIELDS, type GroupName, type Scenario } from './fields.ts'
export { type Chosen, free, hold } from './hold.ts'
export { type HeldDesign, energyPriced, sameBesidesDesign, sizedWith, withCandidate } from './map-design.ts'
export {
  FILE_MARK,
  differences,
  readScenarioFile,
  requireScenario,
  withField,
  writeScenarioFile,
} from './parse.ts'
export { MEASURE_SIZES } from './measure-sizes.ts'
export { type OlderWay, withOlderWay } from './older-way.ts'
export { PRESETS, type PartialScenario, type Preset, withPreset } from './presets.ts'
export { GROUPS, SCENARIO_VERSION, defaultScenario, fieldAt, fieldsOf } from './schema.ts'
export { type MadeOrMeasured, SPREADS, USUAL_DRAWS, uncertainInputs } from './uncertain-inputs.ts'
export {
  isTaken,
  machineOf,
  measureIdsOf,
  partsOf,
  plantOf,
  sameWay,
  sizesPanels,
  wayText,
  withPanelsInWay,
  withWayTaken,
} from './way.ts'
export {
  MEASURE_NAMES,
  type MachineId,
  type MeasureId,
  PLANT_NAMES,
  WAY_NAMES,
  type WayPart,
  type WayPlant,
} from './way-field.ts'
export { withChosen } from './with-chosen.ts'
export { isStartPrice } from './start-prices.ts'
export { withUsualTarget } from './usual-target.ts'
