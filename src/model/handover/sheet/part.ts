import type { Figure, Wording } from '#model/basis/words'

/** Where on the job a part is used, in the order of the work. */
export const PART_GROUPS = [
  'Panels',
  'Frame',
  'Panel loop',
  'Store',
  'Cooling of the room',
  'Control',
] as const
export type PartGroup = (typeof PART_GROUPS)[number]

/** One line of the shopping list. Quantities are net: add your own waste. */
export interface Part {
  readonly group: PartGroup
  readonly quantity: Figure
  readonly what: Wording
}

/** A line of one group. */
export const partOf =
  (group: PartGroup) =>
  (quantity: Figure, what: Wording): Part => ({ group, quantity, what })
