import ts from 'typescript'
import { F64, I32, type Body, type Kind, OP, moduleOf } from './bytes.ts'
import { Code, Local } from './code.ts'
import { type Column, type Meaning, Names } from './names.ts'
import { Statements } from './statements.ts'

/** A function that the hours call, as text, with the constants and tables it names. */
export interface Called {
  readonly name: string
  readonly takes: readonly string[]
  readonly body: ts.Block
  readonly constants: ReadonlyMap<string, number>
}

/** What the hours are made of, and where their numbers and arrays are in the memory. */
export interface HoursSource {
  /** The hours and all their parts as one block of text. */
  readonly text: string
  readonly constants: ReadonlyMap<string, number>
  readonly called: readonly Called[]
  /** Tables in the memory from the beginning on, where each begins, bytes. */
  readonly tables: ReadonlyMap<string, number>
  /** Whole numbers and pointers, 4 bytes each from `headAt` on. */
  readonly headAt: number
  readonly whole: readonly string[]
  readonly columns: ReadonlyMap<string, Column['entries']>
  /** Columns whose lengths follow the pointers. */
  readonly lengths: readonly string[]
  /** Numbers, 8 bytes each from `numbersAt` on: those given and kept, and whole ones among them. */
  readonly numbersAt: number
  readonly given: readonly string[]
  readonly kept: readonly string[]
  readonly counts: readonly string[]
  /** Numbers and flags that nothing outside asks for. */
  readonly within: readonly string[]
  readonly flags: readonly string[]
}

const PAGES = 2

/** Writes again until it is known of every variable whether it is whole. */
function settled(write: (notWhole: Set<ts.Node>) => { names: Names; body: Body }): Body {
  const notWhole = new Set<ts.Node>()
  for (;;) {
    const { names, body } = write(notWhole)
    if (!names.changed) return body
  }
}

/** The hours as a WebAssembly module: one function without arguments, `run`, over its `memory`. */
export function hoursModule(source: HoursSource): Uint8Array<ArrayBuffer> {
  const tables = new Map(
    [...source.tables].map(([name, offset]): [string, Meaning] => [
      name,
      { is: 'column', column: { pointer: null, offset, entries: 'f64', length: null } },
    ]),
  )
  const called = source.called.map((each) => calledBody(each, tables))
  const functions = new Map(
    source.called.map(({ name }, index): [string, Meaning] => [name, { is: 'function', index }]),
  )
  return moduleOf([...called, hoursBody(source, functions)], PAGES)
}

const asConstants = (constants: ReadonlyMap<string, number>): [string, Meaning][] =>
  [...constants].map(([name, value]) => [name, { is: 'constant', value }])

function calledBody({ takes, body, constants }: Called, tables: ReadonlyMap<string, Meaning>): Body {
  return settled((notWhole) => {
    const taken = takes.map(() => new Local(F64))
    const code = new Code(taken)
    const known = new Map([
      ...tables,
      ...asConstants(constants),
      ...taken.map((local, i): [string, Meaning] => [takes[i]!, { is: 'variable', local }]),
    ])
    const names = new Names(code, notWhole, known)
    new Statements(code, names, true).write(body)
    return { names, body: { takes: takes.map(() => F64), gives: [F64], bytes: code.bytes() } }
  })
}

function hoursBody(source: HoursSource, functions: ReadonlyMap<string, Meaning>): Body {
  const { statements } = ts.createSourceFile('hours.ts', source.text, ts.ScriptTarget.Latest, true)
  return settled((notWhole) => {
    const code = new Code()
    const known = new Map([...functions, ...asConstants(source.constants)])
    const variable = (name: string, kind: Kind): Local => {
      const local = code.local(kind)
      known.set(name, { is: 'variable', local })
      return local
    }
    const head = (place: number, local: Local): void => {
      code.i32(0)
      code.memory(OP.i32Load, 2, source.headAt + 4 * place)
      code.of(OP.localSet, local)
    }
    source.whole.forEach((name, i) => head(i, variable(name, I32)))
    const columns = [...source.columns]
    columns.forEach(([name, entries], i) => {
      const pointer = code.local(I32)
      head(source.whole.length + i, pointer)
      const at = source.lengths.indexOf(name)
      const length = at < 0 ? null : code.local(I32)
      if (length !== null) head(source.whole.length + columns.length + at, length)
      known.set(name, { is: 'column', column: { pointer, offset: 0, entries, length } })
    })
    const places = [...source.given, ...source.kept, ...source.counts]
    const offset = (name: string): number => source.numbersAt + 8 * places.indexOf(name)
    for (const name of places) {
      const kind = source.counts.includes(name) ? I32 : F64
      code.i32(0)
      code.memory(OP.f64Load, 3, offset(name))
      if (kind === I32) code.emit(0xfc, 0x02)
      code.of(OP.localSet, variable(name, kind))
    }
    for (const name of source.within) variable(name, F64)
    for (const name of source.flags) variable(name, I32)
    const names = new Names(code, notWhole, known)
    const writer = new Statements(code, names, false)
    for (const each of statements) writer.write(each)
    for (const name of [...source.kept, ...source.counts]) {
      const meaning = names.of(name)
      if (meaning.is !== 'variable') continue
      code.i32(0)
      code.of(OP.localGet, meaning.local)
      if (meaning.local.kind === I32) code.emit(OP.f64OfI32)
      code.memory(OP.f64Store, 3, offset(name))
    }
    return { names, body: { takes: [], gives: [], bytes: code.bytes() } }
  })
}
