/** The few combinations worth naming, and why the others lost. */
import { J_PER_KWH } from '#model/basis/hours'
import { count, figure, words, type Wording } from '#model/basis/words'
import type { Combination } from './decide-trial.ts'

export const WAY_KINDS = [
  'cheapest',
  'leastElectricity',
  'noRoofWork',
  'withPanels',
  'panelsOnly',
  'withinBudget',
  'nearest',
] as const
export type WayKind = (typeof WAY_KINDS)[number]

/** What a distance from the target is counted in. */
export type MissUnit = 'K' | 'K·h'

/** A combination with the reason it is named. */
export interface Way {
  readonly kind: WayKind
  /** Further respects in which the same combination is best. */
  readonly also: readonly WayKind[]
  readonly combination: Combination
  /** One sentence on how the nearest other combination compares, or what would have to change. */
  readonly why: Wording
}

/** Hours and peaks beyond the target only: a combination that meets it needs no more. */
export const missed = (one: Combination): number => Math.max(0, one.miss)
/** What is printed judges: whole units of money and kWh, a tenth of a kelvin and of a cubic metre. */
const merits = (one: Combination): readonly number[] => [
  Math.round(one.totalCost),
  Math.ceil(10 * missed(one)),
  Math.round(one.electric_J / J_PER_KWH),
  Math.round(10 * one.water_m3),
]

/** Those that no other beats in cost, distance from the target, electricity and water together. */
export function front(all: readonly Combination[]): Combination[] {
  const known = all.map(merits)
  return all.filter((_, i) => !known.some((other) => beats(other, known[i]!)))
}

const beats = (a: readonly number[], b: readonly number[]): boolean => {
  let less = false
  for (let i = 0; i < a.length; i++) {
    if (a[i]! > b[i]!) return false
    less ||= a[i]! < b[i]!
  }
  return less
}

export const least = (
  all: readonly Combination[],
  by: (one: Combination) => readonly number[],
): Combination | undefined =>
  all.reduce<Combination | undefined>(
    (best, one) => (best === undefined || before(by(one), by(best)) ? one : best),
    undefined,
  )

function before(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((value, i) => value !== b[i])
  return at >= 0 && a[at]! < b[at]!
}

/** The ways among what was tried. Where nothing meets the target, the nearest. */
export function waysOf(all: readonly Combination[], budget: number | null, unit: MissUnit): Way[] {
  const meeting = all.filter(({ meets }) => meets)
  const found: [WayKind, Combination | undefined][] = [
    ['cheapest', least(meeting, (one) => [one.totalCost])],
    ['leastElectricity', least(meeting, (one) => [one.electric_J, one.totalCost])],
    [
      'noRoofWork',
      least(
        meeting.filter(({ onRoof }) => !onRoof),
        (one) => [one.totalCost],
      ),
    ],
    [
      'withPanels',
      least(
        meeting.filter(({ plant }) => plant === 'panels'),
        (one) => [one.totalCost],
      ),
    ],
    ['panelsOnly', all.find(({ plant, measures }) => plant === 'panels' && measures.length === 0)],
  ]
  if (budget !== null) {
    const affordable = all.filter(({ firstCost }) => firstCost <= budget)
    found.push(['withinBudget', least(affordable, (one) => [missed(one), one.totalCost])])
  }
  if (meeting.length === 0) found.unshift(['nearest', least(all, (one) => [one.miss, one.totalCost])])
  return found.flatMap(([kind, combination], i) => {
    if (combination === undefined || found.slice(0, i).some(([, before]) => before === combination)) return []
    const also = found.slice(i + 1).flatMap(([other, same]) => (same === combination ? [other] : []))
    return [{ kind, also, combination, why: whyOf(kind, combination, all, unit) }]
  })
}

/** How far from its target: with hours allowed, not the hottest hour of all but the hottest that is not allowed. */
export function missWords(miss: number, unit: MissUnit): Wording {
  return unit === 'K'
    ? words`the hottest hour that is not allowed is ${figure(miss, 'K', 2)} over the limit`
    : words`the year has ${figure(miss, 'Kh', 2)} more than is allowed`
}

function whyOf(kind: WayKind, chosen: Combination, all: readonly Combination[], unit: MissUnit): Wording {
  if (!chosen.meets) {
    const over = missWords(chosen.miss, unit)
    return kind === 'nearest'
      ? words`Nothing looked at meets the target; this comes nearest: ${over}.`
      : words`Does not meet the target: ${over}.`
  }
  const next = least(
    all.filter((one) => one !== chosen && one.meets && one.plant !== chosen.plant),
    (one) => [one.totalCost],
  )
  if (next === undefined) return ['No other kind of plant meets the target.']
  const dearer = Math.round(next.totalCost - chosen.totalCost)
  const names = next.names.join(' + ') || 'Nothing at all'
  return dearer >= 0
    ? words`The best of another kind: ${names}, for ${count(dearer)} more over the years counted.`
    : words`${names} would cost ${count(-dearer)} less over the years counted.`
}
