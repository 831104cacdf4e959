/* The search against simulating every combination, and what it says where nothing meets the target. */
import { describe, expect, test } from 'vitest'
import { createStudies, finish } from '#studies/index.ts'
import { joinDecisions } from '#studies/decide.ts'
import { guessedOf, type OtherCores, sizedAsBuilt } from '#studies/decide-refine.ts'
import { type Combination, Trials } from '#studies/decide-trial.ts'
import { Stages } from '#studies/stages.ts'
import { wordingText } from '#model/basis/words'
import { defaultScenario, PRESETS, withPreset, withWayTaken } from '#model/design/scenario'
import { sampleNames, sampleWeather } from '../../src/shell/samples.ts'

const IDS = [
  'paintRoof',
  'insulateRoof',
  'shade',
  'nightOpening',
  'nightFan',
  'ceilingFan',
  'mass',
  'airtight',
] as const
const PLANTS = ['direct', 'indirect', 'airConditioner', 'direct', 'indirect'] as const

/** Cost, miss, electricity and water: a front is a set of these. */
const merits = ({ totalCost, miss, electric_J, water_m3 }: Combination): string =>
  [totalCost, 10 * Math.max(0, miss), electric_J / 3.6e6, 10 * water_m3].map(Math.round).join(' ')

const cases = Array.from({ length: 50 }, (_, k) => {
  const names = sampleNames()
  return {
    k,
    climate: names[k % names.length]!,
    preset: PRESETS[(k * 3) % PRESETS.length]!,
    only: [IDS[k % 8]!, IDS[(k + 3) % 8]!, k % 3 === 0 ? ('panels' as const) : PLANTS[k % 5]!] as const,
    limit_C: 24 + (k % 7),
  }
})

describe('on small cases the front is that of simulating everything', () => {
  test.each(cases)('$k: $climate, $only', ({ climate, preset, only, limit_C }) => {
    const base = withPreset(defaultScenario(), preset)
    const scenario = { ...base, target: { ...base.target, limit_C } }
    const question = { scenario, weather: sampleWeather(climate), only, winters: false }
    const search = finish(createStudies().decide(question)).result
    const everything = finish(createStudies().decide({ ...question, skips: false })).result
    expect(everything.combinations.length).toBeGreaterThanOrEqual(search.combinations.length)
    expect(search.looked).toBe(everything.looked)
    expect(new Set(search.front.map(merits))).toEqual(new Set(everything.front.map(merits)))
  })
})

test('where nothing meets the target, the nearest is named, with what would have to change', () => {
  const base = defaultScenario()
  const scenario = { ...base, target: { ...base.target, kind: 'peak' as const, limit_C: 15 } }
  const question = { scenario, weather: sampleWeather('wet-tropics'), only: ['shade', 'nightFan'] as const }
  const { ways, combinations, changes } = finish(createStudies().decide(question)).result
  expect(ways[0]!.kind).toBe('nearest')
  expect(ways[0]!.combination.miss).toBe(Math.min(...combinations.map(({ miss }) => miss)))
  expect(wordingText(ways[0]!.why, 'si').replaceAll('\u00a0', ' ')).toMatch(
    /this comes nearest: the hottest hour that is not allowed is [\d.]+ K over/,
  )
  const limit = changes.find(({ field }) => field === 'target.limit_C')!
  const raised = (limit_C: number) =>
    finish(
      createStudies().decide({
        ...question,
        scenario: { ...scenario, target: { ...scenario.target, limit_C } },
      }),
    ).result
  expect(raised(limit.to).ways[0]!.combination.meets).toBe(true)
  expect(raised(limit.to - 0.2).ways[0]!.combination.meets).toBe(false)
})

test('a room that is cool enough needs nothing, and panels are not offered as its way', () => {
  const base = defaultScenario()
  const scenario = { ...base, target: { ...base.target, limit_C: 40 } }
  const { ways } = finish(createStudies().decide({ scenario, weather: sampleWeather('continental') })).result
  expect(ways[0]!.combination.measures).toEqual([])
  expect(ways[0]!.combination.plant).toBe('none')
})

test('a fan at the ceiling helps people and nothing else', () => {
  const question = { weather: sampleWeather('continental'), only: ['ceilingFan'] as const }
  const base = defaultScenario()
  const of = (keptFor: 'awake' | 'goods') => {
    const scenario = { ...base, target: { ...base.target, keptFor } }
    return finish(createStudies().decide({ ...question, scenario })).result.pool
  }
  expect(of('awake')).toEqual(['ceilingFan'])
  expect(of('goods')).toEqual([])
})

