import ts from 'typescript'
import { F64, I32, type Body, type Imported, type Kind, OP, moduleOf } from './bytes.ts'
import { Code, Local } from './code.ts'
import { type Column, type Meaning, Names } from './names.ts'
import { askedOf } from './operators.ts'
import { Statements } from './statements.ts'

/** A function that the hours call, as text, with the constants and tables it names. */
export interface Called {
  readonly name: string
  readonly takes: readonly string[]
  readonly body: ts.Block
  readonly constants: ReadonlyMap<string, number>
}

/** The hours as text. */
export interface Blocks {
  /** The hours and their parts as one block. */
  readonly text: string
  /** Parts that are functions of their own, by name: they read and write their numbers in places, `numbers[…]`. */
  readonly apart: ReadonlyMap<string, string>
}

/** What the hours are made of, and where their numbers and arrays are in the memory. */
export interface HoursSource extends Blocks {
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

/** The hours as a WebAssembly module: a function without arguments, `run`, over its `memory`. Functions of `Math` that are no instruction are asked for from outside. */
export function hoursModule(source: HoursSource): Uint8Array<ArrayBuffer> {
  const tables = new Map(
    [...source.tables].map(([name, offset]): [string, Meaning] => [name, standing(offset)]),
  )
  const asked = askedOf([source.text, ...source.apart.values()])
  const called = source.called.map((each) => calledBody(each, tables))
  const names = [...asked, ...source.called.map(({ name }) => name), ...source.apart.keys()]
  const known = new Map([
    ...names.map((name, index): [string, Meaning] => [name, { is: 'function', index }]),
    ...asConstants(source.constants),
    ['numbers', standing(source.numbersAt)] as const,
  ])
  const apart = [...source.apart.values()].map((text) => apartBody(source, text, known))
  return moduleOf(asked.map(importedOf), [...called, ...apart, hoursBody(source, known)], PAGES)
}

/** A function of the language, taken as it is. */
function importedOf(name: string): Imported {
  const [from, own] = name.split('.') as ['Math', 'cbrt']
  return { from, name: own, takes: Array.from({ length: Math[own].length }, () => F64), gives: [F64] }
}

/** An array of numbers that stands for good. */
const standing = (offset: number): Meaning => ({
  is: 'column',
  column: { pointer: null, offset, entries: 'f64', length: null },
})

const asConstants = (constants: ReadonlyMap<string, number>): [string, Meaning][] =>
  [...constants].map(([name, value]) => [name, { is: 'constant', value }])

const statementsOf = (text: string): readonly ts.Statement[] =>
  ts.createSourceFile('hours.ts', text, ts.ScriptTarget.Latest, true).statements

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

/** Reads whole numbers and arrays that a text names from their places into variables, and makes those known. */
function takeHead(source: HoursSource, text: string, code: Code, known: Map<string, Meaning>): void {
  const named = new Set(text.match(/\b[A-Za-z_]\w*/g))
  const read = (place: number): Local => {
    const local = code.local(I32)
    code.i32(0)
    code.memory(OP.i32Load, 2, source.headAt + 4 * place)
    code.of(OP.localSet, local)
    return local
  }
  source.whole.forEach((name, i) => {
    if (named.has(name)) known.set(name, { is: 'variable', local: read(i) })
  })
  const columns = [...source.columns]
  columns.forEach(([name, entries], i) => {
    if (!named.has(name)) return
    const pointer = read(source.whole.length + i)
    const at = source.lengths.indexOf(name)
    const length = at < 0 ? null : read(source.whole.length + columns.length + at)
    known.set(name, { is: 'column', column: { pointer, offset: 0, entries, length } })
  })
}

function apartBody(source: HoursSource, text: string, all: ReadonlyMap<string, Meaning>): Body {
  const statements = statementsOf(text)
  return settled((notWhole) => {
    const code = new Code()
    const known = new Map(all)
    takeHead(source, text, code, known)
    const names = new Names(code, notWhole, known)
    const writer = new Statements(code, names, false)
    for (const each of statements) writer.write(each)
    return { names, body: { takes: [], gives: [], bytes: code.bytes() } }
  })
}

function hoursBody(source: HoursSource, all: ReadonlyMap<string, Meaning>): Body {
  const statements = statementsOf(source.text)
  return settled((notWhole) => {
    const code = new Code()
    const known = new Map(all)
    const variable = (name: string, kind: Kind): Local => {
      const local = code.local(kind)
      known.set(name, { is: 'variable', local })
      return local
    }
    takeHead(source, source.text, code, known)
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
