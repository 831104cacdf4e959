export type { ClockCorrection } from './clock/clock-report.ts'
export { type HourPlan, fewestRows, hourlyMeans } from './clock/hours.ts'
export { type NoonProfile, noonProfile } from './clock/noon-profile.ts'
export { rowTimes } from './clock/row-times.ts'
export { readHeader } from './column/header-guess.ts'
export { plainWords } from './column/header-words.ts'
export { QUANTITIES, type Quantity, type Unit, isQuantity, isUnitOf, givesTime } from './column/quantity.ts'
export { findTimeColumns } from './column/time-columns.ts'
export { conversion, unitFromText } from './column/unit.ts'
export { readMapping, readMappingFile, writeMapping } from './mapping-file.ts'
export {
  type ColumnGuess,
  type ColumnMapping,
  STAMPS,
  type Stamp,
  type TableMapping,
  layoutSignature,
} from './mapping.ts'
export { WeatherReading, openWeather, openWeatherStream } from './open.ts'
export { type LedgerLine, ledgerOf } from './ledger.ts'
export type { OpenOptions, OpenedWeather } from './options.ts'
export type { TimeChoices } from './said.ts'
export { type PreviewColumn, previewRows } from './preview.ts'
export { ProblemList } from './problems.ts'
export { AS_READ, ASKED_BESIDE, type OpenQuestion, type QuestionChoice, withChoice } from './question.ts'
export type { Gap, QualityReport } from './quality/report.ts'
export type { RawColumn, RawTable } from './table/raw.ts'
export { type Encoding, encodingOf } from './table/encoding.ts'
export { needsWhole, textOfFile } from './table/packed.ts'
export { TableReader } from './table/reader.ts'
export { refusal } from './table/refuse.ts'
export { type FoundTable, findTable } from './table/shape.ts'
export { plainLines } from './table/split.ts'
