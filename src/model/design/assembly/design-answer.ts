import type { LoopDuty } from '#model/loop/spec.ts'
import type { PanelHours } from '#model/panel/hours.ts'
import type { Problem } from '#model/problem.ts'
import type { Scenario } from '#model/scenario/fields.ts'
import type { SizingResult } from '#model/sizing/result.ts'
import type { SkyHours } from '#model/sky/hours.ts'
import type { StoreModel } from '#model/store/spec.ts'
import type { SunHours } from '#model/sun/hours.ts'
import type { WeatherRecord } from '#model/weather/record.ts'
import type { YearResult } from '#model/year/result.ts'

/** Monthly sums; twelve entries, January first. */
export interface MonthSummary {
  readonly month: number
  readonly outdoorMean_C: number
  readonly roomMean_C: number
  readonly roomPeak_C: number
  readonly doNothingPeak_C: number
  /** Hours over the target’s limit, of those that count, with the panels and without. */
  readonly hoursOver_h: number
  readonly doNothingHoursOver_h: number
  /** Heat the panels took out of the fluid, J. */
  readonly panelHeat_J: number
  readonly delivered_J: number
  readonly electric_J: number
  readonly pumpRun_h: number
}

/** The whole answer to one scenario in one climate: what page, shell and sheet show. */
export interface DesignAnswer {
  readonly scenario: Scenario
  readonly weather: WeatherRecord
  readonly sun: SunHours
  readonly sky: SkyHours
  readonly panel: PanelHours
  readonly sizing: SizingResult
  /** The loop and store of the chosen design (area sized, or the user's own). */
  readonly area_m2: number
  readonly loop: LoopDuty
  readonly store: StoreModel
  readonly storeVolume_m3: number
  readonly year: YearResult
  readonly doNothing: YearResult
  readonly months: readonly MonthSummary[]
  /** Limit that each hour is judged by, °C; NaN where the hour does not count. */
  readonly limit_C: Float64Array
  /** First hour of the hottest seven days by outdoor mean. */
  readonly hottestWeekStart_h: number
  /** Warnings: suspicious fields, remarks of loop and weather. */
  readonly warnings: readonly Problem[]
}
