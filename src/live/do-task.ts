import { comparisonCases } from '#model/comparison/cases.ts'
import { comparisonRun, type Comparison } from '#model/comparison/run.ts'
import { mapTaskOf } from '#model/scenario/map-task.ts'
import { designMap, type DesignMap } from '#model/sizing/design-map.ts'
import type { Spine } from '#model/answer.ts'
import type { DesignAnswer } from '#model/scenario/design-answer.ts'
import type { Scenario } from '#model/scenario/fields.ts'
import type { WeatherRecord } from '#model/weather/record.ts'
import { paced } from '#live/paced.ts'
import type {
  ComparisonQuestion,
  DrawsQuestion,
  LiveAnswer,
  MapQuestion,
  TaskInput,
  TaskName,
  TaskOutput,
  Trial,
} from '#live/tasks.ts'

/** What a task works with, inside the worker. */
export interface Hands {
  readonly spine: Spine
  readonly weather: WeatherRecord
  /** `soFar`: what there is of the output already, where a page can show it as it grows. */
  readonly progress: (share: number, soFar?: TaskOutput<TaskName>) => void
}

type Doing<K extends TaskName> = (input: TaskInput<K>, hands: Hands) => TaskOutput<K> | Promise<TaskOutput<K>>

/** What only one page needs is loaded when it is first asked for. */
const TASKS: { readonly [K in TaskName]: Doing<K> } = {
  answer: (scenario, { spine, weather }) => forPage(spine.answer(scenario, weather)),
  about: ({ scenario, before }, { spine, weather }) => spine.about(scenario, weather, before),
  trials: (scenarios, hands) => scenarios.map((scenario, i) => trial(scenario, i / scenarios.length, hands)),
  compare: (question, hands) => sideBySide(question, hands),
  map: (question, hands) => mapOf(question, hands),
  draws: (question, hands) => areasOf(question, hands),
  bench: async (readings) => (await import('#live/bench-task.ts')).benchReport(readings),
  asBuilt: async (question, { spine, weather }) =>
    (await import('#live/as-built-task.ts')).asBuiltReport(question, spine, weather),
  sheetRanges: async (question, { spine, weather, progress }) =>
    (await import('#live/sheet-task.ts')).sheetRanges(question, spine, weather, progress),
  rehearsal: async (question, { weather }) =>
    (await import('#live/as-built-task.ts')).rehearsalFile(question, weather),
}

/** Does the task a request names. */
export function doTask<K extends TaskName>(
  request: { readonly name: K; readonly input: TaskInput<K> },
  hands: Hands,
): TaskOutput<K> | Promise<TaskOutput<K>> {
  return TASKS[request.name](request.input, hands)
}

function forPage(answer: DesignAnswer): LiveAnswer {
  const shown: LiveAnswer & { panel?: unknown } = { ...answer }
  delete shown.panel
  return shown
}

function trial(scenario: Scenario, share: number, { spine, weather, progress }: Hands): Trial {
  progress(share)
  const { kind, area_m2, withPanels } = spine.answer(scenario, weather).sizing
  return { kind, area_m2, peak_C: withPanels.peak_C, hours_h: withPanels.hours_h }
}

function areasOf(
  { scenario, sizing, draws, from, to }: DrawsQuestion,
  { spine, weather, progress }: Hands,
): Promise<(number | null)[]> {
  const drawing = spine.drawnAreas_m2(scenario, weather, sizing, draws, from, to)
  return paced(drawing, (done) => progress(done / (to - from)))
}

function sideBySide({ base, axes }: ComparisonQuestion, { spine, progress }: Hands): Promise<Comparison> {
  const cases = comparisonCases(base, axes)
  const answering = comparisonRun(cases, ({ scenario, weather }) => spine.answer(scenario, weather))
  return paced(answering, (soFar) => progress(soFar.rows.length / cases.length, soFar))
}

function mapOf(
  { scenario, axes, held }: MapQuestion,
  { spine, weather, progress }: Hands,
): Promise<DesignMap> {
  const drawing = designMap(mapTaskOf(spine.prepare(scenario, weather), held), axes)
  return paced(drawing, ({ share, map }) => progress(share, map ?? undefined))
}
