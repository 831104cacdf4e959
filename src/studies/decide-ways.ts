/** The few combinations worth naming, and why the others lost. */
import type { Combination } from './decide-trial.ts'

export const WAY_KINDS = [
  'cheapest',
  'leastElectricity',
  'noRoofWork',
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
  readonly combination: Combination
  /** One sentence on how the nearest other combination compares, or what would have to change. */
  readonly why: string
}

/** Hours and peaks beyond the target only: a combination that meets it needs no more. */
const missed = (one: Combination): number => Math.max(0, one.miss)
const merits = (one: Combination): readonly number[] => [
  one.totalCost,
  missed(one),
  one.electric_J,
  one.water_m3,
]

/** Those that no other beats in cost, distance from the target, electricity and water together. */
export function front(all: readonly Combination[]): Combination[] {
  return all.filter((one) => !all.some((other) => beats(merits(other), merits(one))))
}

const beats = (a: readonly number[], b: readonly number[]): boolean =>
  a.every((value, i) => value <= b[i]!) && a.some((value, i) => value < b[i]!)

const least = (
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
    ['panelsOnly', all.find(({ plant, measures }) => plant === 'panels' && measures.length === 0)],
  ]
  if (budget !== null) {
    const affordable = all.filter(({ firstCost }) => firstCost <= budget)
    found.push(['withinBudget', least(affordable, (one) => [missed(one), one.totalCost])])
  }
  if (meeting.length === 0) found.unshift(['nearest', least(all, (one) => [one.miss, one.totalCost])])
  return found.flatMap(([kind, combination]) =>
    combination === undefined ? [] : [{ kind, combination, why: whyOf(kind, combination, all, unit) }],
  )
}

function whyOf(kind: WayKind, chosen: Combination, all: readonly Combination[], unit: MissUnit): string {
  if (!chosen.meets) {
    const over = `${chosen.miss.toFixed(1)} ${unit} over the target`
    if (kind !== 'nearest') return `Does not meet the target: ${over}.`
    const change =
      unit === 'K'
        ? `Raise the limit by about ${Math.ceil(chosen.miss * 2) / 2} K, or allow ${Math.ceil(chosen.hoursOver_h)} hours`
        : `Allow ${Math.ceil(chosen.miss)} K·h more`
    return `Nothing looked at meets the target; this comes nearest, ${over}. ${change}.`
  }
  const next = least(
    all.filter((one) => one !== chosen && one.meets && one.plant !== chosen.plant),
    (one) => [one.totalCost],
  )
  if (next === undefined) return 'No other kind of plant meets the target.'
  const dearer = Math.round(next.totalCost - chosen.totalCost)
  return dearer >= 0
    ? `Next kind: ${next.names.join(' + ')} costs ${dearer} more over the years counted.`
    : `${next.names.join(' + ')} costs ${-dearer} less over the years counted.`
}
