import type { Columns, Whole } from './numbers.ts'

/** What the hours of one run are stepped over. */
export interface RunSetting {
  readonly columns: Columns
  readonly whole: Whole
  /** Places for the head, then `numbers`, then the rows of groups, modes and layers: `hours-wasm.ts`. */
  readonly state: Float64Array
  readonly numbers: Float64Array
  /** Entries of `columns.restRows` that are known so far. */
  restFilled: number
}

/** A form of the hours: what steps a run from hour `whole.fromRun` to before `whole.toRun`. */
export type HoursForm = (setting: RunSetting) => () => void
