import { describe, expect, test } from 'vitest'
import type { Way } from '#studies/decide-ways.ts'
import { surerWay } from '#ui/deciding/surer.ts'

const way = (kind: string, name: string, totalCost: number, panelArea_m2 = 0, meets = true): Way =>
  ({ kind, also: [], combination: { names: [name], totalCost, panelArea_m2, meets } }) as unknown as Way
const of32 = (met: number) => ({ met, draws: 32 })

describe('a surer way than the first', () => {
  const ways = [
    way('cheapest', 'Shade', 300),
    way('leastElectricity', 'Paint', 476),
    way('noRoofWork', 'Night fan', 350),
    way('withPanels', 'panels', 400, 20),
  ]
  test('is the cheapest that holds in clearly more of the years tried, with what it costs more', () => {
    expect(surerWay(ways, [of32(14), of32(31), of32(17), of32(32)], 12)).toEqual({
      kind: 'leastElectricity',
      name: 'Paint',
      sure: of32(31),
      more: 176,
    })
  })
  test('is none where the first is sure, or misses the target, or no other is known to be surer', () => {
    expect(surerWay(ways, [of32(28), of32(32), of32(32), of32(32)], 40)).toBeNull()
    expect(surerWay(ways, [of32(14), null, of32(17), null], 40)).toBeNull()
    expect(surerWay(ways, [null, of32(31), of32(31), of32(31)], 40)).toBeNull()
    const missed = [way('nearest', 'Shade', 300, 0, false), ways[1]!]
    expect(surerWay(missed, [of32(0), of32(31)], 40)).toBeNull()
  })
  test('is none that has no place for its panels, or costs more than twice as much', () => {
    const others = [ways[0]!, ways[3]!, way('panelsOnly', 'dear', 601)]
    expect(surerWay(others, [of32(14), of32(31), of32(31)], 12)).toBeNull()
    expect(surerWay(others, [of32(14), of32(31), of32(31)], 20)?.name).toBe('Panels')
  })
})
