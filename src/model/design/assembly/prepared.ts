import type { PanelHours } from '#model/panels/plate'
import type { RoomNetwork } from '#model/building/room'
import type { DesignFlow } from './design-flow.ts'
import type { Scenario } from '#model/design/scenario'
import type { Yardstick } from '#model/design/target'
import type { SkyHours } from '#model/outdoors/sky'
import type { SunHours } from '#model/outdoors/sun'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { PlanHours, YearResult } from '#model/building/year'

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
  readonly flow_kgsm2: DesignFlow
}
