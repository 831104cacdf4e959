import type { Spot } from '../shapes.ts'
import type { WayFacts } from './way-facts.ts'

/** Facts of a section and where its places are on paper. */
export interface Paper {
  readonly facts: WayFacts
  readonly mm: (length_m: number) => number
  /** From the front's inner face, and above the floor, m. */
  readonly at: (x_m: number, z_m: number) => Spot
}
