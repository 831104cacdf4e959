/**
 * Duskbank as a library: what can be asked, and what it takes to ask it. An example that runs as a test is in README.md.
 */
export { createStudies, finish, VERB_NAMES } from '#studies/index.ts'
export type { Asked, Reply, Step, Study, Studies, Verb } from '#studies/index.ts'
export { openWeather } from '#model/weather/open.ts'
export { readSampleCsv } from '#model/climate/sample-format.ts'
export { FIELDS, type Scenario } from '#model/scenario/fields.ts'
export { readScenarioFile, withField, writeScenarioFile } from '#model/scenario/parse.ts'
export { defaultScenario } from '#model/scenario/schema.ts'
export { PRESETS, withPreset } from '#model/scenario/presets.ts'
export { ProblemError, problemSentence, type Problem } from '#model/problem.ts'
export { wordingText } from '#model/units/wording-text.ts'
