import { describe, expect, test } from 'vitest'
import { MADE, sourceFiles, type SourceFile } from './source-files.ts'

/** Tables of data, which are as long as what they list. */
const TABLES = ['src/model/design/scenario/fields.ts']
const FILE_LINES = 250
/** The rule is about 40; nothing at all may be longer than this. */
const FUNCTION_LINES = 60

const tooLong = (files: readonly SourceFile[]): string[] =>
  files
    .filter((file) => file.lines > FILE_LINES && !TABLES.includes(file.path) && !MADE.includes(file.path))
    .map((file) => `${file.path}: ${file.lines}`)

const longFunctions = (files: readonly SourceFile[]): string[] =>
  files
    .filter(({ path }) => !MADE.includes(path))
    .flatMap(({ path, text }) =>
      [...text.matchAll(/^(?:export )?function\*? (\w+)[^]*?^}$/gm)]
        .map((found) => ({ name: found[1]!, lines: found[0].split('\n').length }))
        .filter(({ lines }) => lines > FUNCTION_LINES)
        .map(({ name, lines }) => `${path} ${name}: ${lines}`),
    )

describe('one subject a file', () => {
  test(`files of model, shell and live have at most ${FILE_LINES} lines`, () => {
    expect(
      tooLong(['src/model', 'src/shell', 'src/live'].flatMap((folder) => sourceFiles(folder, ['.ts']))),
    ).toEqual([])
  })

  test(`components have at most ${FILE_LINES} lines`, () => {
    expect(tooLong(sourceFiles('src', ['.svelte']))).toEqual([])
  })

  test(`functions at the top level of the model have at most ${FUNCTION_LINES} lines`, () => {
    expect(longFunctions(sourceFiles('src/model', ['.ts']))).toEqual([])
  })

  test('a planted file and a planted function that are too long are found, and one line less is not', () => {
    const planted = (lines: number): SourceFile => ({ path: 'src/model/planted.ts', text: '', lines })
    expect(tooLong([planted(FILE_LINES + 1)])).toEqual([`src/model/planted.ts: ${FILE_LINES + 1}`])
    expect(tooLong([planted(FILE_LINES)])).toEqual([])
    const written = (lines: number): SourceFile => ({
      path: 'src/model/planted.ts',
      text: ['export function planted(): void {', ...Array<string>(lines - 2).fill('  void 0'), '}'].join(
        '\n',
      ),
      lines,
    })
    expect(longFunctions([written(FUNCTION_LINES + 1)])).toEqual([
      `src/model/planted.ts planted: ${FUNCTION_LINES + 1}`,
    ])
    expect(longFunctions([written(FUNCTION_LINES)])).toEqual([])
  })
})
