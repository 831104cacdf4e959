import type { Site } from '#model/outdoors/weather'
import type { Stamp } from './mapping.ts'

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

/** What the user says of one file: place, time, and answers to questions of an earlier reading. */
export interface Said {
  readonly site?: Partial<Site>
  readonly time?: TimeChoices
  /** What was asked about, and its unit or `as-read`. */
  readonly answers?: Readonly<Record<string, string>>
}
