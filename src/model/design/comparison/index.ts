export {
  COATING_IDS,
  COVER_KINDS,
  type ComparisonAxes,
  type ComparisonRow,
  PLAN_KINDS,
  comparisonCases,
} from './cases.ts'
export { type WordColumn, coatingName, coverName, planName, rowName, wordColumns } from './row-names.ts'
export { type Comparison, comparisonRun } from './run.ts'
export { type VerdictWords, coverVerdicts, planVerdicts, verdictList } from './verdict-list.ts'
