import type { Bill } from '#model/design/assembly'
import type { Measure } from '#model/design/measures'
import type { MadeOrMeasured, Scenario } from '#model/design/scenario'
import type { CoatingRecipe, CoatJob } from '#model/panels/paint'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { Range } from '../ranges.ts'
import type { MachineSpec } from './machine-work.ts'

/** A year's outcome: counted hours over the limit, operative peak. */
export interface WayOutcome {
  readonly hours_h: number
  readonly peak_C: number
}

/** What a way without panels was found to do. */
export interface WayFound {
  readonly with: WayOutcome & {
    readonly electric_J: number
    readonly water_m3: number
    readonly meets: boolean
  }
  /** The building before the way. */
  readonly before: WayOutcome
  readonly winter: {
    readonly heating_J: number
    readonly heatingChange_J: number
    readonly mouldMonths: number
    readonly mouldMonthsBefore: number
  }
  readonly bill: Bill
  /** Eight draws in ten; null until they are worked out. */
  readonly ranges: { readonly hours_h: Range; readonly peak_C: Range; readonly draws: number } | null
}

/** What of a way is built. */
export interface WayBuilt {
  /** With the measures in its room. */
  readonly scenario: Scenario
  /** The room without them. */
  readonly asItIs: Scenario['room']
  readonly measures: readonly Measure['id'][]
  readonly machine: MachineSpec | null
  readonly recipe: CoatingRecipe
  readonly coat: Omit<CoatJob, 'area_m2'>
}

/** What the sheet of a way is made from. */
export interface WayAsked extends WayBuilt {
  readonly weather: WeatherRecord & MadeOrMeasured
  /** The way in words. */
  readonly way: string
  readonly found: WayFound
}
