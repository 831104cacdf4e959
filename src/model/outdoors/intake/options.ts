import type { Problem } from '#model/basis/words'
import type { TableMapping } from './mapping.ts'
import type { QualityReport } from './quality/report.ts'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { OpenQuestion } from './question.ts'
import type { Said } from './said.ts'
import type { ClockReport } from './clock/clock-report.ts'

export interface OpenOptions extends Said {
  /** The file's name, for messages and for the site where it has none. */
  readonly file: string
  /** A mapping remembered or corrected by the user; otherwise the layout is recognised or guessed. */
  readonly mapping?: TableMapping
  /** Fill gaps longer than 48 h from the nearest days instead of refusing. */
  readonly acceptLongGaps?: boolean
}

/** Everything known after a file was opened. `record` is null when a problem stopped the work. */
export interface OpenedWeather {
  readonly record: WeatherRecord | null
  /** Null only when no table was found. */
  readonly mapping: TableMapping | null
  readonly clock: ClockReport
  readonly quality: QualityReport
  readonly problems: readonly Problem[]
  /** What must be answered before anything is built on the record. */
  readonly questions: readonly OpenQuestion[]
}
