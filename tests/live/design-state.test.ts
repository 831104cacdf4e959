import { expect, test, vi } from 'vitest'
import { DesignState } from '#live/design-state.svelte.ts'
import { defaultScenario } from '#model/design/scenario'

test('one drag is one step back; other fields and later drags are steps of their own', () => {
  const clock = vi.spyOn(performance, 'now')
  const design = new DesignState({ scenario: defaultScenario(), climate: 'continental' })
  const at = (now: number) => clock.mockReturnValue(now)
  at(0)
  design.setAt('room.length_m', 6)
  at(100)
  design.setAt('room.length_m', 7)
  at(200)
  design.setAt('room.width_m', 3)
  at(5000)
  design.setAt('room.width_m', 2)
  design.undo()
  expect(design.scenario.room.width_m).toBe(3)
  design.undo()
  expect(design.scenario.room).toMatchObject({ width_m: defaultScenario().room.width_m, length_m: 7 })
  design.undo()
  expect(design.scenario).toEqual(defaultScenario())
  expect(design.canUndo).toBe(false)
  design.redo()
  expect(design.scenario.room.length_m).toBe(7)
  clock.mockRestore()
})

test('a new change after undo ends what could be redone', () => {
  const design = new DesignState({ scenario: defaultScenario(), climate: 'continental' })
  design.setAt('room.length_m', 6)
  design.undo()
  design.setAt('room.width_m', 3)
  expect(design.canRedo).toBe(false)
})

test('undo brings back the climate as well as the fields', () => {
  const design = new DesignState({ scenario: defaultScenario(), climate: 'continental' })
  design.setClimate('hot-desert')
  design.setAt('room.length_m', 6)
  design.undo()
  expect(design.climate).toBe('hot-desert')
  design.undo()
  expect(design.climate).toBe('continental')
})
