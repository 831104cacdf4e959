import type { ColumnMapping } from '../mapping.ts'
import { conversion } from './unit.ts'

/** From a number as printed in a column to our unit: its scale and offset first, then its unit. */
export function columnConversion(
  { quantity, unit, scale = 1, offset: added = 0 }: ColumnMapping,
  step_h: number,
): (printed: number) => number {
  const { factor, offset } = conversion(quantity, unit, step_h)
  return (printed) => (printed * scale + added) * factor + offset
}
