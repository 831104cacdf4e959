/**
 * Duskbank as a library: what can be asked, and what it takes to ask it. An example that runs as a test is in README.md.
 */
export { createStudies, finish, VERB_NAMES } from '#studies/index.ts'
export type { Asked, Reply, Step, Study, Studies, Verb } from '#studies/index.ts'
export { openWeather, openWeatherStream } from '#model/outdoors/intake'
export { readSampleCsv } from '#model/outdoors/climate'
export { FIELDS, type Scenario } from '#model/design/scenario'
export { readScenarioFile, withField, writeScenarioFile } from '#model/design/scenario'
export { defaultScenario } from '#model/design/scenario'
export { PRESETS, withPreset } from '#model/design/scenario'
export { ProblemError, problemSentence, type Problem } from '#model/basis/words'
export { wordingText } from '#model/basis/words'