test('the winter line: paint on the roof costs heat, and nothing changes nothing', () => {
  const base = defaultScenario()
  const weather = sampleWeather('cold-continental')
  const heating_J = (limit_C: number, only: readonly 'paintRoof'[]) => {
    const scenario = { ...base, target: { ...base.target, kind: 'peak' as const, limit_C } }
    return finish(createStudies().decide({ scenario, weather, only })).result.winter[0]!.heatingChange_J
  }
  expect(heating_J(45, ['paintRoof'])).toBe(0)
  expect(heating_J(20, ['paintRoof'])).toBeGreaterThan(0)
})

test('shares of two workers, joined, name the same ways with the same winter lines as one search', () => {
  const base = defaultScenario()
  const question = {
    scenario: { ...base, prices: { ...base.prices, budget_each: 900 } },
    weather: sampleWeather('continental'),
    only: ['paintRoof', 'shade', 'nightFan', 'ceilingFan', 'direct'] as const,
  }
  const whole = finish(createStudies().decide(question)).result
  const shares = [0, 1].map(
    (index) => finish(createStudies().decide({ ...question, part: { index, of: 2 } })).result,
  )
  const joined = joinDecisions(question, shares)
  const named = (ways: typeof whole.ways) => ways.map(({ kind, combination }) => [kind, combination.names])
  expect(named(joined.ways)).toEqual(named(whole.ways))
  expect(new Set(joined.front.map(merits))).toEqual(new Set(whole.front.map(merits)))
  joined.winter.forEach((line, i) =>
    expect(line.heatingChange_J).toBeCloseTo(whole.winter[i]!.heatingChange_J, 3),
  )
  expect(joined.measureWinter.map(({ id }) => id)).toEqual(whole.measureWinter.map(({ id }) => id))
})

test('shares that leave panels guessed, joined and gone on with, come to the same as one search', () => {
  const question = {
    scenario: defaultScenario(),
    weather: sampleWeather('mediterranean-coast'),
    only: ['paintRoof', 'shade', 'ceilingFan', 'airConditioner', 'panels'] as const,
  }
  const whole = finish(createStudies().decide(question)).result
  const from = [0, 1].map(
    (index) => finish(createStudies().decide({ ...question, part: { index, of: 2 }, refines: false })).result,
  )
  expect(from.some(({ guessed }) => guessed.length > 0)).toBe(true)
  const joined = finish(createStudies().decide({ ...question, from })).result
  expect(joined.ways).toEqual(whole.ways)
  expect(new Set(joined.front.map(merits))).toEqual(new Set(whole.front.map(merits)))
  expect(joined.winter).toEqual(whole.winter)
  expect(joined.measureWinter).toEqual(whole.measureWinter)
  expect(joined.looked).toBe(whole.looked)
  // another core that answers late, and the last first
  const trials = new Trials(new Stages(), question.scenario, question.weather)
  const taken = new Map<Combination, Combination | null>()
  const others: OtherCores = {
    offer: (waiting) => {
      for (const [rough, sized] of [...taken].toReversed())
        if (sized === null) {
          taken.set(rough, sizedAsBuilt(trials, guessedOf(rough)))
          break
        }
      for (const rough of waiting.slice(1, 3)) if (!taken.has(rough)) taken.set(rough, null)
    },
    took: (rough) => taken.has(rough),
    sized: (rough) => taken.get(rough) ?? undefined,
  }
  const together = finish(createStudies().decide({ ...question, from, others })).result
  expect([...taken.values()].some((sized) => sized !== null)).toBe(true)
  expect(together).toEqual(joined)
})

test('a way taken draws what it drew while it was looked at, and a new search starts from the room as it is', () => {
  const weather = sampleWeather('continental')
  const base = defaultScenario()
  for (const id of ['ceilingFan', 'nightFan'] as const) {
    const question = { weather, only: [id], winters: false }
    const looked = finish(createStudies().decide({ ...question, scenario: base })).result
    const one = looked.combinations.find(({ measures }) => measures.includes(id))!
    const scenario = withWayTaken(base, [id])
    const { way } = finish(createStudies().size({ scenario, weather })).result
    expect(way!.electric_J).toBeGreaterThan(0)
    expect(way!.electric_J).toBeCloseTo(one.electric_J, 3)
    expect(way!.hoursOver_h).toBe(one.hoursOver_h)
    const again = finish(createStudies().decide({ ...question, scenario })).result
    expect(again.combinations.map(merits)).toEqual(looked.combinations.map(merits))
  }
})
