import fc from 'fast-check'
import { expect, test } from 'vitest'
import { ProblemError } from '#model/basis/words'
import { type Field, readScenarioFile, withField, defaultScenario, fieldAt } from '#model/design/scenario'
import { parseScenario } from '#inside/model/design/scenario/parse.ts'
import { fieldPaths } from '#inside/model/design/scenario/schema.ts'

/*
 * Whatever is put into whatever field: either the scenario is valid, or a ProblemError names the field. Nothing else
 * is thrown, and the scenario it was meant for stays as it was.
 */
const odd = fc.oneof(
  fc.constantFrom<unknown>(
    NaN,
    Infinity,
    -Infinity,
    -0,
    0,
    -1,
    1e308,
    5e-324,
    null,
    undefined,
    true,
    '',
    ' ',
    '12',
    '1e3',
    '0x10',
    '١٢',
    'NaN',
    [],
    {},
  ),
  fc.double(),
  fc.integer(),
  fc.string({ unit: 'grapheme' }),
  fc.string({ unit: 'binary' }),
  fc.array(fc.double(), { minLength: 22, maxLength: 26 }),
  fc.anything({ withBigInt: true, withDate: true, withNullPrototype: true, withSparseArray: true }),
)

function isInside(field: Field, value: unknown): boolean {
  switch (field.type) {
    case 'number':
      return (
        typeof value === 'number' &&
        value >= field.min &&
        value <= field.max &&
        (field.unit !== 'count' || Number.isInteger(value))
      )
    case 'choice':
      return (field.options as readonly unknown[]).includes(value)
    case 'switch':
      return typeof value === 'boolean'
    case 'text':
      return typeof value === 'string' && value.length <= field.maxLength
    case 'several':
      return (
        Array.isArray(value) &&
        [...value].every((one) => (field.options as readonly unknown[]).includes(one)) &&
        new Set(value).size === value.length
      )
    case 'dayProfile':
      return (
        Array.isArray(value) &&
        value.length === 24 &&
        [...value].every((one) => typeof one === 'number' && one >= field.min && one <= field.max)
      )
  }
}

test('anything as a field’s value: taken when it is inside the range, else refused by name', () => {
  const kept = JSON.stringify(defaultScenario())
  let refused = 0
  fc.assert(
    fc.property(fc.constantFrom(...fieldPaths()), odd, (path, value) => {
      const { group, name, field } = fieldAt(path)!
      const { scenario, problems } = parseScenario({ [group]: { [name]: value } }, 'fuzz.json')
      const named = problems.some(
        (problem) => problem.code === 'scenario-value' && problem.place.field === path,
      )
      expect(named).toBe(!isInside(field, value))
      if (named) {
        refused++
        expect(scenario).toBeNull()
        for (const problem of problems) expect(problem.message.length).toBeLessThan(300)
      }
    }),
    { numRuns: 3000, seed: 11 },
  )
  expect(refused).toBeGreaterThan(1000)
  expect(JSON.stringify(defaultScenario())).toBe(kept)
})

test('any text typed for any field: taken, or a ProblemError with the field’s name', () => {
  const text = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.string({ unit: 'grapheme' }),
    fc.double().map(String),
    fc.constantFrom('1,5', '1 000', '−3', '５', '12abc', 'true', 'on', '[]', '{}', '__proto__'),
  )
  fc.assert(
    fc.property(fc.constantFrom(...fieldPaths()), text, (path, typed) => {
      try {
        const { group, name, field } = fieldAt(path)!
        const set = withField(defaultScenario(), path, typed)
        expect(isInside(field, (set[group] as unknown as Record<string, unknown>)[name])).toBe(true)
      } catch (error) {
        if (!(error instanceof ProblemError)) throw error
        expect(error.problems.map((problem) => problem.place.field)).toEqual([path])
      }
    }),
    { numRuns: 3000, seed: 12 },
  )
})

test('any path and any JSON: taken, or a ProblemError', () => {
  const path = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.tuple(fc.string(), fc.string()).map((parts) => parts.join('.')),
  )
  fc.assert(
    fc.property(path, fc.json(), fc.string({ unit: 'binary' }), (anyPath, json, noise) => {
      for (const action of [
        () => withField(defaultScenario(), anyPath, noise),
        () => readScenarioFile(json, 'fuzz.json'),
        () => readScenarioFile(noise, 'fuzz.json'),
      ]) {
        try {
          action()
        } catch (error) {
          if (!(error instanceof ProblemError)) throw error
        }
      }
    }),
    { numRuns: 1500, seed: 13 },
  )
})
