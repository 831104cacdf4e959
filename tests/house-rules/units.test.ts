import { expect, test } from 'vitest'
import { fieldAt } from '#model/design/scenario'
import { fieldPaths } from '#inside/model/design/scenario/schema.ts'
import { isUnit } from '#model/basis/units'
import { sourceFiles } from './source-files.ts'

/* Numbers that cross a boundary say their unit in their name, and the name is made of one table. */

test.each(fieldPaths())('%s: a number ends in its unit, nothing else does', (path) => {
  const { name, field } = fieldAt(path)!
  const suffix = name.split('_')[1]
  if (field.type === 'number' || field.type === 'dayProfile') {
    expect(isUnit(field.unit), `${field.unit} is in the table of units`).toBe(true)
    if (field.unit === 'count') expect(suffix).toBeUndefined()
    else expect(suffix).toBe(field.unit)
  } else expect(suffix).toBeUndefined()
})

/** Suffixes for people at a terminal that the model itself does not use. */
const AT_THE_EDGE = ['kWh', 'L', 'mL', 'g']

test('columns and named results of the command line end in a known unit', () => {
  const names = sourceFiles('src/shell', ['.ts']).flatMap(({ path, text }) =>
    [...text.matchAll(/^ {4}([a-z][A-Za-z0-9]*_[A-Za-z0-9]+)(?::|,$)/gm)].map(
      (found) => `${path} ${found[1]}`,
    ),
  )
  expect(names.length).toBeGreaterThan(40)
  const unknown = names.filter((name) => {
    const suffix = name.split('_').at(-1)!
    return !isUnit(suffix) && !AT_THE_EDGE.includes(suffix) && suffix !== 'local'
  })
  expect(unknown).toEqual([])
})
