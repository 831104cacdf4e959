import { expect, test } from 'vitest'
import type { Combination } from '#studies/decide-trial.ts'
import { waysOf } from '#studies/decide-ways.ts'
import { alonePlants } from '#ui/deciding/way-words.ts'
import type { Decision } from '#studies/decide.ts'

/* Regression: who came for panels finds the cheapest way with them, also where another is cheaper. */

const made = (plant: Combination['plant'], measures: readonly string[], totalCost: number, miss = -1) =>
  ({
    plant,
    measures,
    totalCost,
    miss,
    meets: miss <= 0,
    names: [...measures, plant],
    electric_J: totalCost,
    firstCost: totalCost,
    onRoof: plant === 'panels',
  }) as unknown as Combination

const NIGHT_AIR = made('none', ['nightVent'], 100)
const SHADED_PANELS = made('panels', ['shade'], 900)
const PANELS = made('panels', [], 1400)

test('where shade and night air are cheaper, the cheapest way with panels has a card of its own', () => {
  const ways = waysOf([PANELS, NIGHT_AIR, SHADED_PANELS], null, 'K')
  expect(ways.map(({ kind, combination }) => [kind, combination])).toEqual([
    ['cheapest', NIGHT_AIR],
    ['withPanels', SHADED_PANELS],
    ['panelsOnly', PANELS],
  ])
})

test('where panels are the cheapest there is one card that says both', () => {
  const [first, ...rest] = waysOf([PANELS, made('none', ['nightVent'], 5000)], null, 'K')
  expect(first!.combination).toBe(PANELS)
  expect(first!.also).toEqual(expect.arrayContaining(['withPanels', 'panelsOnly']))
  expect(rest.every(({ combination }) => combination !== PANELS)).toBe(true)
})

test('panels that miss the target with everything beside them get no such card', () => {
  const ways = waysOf([NIGHT_AIR, made('panels', ['shade'], 900, 2)], null, 'K')
  expect(ways.map(({ kind }) => kind)).not.toContain('withPanels')
})

test('each machine is listed alone, and one that was not simulated so without numbers', () => {
  const rows = alonePlants({ combinations: [PANELS, NIGHT_AIR, SHADED_PANELS] } as unknown as Decision)
  expect(rows.map(({ alone }) => alone)).toEqual([PANELS, null, null, null])
})
