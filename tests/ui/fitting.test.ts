import { describe, expect, test } from 'vitest'
import type { Combination } from '#studies/decide-trial.ts'
import { fits, nearestThatFits } from '#ui/deciding/fitting.ts'

const way = (name: string, panelArea_m2: number, hoursOver_h: number, totalCost: number): Combination =>
  ({
    names: name === '' ? [] : [name],
    panelArea_m2,
    hoursOver_h,
    totalCost,
    meets: hoursOver_h <= 40,
  }) as unknown as Combination

describe('a way whose panels have no place', () => {
  const all = [
    way('', 0, 900, 0),
    way('large', 60, 30, 900),
    way('shade + panels', 12, 35, 700),
    way('dear + panels', 8, 10, 1200),
    way('paint', 0, 39, 100),
  ]
  test('is not called fitting', () => {
    expect(fits(all[1]!, 40)).toBe(false)
    expect(fits(way('a', 40, 1, 1), 40)).toBe(true)
  })
  test('gives way to the cheapest with panels that fits and meets the target', () => {
    expect(nearestThatFits(all, 40)?.names).toEqual(['shade + panels'])
  })
  test('then to one without panels, then to the fewest hours; never to the room as it is', () => {
    expect(nearestThatFits(all, 5)?.names).toEqual(['paint'])
    const missing = [way('', 0, 20, 0), way('a', 0, 300, 1), way('b', 0, 200, 9), way('c', 60, 10, 1)]
    expect(nearestThatFits(missing, 40)?.names).toEqual(['b'])
    expect(nearestThatFits([way('', 0, 900, 0)], 40)).toBeNull()
  })
})
