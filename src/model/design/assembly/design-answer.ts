import type { Fit } from './fit.ts'
import type { LoopDuty } from '#model/panels/loop'
import type { PanelHours } from '#model/panels/plate'
import type { Problem, Wording } from '#model/basis/words'
import type { Combination } from './combination.ts'
import type { Scenario } from '#model/design/scenario'
import type { SizingResult } from '#model/design/sizing'
import type { SkyHours } from '#model/outdoors/sky'
import type { StoreModel } from '#model/building/store'
import type { SunHours } from '#model/outdoors/sun'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { YearResult } from '#model/building/year'

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

/** The way taken as it is built (panels where there is any area), and what it comes to in its year. */
export interface TakenWay extends Combination {
  /** The room as it is, without the way. */
  readonly asItIs: { readonly hours_h: number; readonly peak_C: number }
}

/**
 * The whole answer to one scenario in one climate: what page, shell and sheet show. With a way taken, `doNothing` is the room with
 * its measures and without its plant, `year` and `sizing.withPanels` have the plant too: panels, or the machine in their place.
 */
export interface DesignAnswer {
  /** As described: the room as it is, and the way taken beside it. */
  readonly scenario: Scenario
  /** As simulated: the measures of the way in the room. */
  readonly simulated: Scenario
  /** Null where no way is taken. */
  readonly way: TakenWay | null
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
  readonly fit: Fit
  /** What whole modules and a tank that is sold give; null where nothing was rounded. */
  readonly rounding: Wording | null
  /** Warnings: suspicious fields, remarks of loop and weather. */
  readonly warnings: readonly Problem[]
}
