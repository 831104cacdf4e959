import type { Combination } from '#studies/decide-trial.ts'

/** Areas closer than this are the same, m². */
const SAME_m2 = 1e-9

/** True where the panels of a way have their place. */
export const fits = (one: Pick<Combination, 'panelArea_m2'>, free_m2: number): boolean =>
  one.panelArea_m2 <= free_m2 + SAME_m2

/**
 * What comes nearest to a way whose panels have no place: of the combinations that fit, one that meets the target before one
 * that misses it, with panels before without; the cheapest of those, or the one with the fewest hours too warm. Null where
 * only the room as it is is left.
 */
export function nearestThatFits(all: readonly Combination[], free_m2: number): Combination | null {
  const fitting = all.filter((one) => one.names.length > 0 && fits(one, free_m2))
  const met = fitting.filter(({ meets }) => meets)
  if (met.length === 0) return least(fitting, ({ hoursOver_h }) => hoursOver_h)
  const panels = met.filter(({ panelArea_m2 }) => panelArea_m2 > 0)
  return least(panels.length > 0 ? panels : met, ({ totalCost }) => totalCost)
}

function least(all: readonly Combination[], of: (one: Combination) => number): Combination | null {
  return all.reduce<Combination | null>(
    (best, one) => (best === null || of(one) < of(best) ? one : best),
    null,
  )
}
