export { DEMO_READINGS } from './demo-readings.ts'
export {
  designValue,
  type BenchEstimate,
  type Estimated,
  type PairEstimate,
  type SampleEstimate,
  type WindEstimate,
  estimateCoatings,
} from './estimate.ts'
export { infraredWarning, irThermometerTrue_C } from './ir-thermometer.ts'
export { type LightBoxResult, lightBoxResult } from './light-box.ts'
export type { Measured } from './measured.ts'
export { pairedReflectance } from './paired-boards.ts'
export { warmPlateEmittance } from './warm-plate.ts'
export { type ReadingProposal, readingProposals } from './next-reading.ts'
export {
  type BenchBoard,
  type BenchMoment,
  type BenchReadings,
  type BenchSample,
  type Cover,
  type KnownOptics,
  type Light,
  type SurfaceReading,
  type Thermometer,
  USUAL_BOARD,
  type WindClass,
} from './reading.ts'
export { readReadings, writeReadings } from './readings-file.ts'
export { infraredView } from './surface-temperature.ts'
export {
  type BoardCoating,
  type BoardHour,
  type BoardPrediction,
  HOME_HALF_WIDTH,
  WIND_AT_BOARD_FRAC,
  boardHourOf,
  predictBoard,
} from './test-board.ts'
