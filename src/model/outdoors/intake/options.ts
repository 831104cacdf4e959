import type { Problem } from '#model/basis/words'
import type { Stamp, TableMapping } from './mapping.ts'
import type { QualityReport } from './quality/report.ts'
import type { Site, WeatherRecord } from '#model/outdoors/weather'
import type { ClockReport } from './clock/clock-report.ts'

/** What the user says over what the file or its layout says. */
export interface TimeChoices {
  /** The file's clock minus UTC, h; 0 for UTC. */
  readonly clockOffset_h?: number
  readonly stamp?: Stamp
  readonly radiationOffset_h?: number
  /** Added to every stamp, h. */
  readonly shift_h?: number
  /** Which calendar year of a longer file, or the whole of it; also the year where the file gives none. */
  readonly year?: number | 'all'
}

export interface OpenOptions {
  /** The file's name, for messages and for the site where it has none. */
  readonly file: string
  readonly site?: Partial<Site>
  /** A mapping remembered or corrected by the user; otherwise the layout is recognised or guessed. */
  readonly mapping?: TableMapping
  /** Fill gaps longer than 48 h from the nearest days instead of refusing. */
  readonly acceptLongGaps?: boolean
  readonly time?: TimeChoices
  /** Answers to questions of an earlier reading: the quantity asked about, and its unit. */
  readonly answers?: Readonly<Record<string, string>>
}

/** Everything known after a file was opened. `record` is null when a problem stopped the work. */
export interface OpenedWeather {
  readonly record: WeatherRecord | null
  /** Null only when no table was found. */
  readonly mapping: TableMapping | null
  readonly clock: ClockReport
  readonly quality: QualityReport
  readonly problems: readonly Problem[]
}
