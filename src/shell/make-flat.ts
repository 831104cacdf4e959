import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import ts from 'typescript'
import { runHours } from '../model/building/year/flat/hours-part.ts'
import { inlined, readParts } from './flatten.ts'

const FOLDER = fileURLToPath(new URL('../model/building/year/flat/', import.meta.url))
export const FLAT_FILE = `${FOLDER}hours.ts`

/** The file that `npm run -s flat` writes: the parts of the flat year as one function, their numbers as local variables. */
export async function flatFile(): Promise<string> {
  const parts = await readParts(FOLDER)
  const kind = (name: string): readonly string[] => parts.kinds.get(name)!
  const loaded = ['Given', 'Kept', 'Counts'].flatMap(kind)
  const names = new Set([...parts.kinds.values()].flat())
  const at = (name: string): string => `numbers[${loaded.indexOf(name)}]`
  const lines = [
    '// Made by `npm run -s flat` from the parts beside it: change those, each of which names the equation it is.',
    "import type { Columns, Whole } from './numbers.ts'",
    '',
    ...[...parts.constants].map(([name, value]) => `const ${name} = ${value}`),
    '',
    '/** Places of the numbers that are given and kept. */',
    `export const PLACES = ${JSON.stringify(Object.fromEntries(loaded.map((name, i) => [name, i])))} as const`,
    '',
    '/** Steps room, plant and tank through hours. @param numbers those given and kept; the latter are overwritten */',
    'export function flatHours(columns: Columns, whole: Whole, numbers: Float64Array): void {',
    `const { ${kind('Columns').join(', ')} } = columns`,
    `const { ${kind('Whole').join(', ')} } = whole`,
    ...kind('Given').map((name) => `const ${name} = ${at(name)}!`),
    ...kind('Kept').map((name) => `let ${name} = ${at(name)}!`),
    ...kind('Counts').map((name) => `let ${name} = ${at(name)}! | 0`),
    ...kind('Within').map((name) => `let ${name} = 0`),
    ...kind('Flags').map((name) => `let ${name} = false`),
    inlined(runHours.name, parts, names),
    ...[...kind('Kept'), ...kind('Counts')].map((name) => `${at(name)} = ${name}`),
    '}',
  ]
  const made = ts.createSourceFile('hours.ts', lines.join('\n'), ts.ScriptTarget.Latest, true)
  return ts.createPrinter({ removeComments: false }).printFile(made)
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(FLAT_FILE, await flatFile())
