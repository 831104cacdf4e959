import type { ComparisonAxes } from '#model/comparison/cases.ts'
import type { Comparison } from '#model/comparison/run.ts'
import type { BenchReadings } from '#model/bench/reading.ts'
import type { DesignAnswer } from '#model/scenario/design-answer.ts'
import type { Scenario } from '#model/scenario/fields.ts'
import type { HeldDesign } from '#model/scenario/map-design.ts'
import type { AboutArea, NearDesign } from '#model/sizing/about.ts'
import type { DesignMap } from '#model/sizing/design-map.ts'
import type { MapAxes } from '#model/sizing/map-axes.ts'
import type { SizingResult } from '#model/sizing/result.ts'
import type { AsBuiltQuestion, AsBuiltReport, RehearsalQuestion } from '#live/as-built-task.ts'
import type { BenchReport } from '#live/bench-task.ts'
import type { SheetRangeQuestion } from '#live/sheet-task.ts'
import type { DesignRanges } from '#model/sheet/ranges.ts'

/** What crosses to the page: the answer without the panel's coefficient columns, which no page shows. */
export type LiveAnswer = Omit<DesignAnswer, 'panel'>

/** The short answer to a changed description. */
export interface Trial {
  readonly kind: SizingResult['kind']
  readonly area_m2: number
  readonly peak_C: number
  readonly hours_h: number
}

/** A changed description, and the sizing of one near it. */
export interface AboutQuestion {
  readonly scenario: Scenario
  readonly before: NearDesign
}

/** An answer to draw the range around. */
export interface RangeQuestion {
  readonly scenario: Scenario
  readonly sizing: SizingResult
  readonly draws: number
}

/** Some of a range's draws: from the first to one past the last. */
export interface DrawsQuestion extends RangeQuestion {
  readonly from: number
  readonly to: number
}

/** What to set side by side; every climate comes with its hours. */
export interface ComparisonQuestion {
  readonly base: Scenario
  readonly axes: ComparisonAxes
}

/** A design map: the scenario around it, its axes, and what is held. */
export interface MapQuestion {
  readonly scenario: Scenario
  readonly axes: MapAxes
  readonly held: HeldDesign
}

/** Every task a worker can do: what it is given and what it gives back. `do-task.ts` does them. */
interface Tasks {
  answer: { input: Scenario; output: LiveAnswer }
  about: { input: AboutQuestion; output: AboutArea }
  /** What a few changed descriptions would need: behind "why it matters". */
  trials: { input: readonly Scenario[]; output: readonly Trial[] }
  /** Rows come as they are answered. */
  compare: { input: ComparisonQuestion; output: Comparison }
  /** Coarse first, then finer. */
  map: { input: MapQuestion; output: DesignMap }
  draws: { input: DrawsQuestion; output: readonly (number | null)[] }
  /** Field notes of the coating bench. */
  bench: { input: BenchReadings; output: BenchReport }
  asBuilt: { input: AsBuiltQuestion; output: AsBuiltReport }
  /** The months of the builder's sheet. */
  sheetRanges: { input: SheetRangeQuestion; output: DesignRanges }
  /** An invented logger file, as text. */
  rehearsal: { input: RehearsalQuestion; output: string }
}

export type TaskName = keyof Tasks
export type TaskInput<K extends TaskName> = Tasks[K]['input']
export type TaskOutput<K extends TaskName> = Tasks[K]['output']
