import type { Way, WayKind } from '#studies/decide-ways.ts'
import { isUnsure, type Met } from '#ui/answer/sureness.ts'
import { fits } from '#ui/deciding/fitting.ts'
import { listed } from '#ui/deciding/way-words.ts'

/** So much of the years tried more has to be met for a way to be called clearly surer. */
const CLEARLY = 0.2

/** It may cost so many times the first way: what it costs more is said with it. */
const DEARER = 2

/** A way that is surer than the first. */
export interface Surer {
  readonly kind: WayKind
  readonly name: string
  readonly sure: Met
  /** Cost over the years counted, beyond that of the first way. */
  readonly more: number
}

/** Where the first way is unsure: the cheapest of the others that meets the target in clearly more of the years tried. */
export function surerWay(ways: readonly Way[], sure: readonly (Met | null)[], free_m2: number): Surer | null {
  const [first, ...others] = ways
  const firstSure = sure[0] ?? null
  if (first === undefined || !first.combination.meets || !isUnsure(firstSure)) return null
  const share = ({ met, draws }: Met): number => met / draws
  const cost = (way: Way): number => way.combination.totalCost
  const found = others
    .flatMap((way, i) => {
      const own = sure[i + 1] ?? null
      const clearly = own !== null && share(own) >= share(firstSure) + CLEARLY
      return clearly && fits(way.combination, free_m2) && cost(way) <= DEARER * cost(first)
        ? [{ way, own }]
        : []
    })
    .toSorted((a, b) => cost(a.way) - cost(b.way))[0]
  if (found === undefined) return null
  const { way, own } = found
  return {
    kind: way.kind,
    name: listed(way.combination.names),
    sure: own,
    more: Math.round(cost(way)) - Math.round(cost(first)),
  }
}
