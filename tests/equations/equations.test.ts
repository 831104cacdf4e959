import { readFileSync } from 'node:fs'
import ts from 'typescript'
import { describe, expect, test } from 'vitest'
import { ROOT } from '../house-rules/source-files.ts'
import { parsed } from './code.ts'
import { allCode, collectEquations, missingCoefficients } from './collect.ts'
import { pointedAt } from './pointed.ts'
import { rowsAround } from './rows.ts'
import { indexText } from './text.ts'

const code = allCode()
const entries = collectEquations(code)
const withCoefficients = entries.filter(({ coefficients }) => coefficients.length > 0)
const equationsOf = (some: typeof entries) => some.map(({ equation }) => equation)

test('the index beside the model is what paper, code and evidence say', () => {
  expect(readFileSync(`${ROOT}src/model/EQUATIONS.md`, 'utf8')).toBe(indexText(entries))
})

test('every equation has its place in the code, and its coefficients are written there', () => {
  expect(entries.length).toBeGreaterThanOrEqual(100)
  expect(withCoefficients.length).toBeGreaterThan(30)
  expect(equationsOf(entries.filter(({ at }) => at.length === 0))).toEqual([])
  expect(
    withCoefficients
      .map((entry) => [entry.equation, missingCoefficients(entry, code)] as const)
      .filter(([, missing]) => missing.length > 0),
  ).toEqual([])
})

test('every equation names what it rests on', () => {
  expect(equationsOf(entries.filter(({ source }) => source === ''))).toEqual([])
})

/**
 * Equations with coefficients that still want a check against something outside, though each is part of what is checked:
 * the sky and loop formulas that are a choice, and regressions of the place method, whose station years are not held here.
 */
const UNCHECKED = [
  'optional: +',
  'rows: p(u)',
  'dew: T_d =',
  'cloud: n = 1.041',
  'spread: warm',
  'small plate: Nu',
  'power: Φ',
]

test('every equation with coefficients has a check, but for those that are known to want one', () => {
  const unchecked = equationsOf(withCoefficients.filter(({ checks }) => checks.length === 0))
  console.log(`${unchecked.length} of ${withCoefficients.length} without a check of their own`)
  expect(unchecked.filter((equation) => !UNCHECKED.some((known) => equation.startsWith(known)))).toEqual([])
  expect(UNCHECKED.filter((known) => !unchecked.some((equation) => equation.startsWith(known)))).toEqual([])
})

test('what has no check of its own names a test or a check of what it is part of', () => {
  const alone = entries.filter(
    ({ checks, wider, tests }) => checks.length + wider.length + tests.length === 0,
  )
  expect(equationsOf(alone)).toEqual([])
})

describe('a place', () => {
  test('is a function, a constant or a method, with its line', () => {
    const { at, source } = pointedAt(code, 'building/year/books.ts#Books.ledger #UNKEPT | balance')
    const lines = readFileSync(`${ROOT}src/model/building/year/books.ts`, 'utf8').split('\n')
    expect(at.map(({ name }) => name)).toEqual(['Books.ledger', 'UNKEPT'])
    expect(lines[at[0]!.line - 1]).toMatch(/^ {2}ledger\(/)
    expect(lines[at[1]!.line - 1]).toMatch(/UNKEPT/)
    expect(source).toBe('balance')
  })
  test.each([
    ['outdoors/sky/clear.ts#SEA_LEVEL_PRESSURE_PA', /declares no SEA_LEVEL_PRESSURE_PA/],
    ['outdoors/sky/gone.ts#brutsaert1975', /declares no brutsaert1975/],
    ['building/year/books.ts#Books.gone', /has no gone/],
  ])('%s is refused', (place, why) => {
    expect(() => pointedAt(code, place)).toThrow(why)
  })
})

test('a check that is made from the rows of a list counts once for each, with that row’s names', () => {
  const source = parsed({
    path: 'x.ts',
    text: "const all = ([['a', () => f(1)], ['b', g]] as const).map(([name, got]) => ({ quantity: `of ${name}`, got }))",
  })
  let entry: ts.Node = source
  const visit = (node: ts.Node): void => {
    if (ts.isObjectLiteralExpression(node)) entry = node
    ts.forEachChild(node, visit)
  }
  visit(source)
  const rows = rowsAround(entry)
  expect(rows.map(({ filled }) => filled.get('name'))).toEqual(['a', 'b'])
  expect(rows.map(({ names }) => names)).toEqual([['f'], ['g']])
})
