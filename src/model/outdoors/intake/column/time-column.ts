import type { Quantity, Unit } from './quantity.ts'

/** A column that says when a row was, or a part of it. */
export interface TimeColumn {
  readonly index: number
  readonly quantity: Quantity
  readonly unit: Unit
  readonly confidence: number
  readonly basis: 'header' | 'physics'
}
