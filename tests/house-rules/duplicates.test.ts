import { expect, test } from 'vitest'
import { linesOf, pairsIn } from './duplicates.ts'
import { MADE, sourceFiles } from './source-files.ts'

/*
 * No two places of `src` share ten lines or more. Counted are lines of code, with white space folded: no comments, blanks,
 * imports or lone punctuation. Two places share lines where the lines are equal to the letter, or where they have the same
 * shape (names, texts and numbers left out, keywords and signs kept) and at least half of ten do something. Rows of one
 * table, members of a type and styles have one shape because they are of one kind; they count to the letter alone.
 */
const LEAST = 10
const WORKING = 5

const ENDINGS = ['.ts', '.svelte', '.css', '.html', '.js']
const SOURCE = sourceFiles('src', ENDINGS).filter(({ path }) => !MADE.includes(path))
const among = (files: readonly { readonly path: string; readonly text: string }[]) =>
  pairsIn(
    files.map(({ path, text }) => linesOf(path, text)),
    LEAST,
    WORKING,
  ).map(({ lines, kind, places }) => `${lines} ${kind}: ${places.join(' ~ ')}`)

test('no two places of the source share ten lines', () => {
  expect(among(SOURCE)).toEqual([])
})

const STEPS = Array.from({ length: LEAST }, (_, i) => `  if (area_m2 > ${i}) room.add${i}(flow_kgs, 'x${i}')`)
const RENAMED = STEPS.map((line) => line.replaceAll('area_m2', 'volume_m3').replace('room.add', 'store.take'))

test.each([
  ['ten lines written twice', [STEPS, STEPS], 1],
  [
    'the same with comments, blanks and other indents between',
    [STEPS, STEPS.flatMap((line) => ['// why', '', `      ${line}`])],
    1,
  ],
  ['the same with other names and numbers', [STEPS, RENAMED], 1],
  ['nine lines', [STEPS.slice(1), STEPS.slice(1)], 0],
  ['twice in one file', [[...STEPS, 'export const between = () => 1', ...STEPS]], 1],
  [
    'rows of a table',
    [STEPS.map((_, i) => `  row${i}: ${i},`), STEPS.map((_, i) => `  line${i}: ${i + 1},`)],
    0,
  ],
  [
    'rows of a table to the letter',
    [STEPS.map((_, i) => `  row${i}: ${i},`), STEPS.map((_, i) => `  row${i}: ${i},`)],
    1,
  ],
])('%s', (_what, files, pairs) => {
  expect(among(files.map((lines, i) => ({ path: `planted-${i}.ts`, text: lines.join('\n') })))).toHaveLength(
    pairs,
  )
})

test('a part of the source put into another file', () => {
  const { path, text } = SOURCE.find(({ path }) => path.endsWith('live/engine.ts'))!
  const body = text.slice(text.indexOf('#started()'), text.indexOf('#rest()'))
  expect(among([...SOURCE, { path: 'src/planted.ts', text: body }]).join('\n')).toContain(`${path}:`)
})
