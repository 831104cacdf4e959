import { expect, test } from 'vitest'
import { builtNear, builtOf, taskOf } from '#model/design/assembly'
import { type SizingResult, sizeNear } from '#model/design/sizing'
import { withField, type Scenario } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'
import { sizingOf, Stages } from '#studies/stages.ts'
import { sampleWeather } from '../../../../src/shell/samples.ts'
import { moved, type Move, nearMoves } from '../../../speed/near-moves.ts'

/*
 * Label: independent calculation. What is found from a near answer against the search from scratch, over moves that were drawn before
 * any of them was run: the area before whole modules within 0.3 % there and back, and the same modules and tank as built wherever
 * any are given.
 */
const MOVES = nearMoves()
/** So many of the 24 may be left to the search from scratch. */
const MOST_LEFT = 6

interface Base {
  readonly stages: Stages
  readonly record: WeatherRecord
  readonly sized: SizingResult
}
const bases = new Map<string, Base>()

function baseOf({ climate, scenario }: Move): Base {
  const known = bases.get(climate)
  if (known !== undefined) return known
  const stages = new Stages()
  const record = sampleWeather(climate)
  const base = { stages, record, sized: sizingOf(stages.prepare(scenario, record)) }
  bases.set(climate, base)
  return base
}

let left = 0

test.each(MOVES)('$climate, $field moved to $value: from a near answer as from scratch', (move) => {
  const { stages, record, sized: before } = baseOf(move)
  const changed = stages.prepare(moved(move), record)
  const sized = sizingOf(changed)
  const near = sizeNear(taskOf(changed), before.anchor!)!
  expect(Math.abs(near.anchor.area_m2 / sized.area_m2 - 1)).toBeLessThan(0.003)
  const back = sizeNear(taskOf(stages.prepare(move.scenario, record)), near.anchor)!
  expect(Math.abs(back.anchor.area_m2 / before.area_m2 - 1)).toBeLessThan(0.003)
  const built = builtNear(changed, before.anchor!)
  if (built === null) left++
  else {
    const { area_m2, storeVolume_m3 } = builtOf(changed, sized).design.candidate
    expect([built.area_m2, built.storeVolume_m3]).toEqual([area_m2, storeVolume_m3])
  }
})

test('few of them are left to the search from scratch', () => {
  expect(left).toBeLessThanOrEqual(MOST_LEFT)
})

test('nothing is found from near by where no tank or no area is chosen, or no panels are needed', () => {
  const [move] = MOVES
  const { stages, record, sized } = baseOf(move!)
  const of = (scenario: Scenario): unknown => builtNear(stages.prepare(scenario, record), sized.anchor!)
  expect(of(withField(move!.scenario, 'store.autoVolume', 'false'))).toBeNull()
  expect(of(withField(move!.scenario, 'target.limit_C', '45'))).toBeNull()
  expect(of(withField(move!.scenario, 'target.autoArea', 'false'))).toBeNull()
})
