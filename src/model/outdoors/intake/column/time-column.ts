import type { Quantity, Unit } from '#model/weather/column/quantity.ts'

/** A column that says when a row was, or a part of it. */
export interface TimeColumn {
  readonly index: number
  readonly quantity: Quantity
  readonly unit: Unit
  readonly confidence: number
  readonly basis: 'header' | 'physics'
}
