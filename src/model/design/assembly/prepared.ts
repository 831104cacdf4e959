import type { PanelHours } from '#model/panel/hours.ts'
import type { RoomNetwork } from '#model/room/spec.ts'
import type { Scenario } from '#model/scenario/fields.ts'
import type { Yardstick } from '#model/sizing/exceedance.ts'
import type { SizingResult } from '#model/sizing/result.ts'
import type { SkyHours } from '#model/sky/hours.ts'
import type { SunHours } from '#model/sun/hours.ts'
import type { WeatherRecord } from '#model/weather/record.ts'
import type { PlanHours } from '#model/year/plan-hours.ts'
import type { YearResult } from '#model/year/result.ts'

/** Everything of a scenario in a climate that does not depend on area, flow or store. */
export interface Prepared {
  readonly scenario: Scenario
  /** After the scenario's stress (hot spells, humidity, wind). */
  readonly weather: WeatherRecord
  readonly sun: SunHours
  readonly sky: SkyHours
  readonly panel: PanelHours
  readonly room: RoomNetwork
  readonly allowed: PlanHours
  readonly yardstick: Yardstick
  readonly nightVentStop_C: number
  readonly doNothing: YearResult
  readonly flow_kgsm2: number
  readonly flowRows: SizingResult['flowKnee']
}
