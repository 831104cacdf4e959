export const PLAN_KINDS = ['nightOnly', 'allDay', 'ownHours'] as const
export type PlanKind = (typeof PLAN_KINDS)[number]

export const FREEZE_PROTECTIONS = ['drainBack', 'glycol', 'stop'] as const
export type FreezeProtection = (typeof FREEZE_PROTECTIONS)[number]

/** When the loop may run and what starts and stops it. */
export interface PlanSpec {
  /** nightOnly: sun below the horizon; allDay: whenever it pays; ownHours: from start to end by the clock. */
  readonly kind: PlanKind
  /** Local standard time, h, 0…24; the span may pass midnight. Only for ownHours. */
  readonly startHour_h: number
  readonly endHour_h: number
  /** The pump starts when the resting panel is this much colder than the store's outlet, K. */
  readonly startDifference_K: number
  /** It stops when the fluid comes back less than this much colder than it left, K. */
  readonly stopDifference_K: number
  /** The loop stops when the store has reached this, °C. */
  readonly lowestStore_C: number
  /** The loop is off while the running-mean outdoor temperature is below this, °C. */
  readonly seasonGate_C: number
  /** Cold is let into the room above this air temperature, °C, fully at `band_K` more. */
  readonly setpoint_C: number
  readonly band_K: number
  readonly freeze: FreezeProtection
  /** Plate temperature below which freeze protection acts, °C. */
  readonly freezeLimit_C: number
}
