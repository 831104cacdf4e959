import type { Exceedance } from '#model/design/target'
import type { KneeAnchor } from './knee-anchor.ts'
import type { Wording } from '#model/basis/words'

/** What the hottest hours hang on: heat that comes in, then limits of the plant. */
export const LIMIT_CAUSES = [
  'walls',
  'roof',
  'floor',
  'sunGain',
  'airChange',
  'gains',
  'dewPoint',
  'store',
  'delivery',
  'sky',
] as const
export type LimitCause = (typeof LIMIT_CAUSES)[number]

/** What one of them is answerable for, K of the hottest hour. */
export interface LimitShare {
  readonly cause: LimitCause
  readonly share_K: number
}

/** What keeps the room from being cooler in its worst hours; where no area is enough, why. */
export interface Limit {
  /** The largest share. */
  readonly cause: LimitCause
  /** They add up to the fall of the peak with everything switched off. */
  readonly shares: readonly LimitShare[]
  readonly sentence: Wording
}

/** A change of the room that would help, and what it does to the peak (and the area, where one is enough). */
export interface LoadCut {
  readonly name: string
  readonly peakDrop_K: number
  readonly area_m2: number | null
}

/** A tank that would be larger if it had a place, at the area where the knee is looked for. */
export interface PlaceLimit {
  readonly area_m2: number
  /** The largest tank that fits, and one that does not, m³. */
  readonly most_m3: number
  readonly larger_m3: number
  /** What the two do there. */
  readonly most: Exceedance
  readonly larger: Exceedance
}

/** The sized design. `met`: the smallest area that meets the target; `floor`: none does; `own`: the user's area, unsized. */
export interface SizingResult {
  readonly kind: 'met' | 'floor' | 'notNeeded' | 'own'
  /** Area sized (met), the largest tried (floor) or 0 (not needed), m². */
  readonly area_m2: number
  readonly modules: number
  readonly flow_kgsm2: number
  readonly storeVolume_m3: number
  readonly withPanels: Exceedance
  /** The same with area and tank as sized, before whole modules and a tank that is sold; null where nothing was rounded. */
  readonly beforeRounding: Exceedance | null
  readonly doNothing: Exceedance
  readonly limit: Limit | null
  /** Load cuts that would help, best first; only worked out where no area is enough. */
  readonly loadCuts: readonly LoadCut[]
  /** Area against measure, in rising area: what the chart shows. */
  readonly curve: {
    readonly area_m2: readonly number[]
    readonly peak_C: readonly number[]
    readonly hours_h: readonly number[]
  }
  /** Knees: store volume per m² tried against area needed; flow per m² against heat and pump energy. */
  readonly storeKnee: readonly {
    readonly volume_m3: number
    readonly area_m2: number | null
    readonly peak_C: number
  }[]
  readonly flowKnee: readonly {
    readonly flow_kgsm2: number
    readonly heat_frac: number
    readonly pump_W: number
  }[]
  /** Where only its place keeps the tank from being larger; else null. */
  readonly placeLimit: PlaceLimit | null
  /** The smallest of the larger areas looked at that misses the target again, m²; null where all of them meet it. */
  readonly missedAgainFrom_m2: number | null
  /** The larger areas looked at, up to four times the area, rising, m². */
  readonly looked_m2: readonly number[]
  /** The widest step between the area and those, as a share of the smaller. */
  readonly widestStep_frac: number
  /** Change of the measure with the logarithm of the area near the answer; null where it is not known. */
  readonly slope: number | null
  /** What a search for a description near by begins from; null where no tank was chosen, or no area is enough. */
  readonly anchor: KneeAnchor | null
  readonly yearRuns: number
}

/** Area over the uncertain inputs. Null where the target is out of reach in that share of draws. */
export interface UncertaintyResult {
  readonly draws: number
  /** The area of each draw in rising order, m²; null, at the end, where none is enough. */
  readonly areas_m2: readonly (number | null)[]
  /** Draws simulated; the areas of the others are read from a fit. */
  readonly simulated: number
  /** Share of the area by which the fit misses a simulated draw left out of it, root mean square; null where none is read. */
  readonly miss_frac: number | null
  readonly low_m2: number | null
  readonly middle_m2: number | null
  readonly high_m2: number | null
  /** Share of draws in which no area up to the maximum is enough, 0…1. */
  readonly unreachable_frac: number
  /** Inputs by rank correlation with the area, strongest first. */
  readonly drivers: readonly {
    readonly field: string
    readonly label: string
    readonly correlation: number
    readonly low: number
    readonly high: number
  }[]
}
