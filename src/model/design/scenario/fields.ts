import type { FieldValue } from './field.ts'
import { JOB_FIELDS, SITE_FIELDS } from './site-fields.ts'
import { SKY_FIELDS } from './sky-fields.ts'
import { COATING_FIELDS, COVER_FIELDS } from './coating-fields.ts'
import { PANEL_FIELDS } from './panel-fields.ts'
import { LOOP_FIELDS } from './loop-fields.ts'
import { STORE_FIELDS } from './store-fields.ts'
import { ROOM_FIELDS } from './room-fields.ts'
import { PLAN_FIELDS } from './plan-fields.ts'
import { TARGET_FIELDS, PRICES_FIELDS } from './target-fields.ts'

/**
 * Every field of a scenario, by group: the one place for names, units, ranges, defaults and explanations.
 * Ranges refuse physical nonsense; `usual` is where a slider runs and outside which a value is warned about.
 * Defaults without a published source are common practice, no source.
 */
export const FIELDS = {
  job: JOB_FIELDS,
  site: SITE_FIELDS,
  sky: SKY_FIELDS,
  coating: COATING_FIELDS,
  cover: COVER_FIELDS,
  panel: PANEL_FIELDS,
  loop: LOOP_FIELDS,
  store: STORE_FIELDS,
  room: ROOM_FIELDS,
  plan: PLAN_FIELDS,
  target: TARGET_FIELDS,
  prices: PRICES_FIELDS,
} as const

export type GroupName = keyof typeof FIELDS
/** A whole scenario: every group with every field. Valid by construction once it came through `parseScenario`. */
export type Scenario = {
  readonly [G in GroupName]: { readonly [F in keyof (typeof FIELDS)[G]]: FieldValue<(typeof FIELDS)[G][F]> }
}
