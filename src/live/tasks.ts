import type { DesignAnswer } from '#model/scenario/design-answer.ts'
import type { Scenario } from '#model/scenario/fields.ts'
import type { SizingResult, UncertaintyResult } from '#model/sizing/result.ts'

/** What crosses to the page: the answer without the panel's coefficient columns, which no page shows. */
export type LiveAnswer = Omit<DesignAnswer, 'panel'>

/** The short answer to a changed description. */
export interface Trial {
  readonly kind: SizingResult['kind']
  readonly area_m2: number
  readonly peak_C: number
  readonly hours_h: number
}

/** An answer to draw the range around. */
export interface RangeQuestion {
  readonly scenario: Scenario
  readonly sizing: SizingResult
  readonly draws: number
}

/** Every task a worker can do: what it is given and what it gives back. `do-task.ts` does them. */
interface Tasks {
  answer: { input: Scenario; output: LiveAnswer }
  /** What a few changed descriptions would need: behind "why it matters". */
  trials: { input: readonly Scenario[]; output: readonly Trial[] }
  uncertainty: { input: RangeQuestion; output: UncertaintyResult }
}

export type TaskName = keyof Tasks
export type TaskInput<K extends TaskName> = Tasks[K]['input']
export type TaskOutput<K extends TaskName> = Tasks[K]['output']
