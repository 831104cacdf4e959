/** Should there be panels at all, and what beside them? Every sensible combination, simulated and set in order. */
import { AIR_MEASURES, BUILDING_MEASURES, type Measure } from '#model/design/measures'
import { said, type Problem, words } from '#model/basis/words'
import { PLANTS, type PlantKind } from './decide-machines.ts'
import { Trials, type Combination } from './decide-trial.ts'
import { front, waysOf, type Way } from './decide-ways.ts'
import type { Stages } from './stages.ts'
import type { Asked, Study } from './study.ts'

/** Whom or what the room is kept cool for: a ceiling fan helps only people. */
export const KEPT_FOR = ['awake', 'asleep', 'goods', 'plants', 'animals', 'battery'] as const
export type KeptFor = (typeof KEPT_FOR)[number]

/** What can be tried: changes of the building, moving air, machines. */
export type Tried = Measure['id'] | PlantKind
export const TRIED: readonly Tried[] = [
  ...[...BUILDING_MEASURES, ...AIR_MEASURES].map(({ id }) => id),
  ...PLANTS.filter((plant) => plant !== 'none'),
]

/** The question of `decide`. */
export interface Deciding extends Asked {
  readonly keptFor?: KeptFor
  /** Most that may be spent at first, in the user's currency; null: no limit. */
  readonly budget?: number | null
  /** Only these measures and plants are looked at, where given. */
  readonly only?: readonly Tried[]
  /** Only every `of`-th set of measures, from `index` on: a share for one of several workers, joined by `joinDecisions`. */
  readonly part?: { readonly index: number; readonly of: number }
  /** False: combinations that cannot be better are simulated all the same. */
  readonly skips?: boolean
}

/** All that was tried, what is best in some respect, and the few ways worth naming. */
export interface Decision {
  readonly combinations: readonly Combination[]
  readonly front: readonly Combination[]
  readonly ways: readonly Way[]
  /** Heat that keeps the room at 18 °C through a year, over that of the building as it is, J: one for each way. Empty until the end. */
  readonly heatingChange_J: readonly number[]
  /** Measures that fit this building. */
  readonly pool: readonly Measure['id'][]
  readonly years_y: number
}

/** Measures in one combination, alone and beside a plant. */
const MOST_ALONE = 3
const MOST_BESIDE_PLANT = 2

export function* decide(stages: Stages, asked: Deciding): Study<Decision, Decision> {
  const { scenario, weather, skips = true, part = { index: 0, of: 1 } } = asked
  const trials = new Trials(stages, scenario, weather)
  const pool = poolOf(asked)
  const plants = PLANTS.filter((plant) => plant === 'none' || allowed(asked, plant))
  const sets = subsets(pool).filter((_, i) => i % part.of === part.index)
  const done: Combination[] = []
  /** Sets that meet the target by themselves and use no electricity: more of them only costs more. */
  const enough: (readonly Measure[])[] = []
  const decision = (): Decision => ({
    ...decided(done, asked),
    heatingChange_J: [],
    pool: pool.map(({ id }) => id),
    years_y: trials.prices.years_y,
  })
  for (const [at, set] of sets.entries()) {
    if (skips && enough.some((known) => known.every((measure) => set.includes(measure)))) continue
    const prepared = trials.with(set)
    const alone = trials.run(prepared, set, 'none')
    done.push(alone)
    if (alone.meets && alone.electric_J === 0) enough.push(set)
    if (!(skips && alone.meets && alone.electric_J === 0) && set.length <= MOST_BESIDE_PLANT)
      for (const plant of plants) if (plant !== 'none') done.push(trials.run(prepared, set, plant))
    yield { share: (at + 1) / sets.length, ...(at % 16 === 0 ? { soFar: decision() } : {}) }
  }
  const result = decision()
  const asItIs_J = trials.heating_J([])
  const heatingChange_J = result.ways.map(
    ({ combination }) => trials.heating_J(combination.measures) - asItIs_J,
  )
  return { result: { ...result, heatingChange_J }, remarks: [INVENTED_PRICES] }
}

type Judged = Pick<Deciding, 'budget'> & { readonly scenario: Pick<Deciding['scenario'], 'target'> }

/** What is best among the combinations tried. */
function decided(combinations: readonly Combination[], { budget = null, scenario }: Judged) {
  const unit = scenario.target.kind === 'degreeHours' ? 'K·h' : 'K'
  return { combinations, front: front(combinations), ways: waysOf(combinations, budget, unit) }
}

/**
 * The shares of several workers as one decision. What is best of all is best in its own share too, so its winter line is
 * there; it is not a number while a share is still under way.
 */
export function joinDecisions(asked: Judged, shares: readonly Decision[]): Decision {
  const whole = decided(
    shares.flatMap(({ combinations }) => combinations),
    asked,
  )
  const winter = (way: Way): number => {
    for (const { ways, heatingChange_J } of shares) {
      const at = ways.findIndex(({ combination }) => combination === way.combination)
      if (at >= 0) return heatingChange_J[at] ?? NaN
    }
    return NaN
  }
  return { ...shares[0]!, ...whole, heatingChange_J: whole.ways.map(winter) }
}

function poolOf(asked: Deciding): readonly Measure[] {
  const people = asked.keptFor === undefined || asked.keptFor === 'awake' || asked.keptFor === 'asleep'
  return [...BUILDING_MEASURES, ...AIR_MEASURES].filter(
    (measure) =>
      measure.fits(asked.scenario) && (people || measure.id !== 'ceilingFan') && allowed(asked, measure.id),
  )
}

const allowed = ({ only }: Deciding, id: Measure['id'] | PlantKind): boolean =>
  only === undefined || only.includes(id)

/** All sets of at most three measures, small ones first; a night fan and night opening exclude each other. */
function subsets(pool: readonly Measure[]): (readonly Measure[])[] {
  let sized: (readonly Measure[])[] = [[]]
  const all = [...sized]
  for (let size = 1; size <= MOST_ALONE; size++) {
    sized = sized.flatMap((set) =>
      pool
        .filter((_, i) => set.length === 0 || i > pool.indexOf(set.at(-1)!))
        .map((measure) => [...set, measure]),
    )
    all.push(...sized)
  }
  return all.filter((set) => set.filter(({ id }) => id === 'nightOpening' || id === 'nightFan').length < 2)
}

const INVENTED_PRICES: Problem = {
  code: 'decide-invented-prices',
  severity: 'warning',
  ...said(words`Prices that you have not given are invented starting values.`),
  remedy: 'Give your own under Prices: the order of the ways may change.',
  place: { field: 'prices.panel_perm2' },
}
