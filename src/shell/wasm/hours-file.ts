import { readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import ts from 'typescript'
import { textOf } from '../../model/building/year/flat/letters.ts'
import type { Parts } from '../flatten.ts'
import { type Blocks, type Called, hoursModule } from './hours-module.ts'
import type { Column } from './names.ts'

const ENTRIES: Readonly<Record<string, Column['entries']>> = {
  Float64Array: 'f64',
  Int32Array: 'i32',
  Uint8Array: 'u8',
}
const NUMBER_BYTES = 8
const HEAD_BYTES = 4

/** A function that the parts call, and its tables by name with their lengths. */
async function readCalled(
  name: string,
  from: string,
): Promise<{ called: Called; tables: [string, number][] }> {
  const path = join(dirname(new URL(import.meta.resolve(from)).pathname), `${name}.ts`)
  const file = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true)
  const node = file.statements.filter(ts.isFunctionDeclaration).find((each) => each.name?.text === name)
  if (node === undefined) throw new Error(`${path}: no function is named ${name}`)
  const constants = file.statements
    .filter(ts.isVariableStatement)
    .flatMap(({ declarationList }) => declarationList.declarations)
    .filter(({ initializer }) => initializer !== undefined && ts.isNumericLiteral(initializer))
    .map(({ name: own, initializer }): [string, number] => [own.getText(), Number(initializer!.getText())])
  const tables = Object.entries((await import(path)) as Record<string, unknown>)
    .filter((entry): entry is [string, Float64Array] => entry[1] instanceof Float64Array)
    .map(([own, { length }]): [string, number] => [own, length])
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
  const takes = node.parameters.map((each) => each.name.getText())
  return { called: { name, takes, body: node.body!, constants: new Map(constants) }, tables }
}

/**
 * The file that `npm run -s flat` writes beside `hours.ts`: the same parts, nearly all as one function, as a WebAssembly module, and
 * where numbers and arrays are in its memory.
 * @param places  numbers with a place, those given and kept first
 */
export async function wasmFile(parts: Parts, places: readonly string[], blocks: Blocks): Promise<string> {
  const kind = (name: string): readonly string[] => parts.kinds.get(name)!
  const read = await Promise.all([...parts.called].map(([name, from]) => readCalled(name, from)))
  const tables: [string, number][] = []
  let end = 0
  for (const [name, length] of read.flatMap((each) => each.tables)) {
    tables.push([name, end])
    end += NUMBER_BYTES * length
  }
  const texts = [blocks.text, ...blocks.apart.values()].join('\n')
  const lengths = kind('Columns').filter((name) => new RegExp(`\\b${name}\\.length\\b`).test(texts))
  const head = [kind('Whole'), kind('Columns'), lengths].flat().length
  const headNumbers = Math.ceil((HEAD_BYTES * head) / NUMBER_BYTES)
  const bytes = hoursModule({
    ...blocks,
    constants: parts.constants,
    called: read.map(({ called }) => called),
    tables: new Map(tables),
    headAt: end,
    whole: kind('Whole'),
    columns: new Map(kind('Columns').map((name) => [name, ENTRIES[parts.arrays.get(name)!]!])),
    lengths,
    numbersAt: end + NUMBER_BYTES * headNumbers,
    given: kind('Given'),
    kept: kind('Kept'),
    counts: kind('Counts'),
    within: kind('Within'),
    flags: kind('Flags'),
  })
  const asked = [kind('Given'), kind('Kept'), kind('Counts')].flat()
  const made = [
    '// Made by `npm run -s flat` from the parts beside it: change those, each of which names the equation it is.',
    ...[...parts.called].map(
      ([, from]) => `import { ${tables.map(([name]) => name).join(', ')} } from '${from}'`,
    ),
    '/** Places of the numbers that are given or kept, and how many there are with those handed between the functions of `hours.ts`. */',
    `export const PLACES = ${JSON.stringify(Object.fromEntries(asked.map((name, i) => [name, i])))} as const`,
    `export const NUMBERS = ${places.length}`,
    '/** A run’s state: whole numbers, pointers and lengths at first, 4 bytes each in this order; then its numbers; then its rows. */',
    `export const HEAD = ${JSON.stringify({ whole: kind('Whole'), columns: kind('Columns'), lengths })} as const`,
    `export const HEAD_NUMBERS = ${headNumbers}`,
    '/** Where the tables begin in the memory, and after them the state of a run, bytes. */',
    `export const TABLES = [${tables.map(([name, at]) => `[${at}, ${name}]`).join(', ')}] as const`,
    `export const STATE_AT = ${end}`,
    '/** The module, as `letters.ts` writes bytes. */',
    `export const MODULE = '${textOf(bytes)}'`,
  ]
  return ts
    .createPrinter()
    .printFile(ts.createSourceFile('hours-wasm.ts', made.join('\n'), ts.ScriptTarget.Latest, true))
}
