/** Sizes that ingredients are sold in, in one unit; from small to large. */
export type ContainerSizes = readonly number[]

/** Tubs and bags of powder, kg; bottles and cans of liquid, L (common practice, no source). */
export const TUBS_kg: ContainerSizes = [0.1, 0.25, 0.5, 1, 2.5, 5, 10, 25]
export const CANS_L: ContainerSizes = [0.25, 0.5, 1, 2.5, 5, 10, 25]
/** The same where pounds and gallons are sold: pounds; gallons from the half pint up (common practice, no source). */
export const TUBS_lb: ContainerSizes = [0.25, 0.5, 1, 5, 10, 25, 50]
export const CANS_gal: ContainerSizes = [1 / 16, 1 / 8, 1 / 4, 1, 5]

/** So many containers of one size. */
export interface Containers {
  readonly size: number
  readonly count: number
}

/**
 * Containers that hold an amount: as many of the largest as it fills, and for the rest one or two that leave least over; of equal
 * ones the fewest. Largest first; none for nothing.
 * @param amount  in the unit of the sizes, ≥ 0
 * @throws RangeError for an amount that is none, or where no size is given
 */
export function containersFor(amount: number, sizes: ContainerSizes): Containers[] {
  const largest = sizes.at(-1)
  if (largest === undefined || !(amount >= 0 && Number.isFinite(amount)))
    throw new RangeError(`${amount} in ${sizes.length} sizes: an amount of 0 or more, and a size, are needed`)
  const full = Math.floor(amount / largest + 1e-9)
  const rest = Math.max(0, amount - full * largest)
  const counts = new Map<number, number>(full > 0 ? [[largest, full]] : [])
  if (rest > 1e-9 * largest)
    for (const size of topUp(rest, sizes)) counts.set(size, (counts.get(size) ?? 0) + 1)
  return [...counts].map(([size, count]) => ({ size, count })).toSorted((a, b) => b.size - a.size)
}

/** One or two containers that hold a rest no larger than the largest, with the least left over. */
function topUp(rest: number, sizes: ContainerSizes): readonly number[] {
  const choices = sizes.flatMap((one) => [[one], ...sizes.map((other) => [one, other])])
  const held = (choice: readonly number[]): number => choice.reduce((sum, size) => sum + size, 0)
  return choices
    .filter((choice) => held(choice) >= rest - 1e-9)
    .toSorted((a, b) => held(a) - held(b) || a.length - b.length)[0]!
}
