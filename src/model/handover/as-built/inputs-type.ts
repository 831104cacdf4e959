import type { AsBuiltLog } from './log.ts'
import type { LoopSpec } from '#model/panels/loop'
import type { PanelSpec } from '#model/panels/plate'
import type { SkyHours } from '#model/outdoors/sky'
import type { PlaneIrradiance } from '#model/outdoors/sun'
import type { WeatherRecord } from '#model/outdoors/weather'

/** The panel as designed, with the weather and the log of the same hours. */
export interface AsBuiltInputs {
  readonly weather: WeatherRecord
  readonly sky: SkyHours
  /** Irradiance on the panel's own plane. */
  readonly plane: PlaneIrradiance
  readonly panel: PanelSpec
  readonly loop: LoopSpec
  readonly area_m2: number
  /** Share of the idealised radiator's exchange that was promised; the year is sized with the same. */
  readonly fieldFactor_frac: number
  readonly log: AsBuiltLog
}
