import type { LoopDuty } from '#model/panels/loop'
import type { PanelHours } from '#model/panels/plate'
import type { RoomNetwork } from '#model/building/room'
import type { StoreModel } from '#model/building/store'
import type { PlanHours } from './plan-hours.ts'
import type { PlanSpec } from './plan.ts'
import type { RoomStates } from './result.ts'

/** The panels, their loop and store, as one design; absent when the room is left alone. */
export interface Plant {
  readonly panel: PanelHours
  readonly loop: LoopDuty
  readonly store: StoreModel
  readonly plan: PlanSpec
  readonly allowed: PlanHours
  /** Multiplies the heat the panel sheds, 0…1. */
  readonly fieldFactor_frac: number
}

export interface YearInputs {
  readonly room: RoomNetwork
  readonly plant: Plant | null
  /** When windows are opened at night they close once the room is below this, °C. */
  readonly nightVentStop_C: number
}

export interface YearOptions {
  /** Steps in an hour, ≥ 4. */
  readonly stepsPerHour: number
  /** Hours run before the record's first hour, taken from its end (whole years) or its beginning. */
  readonly warmUp_h: number
  /**
   * First and one past the last hour to simulate; the rest of the columns stays NaN. The second may pass the
   * record's end: the run goes on at its beginning.
   */
  readonly span: readonly [number, number] | null
  /** The same room run before, hour by hour: its state at the warm-up's beginning is the start, instead of the room at rest. */
  readonly settled: RoomStates | null
  /** Keeps the room's state at every hour's end, so that other runs may start from it. */
  readonly keepStates: boolean
  /** Only the room's temperature is kept (for the search). */
  readonly lean: boolean
  /** Run by the modular kernel, the reference, even where the flat year (`flat/`) would be taken. */
  readonly modular: boolean
  /** Keep the ledger; without it the run is faster and the ledger all NaN. */
  readonly books: boolean
}

export const USUAL_YEAR: YearOptions = {
  stepsPerHour: 4,
  warmUp_h: 21 * 24,
  span: null,
  settled: null,
  keepStates: false,
  lean: false,
  modular: false,
  books: true,
}
