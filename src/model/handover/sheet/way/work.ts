import type { Figure, SheetLine, Wording } from '#model/basis/words'
import type { Caution } from '../cautions.ts'
import type { Step } from '../step.ts'

/** What one measure or machine asks of the builder. */
export interface Work {
  readonly name: string
  /** Sizes that follow from the room. */
  readonly sizes: readonly SheetLine[]
  readonly buy: readonly { readonly quantity: Figure; readonly what: Wording }[]
  /** In the order of the work. */
  readonly steps: readonly Wording[]
  readonly readings: readonly Step[]
  readonly cautions: readonly Caution[]
  readonly keep: readonly Wording[]
}

/** A work of which nothing is said yet. */
export const EMPTY: Omit<Work, 'name'> = {
  sizes: [],
  buy: [],
  steps: [],
  readings: [],
  cautions: [],
  keep: [],
}
