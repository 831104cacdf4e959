/** How far prices may be off before another way is the cheapest: at most, because a search leaves out what cannot come first. */
import { J_PER_KWH } from '#model/basis/hours'
import { wayPrices, type WayPrices } from '#model/design/cost'
import type { Combination } from './decide-trial.ts'
import { least } from './decide-ways.ts'

/** The first way against the next of those that were simulated to the end. */
export interface TurnOver {
  readonly rival: Combination
  /** What the first way may cost more, in all the years counted, before the rival is as cheap. */
  readonly gap: number
  /** The same as a share of what the first way costs in those years. */
  readonly gap_frac: number
  /** Price of electricity from which on the rival is as cheap; null where the first way uses no more of it. */
  readonly energy_perkWh: number | null
}

/** Null where nothing meets the target, or nothing else does. */
export function turnOver(
  all: readonly Combination[],
  first: Combination | undefined,
  prices: WayPrices,
): TurnOver | null {
  if (first === undefined || !first.meets) return null
  const named = first.names.join(' + ')
  const rival = least(
    all.filter((one) => one.meets && one.names.join(' + ') !== named),
    (one) => [one.totalCost],
  )
  if (rival === undefined) return null
  const gap = Math.max(0, rival.totalCost - first.totalCost)
  const { energy_perkWh, years_y } = wayPrices(prices)
  const more_kWh = ((first.electric_J - rival.electric_J) / J_PER_KWH) * years_y
  return {
    rival,
    gap,
    gap_frac: gap / Math.max(1e-9, first.totalCost),
    energy_perkWh: more_kWh > 0 ? energy_perkWh + gap / more_kWh : null,
  }
}
