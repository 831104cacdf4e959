/** Should there be panels at all, and what beside them? Every sensible combination, simulated and set in order. */
import { STARTING_PRICES } from '#model/design/cost'
import { asItIs, MEASURES, type Measure } from '#model/design/measures'
import { FIELDS } from '#model/design/scenario'
import { said, type Problem, words } from '#model/basis/words'
import { PLANTS, type PlantKind } from './decide-machines.ts'
import { nearestChanges, type Change } from './decide-nearest.ts'
import { guessedOf, type OtherCores } from './decide-refine.ts'
import { Search, type Group } from './decide-search.ts'
import { Trials, type Combination } from './decide-trial.ts'
import { front, waysOf, type Way } from './decide-ways.ts'
import { othersOf, type Other } from './decide-others.ts'
import { Winter, type WinterLine } from './decide-winter.ts'
import type { Stages } from './stages.ts'
import type { Asked, Study } from './study.ts'

/** What can be tried: changes of the building, moving air, machines. */
export type Tried = Measure['id'] | PlantKind
export const TRIED: readonly Tried[] = [
  ...MEASURES.map(({ id }) => id),
  ...PLANTS.filter((plant) => plant !== 'none'),
]

/** So many groups of every `of`, one if not said, from the `index`-th on. */
export interface Part {
  readonly index: number
  readonly of: number
  readonly wide?: number
}

/** The question of `decide`; for whom, the limit, prices and budget are in the description. */
export interface Deciding extends Asked {
  /** Only these measures and plants are looked at, where given. */
  readonly only?: readonly Tried[]
  /** Only some groups of combinations: a share for one of several workers, joined by `joinDecisions`. */
  readonly part?: Part
  /** False: combinations that cannot be better are simulated all the same, and all panels sized as built. */
  readonly skips?: boolean
  /** False: nothing is asked about winter. */
  readonly winters?: boolean
  /** False: panels that were guessed stay so, for one that joins several shares and asks on with `from`. */
  readonly refines?: boolean
  /** What shares of the same question, not refined, have found: only the rest is done. */
  readonly from?: readonly Decision[]
  /** Other cores that size guessed panels too. */
  readonly others?: OtherCores
}

/** All that was tried, what is best in some respect, and the few ways worth naming. */
export interface Decision {
  /** As they would be built. */
  readonly combinations: readonly Combination[]
  /** Panels that are guessed still: none at the end. */
  readonly guessed: readonly Combination[]
  /** How many were looked at, with those that were seen to lose before they were sized to the end. */
  readonly looked: number
  readonly front: readonly Combination[]
  readonly ways: readonly Way[]
  /** The best of each other kind of plant, and by what it loses to the first way. */
  readonly others: readonly Other[]
  /** For each way: heating and mould beside those of the building as it is. Empty until the end. */
  readonly winter: readonly WinterLine[]
  /** For each measure that fits, alone. Empty until the end. */
  readonly measureWinter: readonly (WinterLine & { readonly id: Measure['id'] })[]
  /** Where nothing meets the target: the one thing that would have to change for the nearest way, each by itself. */
  readonly changes: readonly Change[]
  /** Measures that fit this building. */
  readonly pool: readonly Measure['id'][]
  readonly years_y: number
}

/** Measures in one combination, alone and beside a plant. */
const MOST_ALONE = 3
const MOST_BESIDE_PLANT = 2

export function* decide(stages: Stages, question: Deciding): Study<Decision, Decision> {
  // the room as it is: a way taken is no part of it
  const asked = { ...question, scenario: asItIs(question.scenario) }
  const { scenario, weather, skips = true, winters = true, refines = true, from } = asked
  const { part = { index: 0, of: 1 } } = asked
  const trials = new Trials(stages, scenario, weather)
  const pool = poolOf(asked)
  const plants = PLANTS.filter((plant) => plant !== 'none' && allowed(asked, plant))
  const search = new Search(trials, plants, MOST_BESIDE_PLANT, skips)
  const groups = groupsOf(pool, (set) => trials.leastFirstCost(set, 'none'))
  const mine = from === undefined ? groups.filter((_, i) => isIn(part, i)) : []
  const decision = (): Decision => ({
    ...decided(search.done, asked),
    guessed: refines ? [] : search.guessed.map(({ rough }) => rough),
    looked: search.looked,
    winter: [],
    measureWinter: [],
    changes: [],
    pool: pool.map(({ id }) => id),
    years_y: trials.prices.years_y,
  })
  for (const [at, group] of mine.entries()) {
    search.group(group)
    yield {
      share: ((refines ? 0.8 : 1) * (at + 1)) / mine.length,
      ...(at % 16 === 0 ? { soFar: decision() } : {}),
    }
  }
  for (const share of from ?? []) {
    search.looked += share.looked
    search.take(
      share.combinations,
      share.guessed.map((rough) => guessedOf(rough)),
    )
  }
  const wanted = (tried: readonly Combination[]): Combination[] => {
    const { ways, front: best, others } = decided(tried, asked)
    return [...best, ...ways.map((way) => way.combination), ...others.map((other) => other.combination)]
  }
  if (refines)
    for (const left of search.refine(wanted, asked.others)) yield { share: 0.8 + 0.15 / (1 + left) }
  const result = decision()
  const winter = new Winter(trials, weather)
  if (!winters) return { result, remarks: priceRemarks(asked) }
  const measureWinter =
    from === undefined
      ? pool.filter((_, i) => isIn(part, i)).map(({ id }) => ({ id, ...winter.of([id]) }))
      : inOrder(pool, from)
  if (!refines) return { result: { ...result, measureWinter }, remarks: [] }
  const changes = result.ways[0]?.kind === 'nearest' ? nearestChanges(trials, result.ways[0].combination) : []
  return {
    result: {
      ...result,
      changes,
      winter: result.ways.map(({ combination }) => winter.of(combination.measures)),
      measureWinter,
    },
    remarks: priceRemarks(asked),
  }
}

