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
export interface GroupedPart {
  readonly group: string
  readonly quantity: Figure
  readonly what: Wording
}

/** A line for panels, loop or store. */
export interface Part extends GroupedPart {
  readonly group: PartGroup
}

/** A line of one group. */
export const partOf =
  (group: PartGroup) =>
  (quantity: Figure, what: Wording): Part => ({ group, quantity, what })

/** What all works of a way need, under the name of each. */
export function partsOfWorks(
  works: readonly { readonly name: string; readonly buy: readonly Omit<GroupedPart, 'group'>[] }[],
): GroupedPart[] {
  return works.flatMap(({ name, buy }) => buy.map((part) => ({ group: name, ...part })))
}
