/* Panels that are only guessed are left out by what they are hoped to come to: where one is better, the hope widens. */
import { expect, test } from 'vitest'
import { Hopes } from '#studies/decide-hopes.ts'
import type { Combination } from '#studies/decide-trial.ts'

const panels = (guess: 'enough' | 'floor', totalCost: number, miss: number): Combination => ({
  measures: [],
  plant: 'panels',
  names: [],
  panelArea_m2: 4,
  storeVolume_m3: 1,
  hoursOver_h: 0,
  peak_C: 26,
  miss,
  meets: miss <= 0,
  firstCost: totalCost / 2,
  yearlyCost: totalCost / 20,
  totalCost,
  electric_J: 100 * totalCost,
  water_m3: 0,
  mostHumid_frac: 0,
  onRoof: true,
  guess,
})

test('panels that come to no less than was hoped leave the hope as it is', () => {
  const hopes = new Hopes()
  const before = hopes.best(panels('enough', 1000, 0))
  hopes.compare(panels('enough', 1000, 0), panels('enough', 900, -0.1))
  expect(hopes.best(panels('enough', 1000, 0))).toEqual(before)
})

test('panels that come to less than was hoped: all others may come to as little', () => {
  const hopes = new Hopes()
  hopes.compare(panels('enough', 1000, 0), panels('enough', 400, -0.1))
  const best = hopes.best(panels('enough', 1000, 0))[0]!
  expect(best.totalCost).toBeLessThanOrEqual(400.0001)
  expect(best.firstCost).toBeLessThanOrEqual(200.0001)
  expect(best.electric_J).toBeLessThanOrEqual(40_000.01)
})

test('the largest area: the hope narrows to what was seen of several, and widens again by one that is better', () => {
  const hopes = new Hopes()
  const rough = panels('floor', 1000, 2)
  const hoped = (): { cost: number; miss: number } => {
    const all = hopes.best(rough)
    return {
      cost: Math.min(...all.map(({ totalCost }) => totalCost)),
      miss: Math.min(...all.map(({ miss }) => miss)),
    }
  }
  const first = hoped()
  for (let k = 0; k < 4; k++) hopes.compare(rough, panels('floor', 999, 1.999))
  const narrow = hoped()
  expect(narrow.cost).toBeGreaterThan(first.cost)
  expect(narrow.miss).toBeGreaterThan(first.miss)
  expect(narrow.cost).toBeLessThan(999)
  hopes.compare(rough, panels('floor', 950, 2.1))
  hopes.compare(rough, panels('floor', 1010, 1.8))
  expect(hoped().cost).toBeLessThan(950)
  expect(hoped().miss).toBeLessThan(1.8)
})

test('the largest area: a smaller tank does not cool better, nor does one that cools better cost less', () => {
  const hopes = new Hopes()
  const rough = panels('floor', 1000, 2)
  for (let k = 0; k < 4; k++)
    hopes.compare(rough, panels('floor', k % 2 === 0 ? 950 : 1050, k % 2 === 0 ? 2.1 : 1.8))
  const [cheaper, cooler] = hopes.best(rough)
  expect(cheaper!.totalCost).toBeLessThan(950)
  expect(cheaper!.miss).toBeCloseTo(2 - 0.006, 12)
  expect(cooler!.totalCost).toBe(1000)
  expect(cooler!.miss).toBeLessThan(1.8)
  // one that is both widens what a smaller tank is hoped to do
  hopes.compare(rough, panels('floor', 990, 1.9))
  expect(hopes.best(rough)[0]!.miss).toBeLessThan(1.9)
})

test('the largest area that may be enough after all: a smaller one may be too', () => {
  const cooler = new Hopes().best(panels('floor', 1000, 0.05))[1]!
  expect(cooler.meets).toBe(true)
  expect(cooler.totalCost).toBe(800)
})