type Judged = { readonly scenario: Pick<Deciding['scenario'], 'target' | 'prices'> }

/** What is best among the combinations tried. */
function decided(combinations: readonly Combination[], { scenario }: Judged) {
  const unit = scenario.target.kind === 'degreeHours' ? 'K·h' : 'K'
  const { budget_each: budget } = scenario.prices
  const ways = waysOf(combinations, budget > 0 ? budget : null, unit)
  return { combinations, front: front(combinations), ways, others: othersOf(combinations, ways[0], unit) }
}

/**
 * The shares of several workers as one decision. What is best of all is best in its own share too, so its winter line
 * and its changes are there; a line is not there while its share is still under way.
 */
export function joinDecisions(asked: Judged, shares: readonly Decision[]): Decision {
  const whole = decided(
    shares.flatMap(({ combinations }) => combinations),
    asked,
  )
  const winter = whole.ways.flatMap((way): WinterLine[] => {
    for (const share of shares) {
      const at = share.ways.findIndex(({ combination }) => combination === way.combination)
      if (at >= 0 && share.winter[at] !== undefined) return [share.winter[at]]
    }
    return []
  })
  const nearest = whole.ways[0]?.kind === 'nearest' ? whole.ways[0].combination : null
  const its = shares.find(({ ways }) => ways[0]?.combination === nearest)
  const pool = shares[0]!.pool.map((id) => ({ id }))
  return {
    ...shares[0]!,
    ...whole,
    looked: shares.reduce((sum, { looked }) => sum + looked, 0),
    winter,
    measureWinter: inOrder(pool, shares),
    changes: nearest === null ? [] : (its?.changes ?? []),
  }
}

/** The winter lines of several shares in the order of the measures. */
function inOrder(
  pool: readonly { readonly id: Measure['id'] }[],
  shares: readonly Decision[],
): Decision['measureWinter'] {
  const lines = shares.flatMap(({ measureWinter }) => measureWinter)
  return pool.flatMap(({ id }) => lines.filter((line) => line.id === id))
}

const isIn = ({ index, of, wide = 1 }: Part, i: number): boolean => i % of >= index && i % of < index + wide

function poolOf(asked: Deciding): readonly Measure[] {
  return MEASURES.filter((measure) => measure.fits(asked.scenario) && allowed(asked, measure.id))
}

const allowed = ({ only }: Deciding, id: Tried): boolean => only === undefined || only.includes(id)

/**
 * All sets of at most three measures, those that differ in the ceiling fan alone together (their rooms are the same),
 * cheap ones first; a night fan and night opening exclude each other.
 */
function groupsOf(pool: readonly Measure[], price: (set: readonly Measure[]) => number): readonly Group[] {
  const fan = pool.find(({ id }) => id === 'ceilingFan')
  const still = pool.filter((measure) => measure !== fan)
  let sized: (readonly Measure[])[] = [[]]
  const all = [...sized]
  for (let size = 1; size <= MOST_ALONE; size++) {
    sized = sized.flatMap((set) =>
      still
        .filter((_, i) => set.length === 0 || i > still.indexOf(set.at(-1)!))
        .map((measure) => [...set, measure]),
    )
    all.push(...sized)
  }
  return all
    .filter((set) => set.filter(({ id }) => id === 'nightOpening' || id === 'nightFan').length < 2)
    .map((set) => ({ set, price: price(set) }))
    .toSorted((a, b) => a.price - b.price)
    .map(({ set }) => (fan === undefined || set.length === MOST_ALONE ? [set] : [set, [...set, fan]]))
}

/** Which prices are starting values still: those of the panels left at 0, and others never changed. */
function priceRemarks({ scenario }: Deciding): Problem[] {
  const { prices } = scenario
  const left = Object.keys(STARTING_PRICES).some((name) => prices[name as keyof typeof STARTING_PRICES] === 0)
  const given: Readonly<Record<string, number>> = prices
  const same = Object.entries(FIELDS.prices).some(
    ([name, field]) => !NO_PRICES.has(name) && field.default > 0 && given[name] === field.default,
  )
  return left || same ? [INVENTED_PRICES] : []
}

const NO_PRICES: ReadonlySet<string> = new Set(['years_y', 'budget_each'])

const INVENTED_PRICES: Problem = {
  code: 'decide-invented-prices',
  severity: 'warning',
  ...said(words`Prices that you have not given are invented starting values.`),
  remedy: 'Give your own under Prices: the order of the ways may change.',
  place: { field: 'prices.panel_perm2' },
}
