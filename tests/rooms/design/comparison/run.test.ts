import { expect, it } from 'vitest'
import { Stages } from '#studies/stages.ts'
import { comparisonCases, comparisonRun } from '#model/design/comparison'
import { nightOrAllDay } from '#inside/model/design/comparison/verdicts.ts'
import { defaultScenario } from '#model/design/scenario'
import { inventedWeather } from '../../invented-weather.ts'

const { weather } = inventedWeather(40 * 24, 3)
const axes = {
  climates: [{ name: 'Invented', weather }],
  plans: ['nightOnly', 'allDay'] as const,
  coatings: ['own', 'blackPaint'],
  covers: ['bare', 'film'] as const,
  cuts: ['Paint the roof white'],
}

it('sets every combination side by side, bare and film of one design together, each equal to its own answer', () => {
  const base = defaultScenario()
  const scenario = { ...base, target: { ...base.target, autoArea: false, area_m2: 6 } }
  const cases = comparisonCases(scenario, axes)
  expect(cases).toHaveLength(2 * 2 * 2 * 2)
  expect(new Set(cases.map((c) => [c.plan, c.coating, c.cover, c.building].join())).size).toBe(16)
  const stages = new Stages()
  const running = comparisonRun(cases, (one) => stages.answer(one.scenario, one.weather))
  const seen: number[] = []
  let step = running.next()
  for (; !step.done; step = running.next()) seen.push(step.value.rows.length)
  expect(seen).toEqual(cases.map((_, i) => i + 1))
  const { rows, coverPairs } = step.value
  expect(coverPairs).toHaveLength(8)
  for (const { bare, film } of coverPairs) {
    expect(rows[bare]).toMatchObject({ ...rows[film], cover: 'bare', ...numbersOf(rows[bare]!) })
    expect(rows[film]!.cover).toBe('film')
  }
  // A stages of its own, fresh, so that nothing remembered can leak from case to case.
  const last = cases.at(-1)!
  const alone = new Stages().answer(last.scenario, last.weather)
  expect(rows.at(-1)!.peak_C).toBe(alone.sizing.withPanels.peak_C)
  const night = rows.find((row) => row.plan === 'nightOnly')!
  const allDay = rows.find((row) => row.plan === 'allDay' && row.cover === night.cover)!
  expect(nightOrAllDay(night, allDay).decidedBy).toBe('peak')
})

const numbersOf = (row: object) =>
  Object.fromEntries(Object.entries(row).filter(([, value]) => typeof value === 'number'))
