import { expect, test } from 'vitest'
import { defaultScenario } from '#model/design/scenario'
import type { Combination } from '#studies/decide-trial.ts'
import { turnOver } from '#studies/decide-turn.ts'

/* Label: exact (sums by hand). */

const prices = { ...defaultScenario().prices, energy_perkWh: 0.2, years_y: 10 }
const one = (name: string, totalCost: number, kWh: number, meets = true): Combination =>
  ({ names: [name], totalCost, electric_J: kWh * 3.6e6, meets }) as unknown as Combination

test('the gap, and the price of electricity at which both cost the same', () => {
  const first = one('fan', 400, 30)
  const found = turnOver(
    [first, one('shade', 460, 0), one('cheap and too warm', 1, 0, false)],
    first,
    prices,
  )!
  expect(found.rival.names).toEqual(['shade'])
  expect(found.gap).toBe(60)
  expect(found.gap_frac).toBeCloseTo(0.15, 12)
  // 30 kWh a year over 10 years at p: 60 more at 0.2 + 0.2
  expect(found.energy_perkWh).toBeCloseTo(0.4, 12)
})

test('electricity never turns the order where the first way uses less of it', () => {
  const first = one('shade', 400, 0)
  expect(turnOver([first, one('fan', 460, 30)], first, prices)!.energy_perkWh).toBeNull()
})

test('nothing to turn over where nothing meets the target, or nothing else does', () => {
  const first = one('fan', 400, 30)
  expect(turnOver([first], first, prices)).toBeNull()
  expect(turnOver([first, one('shade', 460, 0)], { ...first, meets: false }, prices)).toBeNull()
  expect(turnOver([first], undefined, prices)).toBeNull()
})
