import { join } from 'node:path'
import ts from 'typescript'
import { expect, test } from 'vitest'
import { ROOT } from './source-files.ts'

/* What compiler and resolver hold is proved by a file that breaks it. */

/** What the compiler says of a file that is not there, under the settings of a folder. */
function complaints(config: string, path: string, code: string): string[] {
  const read = ts.readConfigFile(join(ROOT, config), (name) => ts.sys.readFile(name))
  const { options } = ts.parseJsonConfigFileContent(
    { ...(read.config as object), include: [], files: [join(ROOT, path)] },
    ts.sys,
    join(ROOT, config, '..'),
  )
  const host = ts.createCompilerHost(options)
  const planted = join(ROOT, path)
  const real = { read: host.readFile, exists: host.fileExists, source: host.getSourceFile }
  host.readFile = (name) => (name === planted ? code : real.read.call(host, name))
  host.fileExists = (name) => name === planted || real.exists.call(host, name)
  host.getSourceFile = (name, version, ...rest) =>
    name === planted
      ? ts.createSourceFile(name, code, version)
      : real.source.call(host, name, version, ...rest)
  const program = ts.createProgram([planted], options, host)
  const file = program.getSourceFile(planted)!
  return [...program.getSyntacticDiagnostics(file), ...program.getSemanticDiagnostics(file)].map(
    ({ messageText }) => ts.flattenDiagnosticMessageText(messageText, ' '),
  )
}

const INDEX = 'export const first = (values: readonly number[]): number => values[0]'

test.each([
  ['tsconfig.json', 'src/live/planted.ts', 'an entry that may not be there', INDEX, /undefined/],
  ['tsconfig.json', 'tests/planted.ts', 'the same in a test', INDEX, /undefined/],
  [
    'src/model/tsconfig.json',
    'src/model/basis/units/planted.ts',
    'the same in the model',
    INDEX,
    /undefined/,
  ],
  ['src/studies/tsconfig.json', 'src/studies/planted.ts', 'the same in a study', INDEX, /undefined/],
  [
    'src/model/tsconfig.json',
    'src/model/basis/units/planted.ts',
    'the page from the model',
    'export const page = document.title',
    /Cannot find name 'document'/,
  ],
  [
    'src/model/tsconfig.json',
    'src/model/basis/units/planted.ts',
    'Node from the model',
    'export const home = process.env',
    /Cannot find name 'process'/,
  ],
  [
    'tsconfig.json',
    'src/live/planted.ts',
    'a room past its door',
    `export { blackbody_Wm2 } from '#model/outdoors/air/blackbody.ts'`,
    /Cannot find module/,
  ],
])('%s refuses in %s: %s', (config, path, _what, code, said) => {
  expect(complaints(config, path, code).join('\n')).toMatch(said)
})

test('a file that breaks nothing is taken', () => {
  const code = `import { blackbody_Wm2 } from '#model/outdoors/air'\nexport const flux_Wm2 = blackbody_Wm2(20)`
  expect(complaints('src/model/tsconfig.json', 'src/model/outdoors/sky/planted.ts', code)).toEqual([])
})
