import type { Spell } from './season.ts'

/** Where a knee was found and how: what a search for a description near by begins from. */
export interface KneeAnchor {
  /** The area sized, and the change of the measure with its logarithm there. */
  readonly area_m2: number
  readonly slope: number
  /** The area that the tanks were tried at, their volumes per m², and by how much each lowers the measure. */
  readonly reference_m2: number
  readonly ratios_m3m2: readonly number[]
  readonly gains: readonly number[]
  /** The knee, and the first of the tanks that gains enough. */
  readonly ratio_m3m2: number
  readonly at: number
  /** The measure without panels, and there with the knee's tank. */
  readonly doNothing_K: number
  readonly knee_K: number
  /** The hours that these trials were judged by, and those that came close; none where they are most of the year. */
  readonly spells: readonly Spell[]
  /** Change of the measure over a tenth more panel, with the tank that a search begins with, and how much less gain than the best is enough. */
  readonly more: number
  readonly worth: number
}
