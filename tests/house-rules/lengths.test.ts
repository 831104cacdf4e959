import { describe, expect, test } from 'vitest'
import { sourceFiles } from './source-files.ts'

/** Tables of data, which are as long as what they list. */
const TABLES = ['src/model/design/scenario/fields.ts']
const MODEL_LINES = 250
const COMPONENT_LINES = 250
/** The rule is about 40; nothing at all may be longer than this. */
const FUNCTION_LINES = 60

describe('one subject a file', () => {
  test(`files of model, shell and live have at most ${MODEL_LINES} lines`, () => {
    const long = ['src/model', 'src/shell', 'src/live']
      .flatMap((folder) => sourceFiles(folder, ['.ts']))
      .filter((file) => file.lines > MODEL_LINES && !TABLES.includes(file.path))
    expect(long.map((file) => `${file.path}: ${file.lines}`)).toEqual([])
  })

  test(`components have at most ${COMPONENT_LINES} lines`, () => {
    const long = sourceFiles('src', ['.svelte']).filter((file) => file.lines > COMPONENT_LINES)
    expect(long.map((file) => `${file.path}: ${file.lines}`)).toEqual([])
  })

  test(`functions at the top level of the model have at most ${FUNCTION_LINES} lines`, () => {
    const long = sourceFiles('src/model', ['.ts']).flatMap(({ path, text }) =>
      [...text.matchAll(/^(?:export )?function\*? (\w+)[^]*?^}$/gm)]
        .map((found) => ({ name: found[1]!, lines: found[0].split('\n').length }))
        .filter(({ lines }) => lines > FUNCTION_LINES)
        .map(({ name, lines }) => `${path} ${name}: ${lines}`),
    )
    expect(long).toEqual([])
  })
})
