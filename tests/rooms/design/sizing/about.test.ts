import { expect, test } from 'vitest'
import { Stages } from '#studies/stages.ts'
import { withField, defaultScenario } from '#model/design/scenario'
import { taskOf } from '#model/design/assembly'
import type { NearDesign } from '#model/design/sizing'
import { areaOnly } from '#inside/model/design/sizing/size.ts'
import { sampleWeather } from '../../../../src/shell/samples.ts'

/*
 * Label: independent calculation. The area that follows a slider, two seasons long, against the whole search to 0.3 %
 * at the same tank per area: within 1 %, which is less than a module and a tenth of a percent of the range around it.
 */
const record = sampleWeather('continental')
const base = withField(defaultScenario(), 'target.limit_C', '27')
const MOVES: readonly (readonly [string, string])[] = [
  ['room.roofU_Wm2K', '0.3'],
  ['room.roofU_Wm2K', '0.2'],
  ['room.wallReflectance_frac', '0.6'],
  ['room.airChange_1h', '1'],
  ['plan.setpoint_C', '23.5'],
  ['target.allowedHours_h', '60'],
  ['target.limit_C', '26.5'],
  ['panel.fieldFactor_frac', '0.9'],
]

test.each(MOVES)('%s moved to %s: about what the whole search finds', (field, value) => {
  const stages = new Stages()
  const { sizing } = stages.answer(base, record)
  const ratio_m3m2 = sizing.storeVolume_m3 / sizing.area_m2
  const moved = withField(base, field, value)
  const about = stages.about(moved, record, sizing)
  expect(about.kind).toBe('met')
  const start = { ratio_m3m2, guess_m2: 5, slope: null }
  const exact_m2 = areaOnly(taskOf(stages.prepare(moved, record)), start)!
  console.log(
    `${field} ${value}: about ${about.area_m2.toFixed(3)}, searched ${exact_m2.toFixed(3)} m² (before ${sizing.area_m2.toFixed(3)}, tank ${ratio_m3m2} m³/m²)`,
  )
  expect(Math.abs(about.area_m2 / exact_m2 - 1)).toBeLessThan(0.01)
})

test('followed move by move, each from the one before, it does not drift: ten moves on, within 1 % of the whole search', () => {
  const stages = new Stages()
  const { sizing } = stages.answer(base, record)
  const ratio_m3m2 = sizing.storeVolume_m3 / sizing.area_m2
  let near: NearDesign = sizing
  let moved = base
  for (let move = 1; move <= 10; move++) {
    moved = withField(base, 'room.roofU_Wm2K', String(0.35 + 0.04 * move))
    const { area_m2 } = stages.about(moved, record, near)
    near = { area_m2, storeVolume_m3: ratio_m3m2 * area_m2, slope: sizing.slope }
  }
  const start = { ratio_m3m2, guess_m2: 5, slope: null }
  const exact_m2 = areaOnly(taskOf(stages.prepare(moved, record)), start)!
  console.log(`ten moves on: about ${near.area_m2.toFixed(3)}, searched ${exact_m2.toFixed(3)} m²`)
  expect(exact_m2 / sizing.area_m2).toBeGreaterThan(1.3)
  expect(Math.abs(near.area_m2 / exact_m2 - 1)).toBeLessThan(0.01)
})

test('a target that the room holds by itself: not needed; one no area reaches: the largest area', () => {
  const stages = new Stages()
  const { sizing } = stages.answer(base, record)
  expect(stages.about(withField(base, 'target.limit_C', '35'), record, sizing)).toEqual({
    kind: 'notNeeded',
    area_m2: 0,
  })
  const cold = withField(withField(base, 'target.limit_C', '20'), 'target.allowedHours_h', '0')
  expect(stages.about(cold, record, sizing)).toEqual({ kind: 'floor', area_m2: cold.target.maxArea_m2 })
})
