import type { Spine } from '#model/answer.ts'
import type { DesignAnswer } from '#model/scenario/design-answer.ts'
import type { Scenario } from '#model/scenario/fields.ts'
import type { WeatherRecord } from '#model/weather/record.ts'
import type { UncertaintyResult } from '#model/sizing/result.ts'
import type { LiveAnswer, RangeQuestion, TaskInput, TaskName, TaskOutput, Trial } from '#live/tasks.ts'

/** What a task works with, inside the worker. */
export interface Hands {
  readonly spine: Spine
  readonly weather: WeatherRecord
  readonly progress: (share: number) => void
}

const TASKS: { readonly [K in TaskName]: (input: TaskInput<K>, hands: Hands) => TaskOutput<K> } = {
  answer: (scenario, { spine, weather }) => forPage(spine.answer(scenario, weather)),
  trials: (scenarios, hands) => scenarios.map((scenario, i) => trial(scenario, i / scenarios.length, hands)),
  uncertainty: (question, hands) => rangeOf(question, hands),
}

/** Does the task a request names. */
export function doTask<K extends TaskName>(
  request: { readonly name: K; readonly input: TaskInput<K> },
  hands: Hands,
): TaskOutput<K> {
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

function rangeOf(
  { scenario, sizing, draws }: RangeQuestion,
  { spine, weather, progress }: Hands,
): UncertaintyResult {
  const drawing = spine.uncertainty(scenario, weather, sizing, draws)
  for (;;) {
    const step = drawing.next()
    if (step.done) return step.value
    progress(step.value / draws)
  }
}
