import type { MeasureId, WayPlant } from '#model/design/scenario'

/** What a combination is made of and comes to. Prices in the user's currency. */
export interface Combination {
  readonly measures: readonly MeasureId[]
  readonly plant: WayPlant | 'none'
  /** In words. */
  readonly names: readonly string[]
  readonly panelArea_m2: number
  readonly storeVolume_m3: number
  readonly hoursOver_h: number
  /** Operative, °C. */
  readonly peak_C: number
  /** Distance from the target: 0 or less when it is met. */
  readonly miss: number
  readonly meets: boolean
  readonly firstCost: number
  readonly yearlyCost: number
  /** First and yearly cost over the years counted. */
  readonly totalCost: number
  readonly electric_J: number
  readonly water_m3: number
  /** Highest relative humidity that an evaporative cooler was let run to, 0…1; 0 without one. */
  readonly mostHumid_frac: number
  readonly onRoof: boolean
  /** Panels that are not sized as they would be built: guessed to be enough, or the largest area, which is not. */
  readonly guess?: 'enough' | 'floor'
}
