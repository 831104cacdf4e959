import {
  FAULTS,
  possibleCauses,
  PRIOR_BELIEF,
  soundDoubts,
  startOf,
  type Cause,
  type Fault,
  type Free,
  type RealFault,
} from './causes.ts'
import { AS_DESIGNED, type Departure } from './departure.ts'
import { fitted, gainOfOneMore, minus, type Fitted } from './fit.ts'
import type { Observed } from './observed.ts'
import { shades } from './shades.ts'

/** One way to explain the log: no cause, one, or two at once. */
export interface Explanation extends Fitted {
  readonly causes: readonly RealFault[]
  /** How strongly it is held among all tried, 0…1. */
  readonly belief: number
}

export interface Diagnosis {
  /** The most strongly held first. */
  readonly explanations: readonly Explanation[]
  /** By cause, over all explanations in which it occurs; `none`: no cause at all. */
  readonly belief: Readonly<Record<Fault, number>>
  /** Causes, the most strongly held first. */
  readonly ranked: readonly RealFault[]
}

interface Tried {
  readonly causes: readonly Cause[]
  readonly fit: Fitted
  readonly weight: number
}

interface Promising {
  readonly first: Cause
  readonly second: Cause
  readonly start: Departure
  readonly near: Fitted
  readonly score: number
}

/** Pairs fitted in full, after all have been weighed by straight lines. */
const PAIRS = 6

/** Explains a log by no cause, by each single cause and by the most promising pairs, and ranks them by evidence. */
export function diagnose(observed: Observed): Diagnosis {
  const doubts = soundDoubts(observed)
  const sound = fitted(observed, {}, doubts, AS_DESIGNED)
  const none: Tried = { causes: [], fit: sound, weight: Math.log(PRIOR_BELIEF.none) + sound.logEvidence }
  const causes = [...possibleCauses(observed), ...shades(observed, sound)]
  const singles = causes.map((cause) => single(observed, cause, doubts, sound))
  const pairs = promising(observed, singles).map(({ first, second, start, near }) => {
    const both = [first, second]
    const fit = fitted(observed, { ...first.free, ...second.free }, doubts, start, near)
    return { causes: both, fit, weight: priorOf(both) + fit.logEvidence }
  })
  return ranked([none, ...singles, ...pairs])
}

function priorOf(causes: readonly Cause[]): number {
  return causes.reduce((sum, { tried }) => sum + Math.log(PRIOR_BELIEF.each / tried), 0)
}

/** One cause, fitted from the start that suits the log best. */
function single(observed: Observed, cause: Cause, doubts: Free, sound: Fitted): Tried {
  const scores = cause.starts.map((start) => {
    const base = observed.predict(startOf(cause, start))
    const residual = sound.whitener.whiten(minus(observed.measured, base))
    return leftOver(residual, sound)
  })
  const start = cause.starts[scores.indexOf(Math.min(...scores))]!
  const fit = fitted(observed, cause.free, doubts, startOf(cause, start))
  return { causes: [cause], fit, weight: priorOf([cause]) + fit.logEvidence }
}

/** χ² and penalty that the sound panel's doubts leave of a residual. */
function leftOver(residual: Float64Array, { columns, covariance }: Fitted): number {
  const across = columns.map((column) => column.reduce((sum, v, i) => sum + v * residual[i]!, 0))
  let taken = 0
  across.forEach((a, i) => across.forEach((b, j) => (taken += a * covariance.get(i, j) * b)))
  return residual.reduce((sum, r) => sum + r * r, 0) - taken
}

/** Pairs of causes by what the second adds to the first, in a straight line; each pair once. */
function promising(observed: Observed, singles: readonly Tried[]) {
  const ownMove = singles.map(({ causes, fit }) => {
    const without: Departure = { ...fit.departure, ...zeroed(causes[0]!) }
    return minus(observed.predict(fit.departure), observed.predict(without))
  })
  const best = new Map<string, Promising>()
  singles.forEach((one, i) =>
    singles.forEach((other, j) => {
      const [first, second] = [one.causes[0]!, other.causes[0]!]
      if (first.fault === second.fault) return
      const column = one.fit.whitener.whiten(ownMove[j]!)
      const { gain, size } = gainOfOneMore(one.fit, column)
      if (!(size > 0.05)) return
      const score = one.fit.logEvidence + gain / 2
      const key = [i, j].sort((a, b) => a - b).join(' ')
      if ((best.get(key)?.score ?? -Infinity) >= score) return
      best.set(key, {
        first,
        second,
        start: together(one.fit, other.fit, second, size),
        near: one.fit,
        score,
      })
    }),
  )
  return [...best.values()].sort((a, b) => b.score - a.score).slice(0, PAIRS)
}

const zeroed = ({ free }: Cause): Partial<Departure> =>
  Object.fromEntries(Object.keys(free).map((key) => [key, 0]))

/** Where a pair's fit starts: the first as fitted, the second at the share that suits beside it. */
function together(one: Fitted, other: Fitted, second: Cause, size: number): Departure {
  const share = Math.min(1.2, size)
  const added = Object.entries(second.free).map(([key, known]) => {
    const value = share * other.departure[key as keyof Departure]
    return [key, Math.min(known.max, Math.max(known.min, value))]
  })
  return { ...one.departure, ...second.fixed, ...(Object.fromEntries(added) as Partial<Departure>) }
}

function ranked(tried: readonly Tried[]): Diagnosis {
  const top = Math.max(...tried.map(({ weight }) => weight))
  const sum = tried.reduce((total, { weight }) => total + Math.exp(weight - top), 0)
  const explanations = tried
    .map(({ causes, fit, weight }) => ({
      ...fit,
      causes: causes.map(({ fault }) => fault),
      belief: Math.exp(weight - top) / sum,
    }))
    .sort((a, b) => b.belief - a.belief)
  const belief = Object.fromEntries(FAULTS.map((fault) => [fault, 0])) as Record<Fault, number>
  for (const { causes, belief: held } of explanations) {
    if (causes.length === 0) belief.none += held
    for (const cause of causes) belief[cause] += held
  }
  const order = FAULTS.filter((fault): fault is RealFault => fault !== 'none')
  return { explanations, belief, ranked: [...order].sort((a, b) => belief[b] - belief[a]) }
}
