import { describe, expect, test } from 'vitest'
import { defaultScenario, uncertainInputs, withField } from '#model/design/scenario'
import { AREA_DOUBTS } from '#ui/trust/area-doubts.ts'
import { areaErrors } from '#ui/trust/evidence-row.ts'
import { CHECKS } from './checks/all.ts'
import { fieldChecks } from './checks/field.ts'
import { runChecks } from './run.ts'
import { readTable } from './table.ts'

/** Hours of any kind: which inputs are drawn does not depend on them. */
const drawn = (cover: 'bare' | 'film') =>
  uncertainInputs(withField(defaultScenario(), 'cover.kind', cover), {})

describe('the measured error of each part and the range of an answer', () => {
  test('every part with measurements says how it gets there', () => {
    const parts = AREA_DOUBTS.map(({ part }) => part)
    for (const { theme } of CHECKS.filter(({ kind }) => kind === 'measured')) expect(parts).toContain(theme)
    expect(new Set(parts).size).toBe(parts.length)
  })
  test('the inputs that it names are drawn', () => {
    const fields = drawn('film').map(({ field }) => field)
    for (const { field } of AREA_DOUBTS) if (field !== null) expect(fields).toContain(field)
  })
  // The cost of a range is its draws, not its inputs, but each input spreads them thinner.
  test('no more inputs than before: thirteen bare, one more under a film', () => {
    expect(drawn('bare')).toHaveLength(13)
    expect(drawn('film')).toHaveLength(14)
  })
  test('what is drawn of a bare panel covers the scatter of the boards measured in the field', () => {
    const rows = runChecks(fieldChecks, readTable().rows, '')
    const boards = areaErrors(rows).find(
      ({ theme, unit }) => theme === 'Panels in the field' && unit === 'W/m²',
    )!
    const measured = rows
      .filter(({ kind, theme, unit }) => kind === 'measured' && theme === boards.theme && unit === 'W/m²')
      .map(({ ours }) => ours!)
    const mean_Wm2 = measured.reduce((sum, ours) => sum + ours, 0) / measured.length
    const { low, high } = drawn('bare').find(({ field }) => field === 'panel.fieldFactor_frac')!
    expect(((high - low) / Math.sqrt(12)) * mean_Wm2).toBeGreaterThanOrEqual(boards.rmse)
  })
})
