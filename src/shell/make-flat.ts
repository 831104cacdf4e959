import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import ts from 'typescript'
import { runHours } from '../model/building/year/flat/hours-part.ts'
import { callOf, inlined, markOf, type Parts, readParts } from './flatten.ts'
import { wasmFile } from './wasm/hours-file.ts'
import type { Blocks } from './wasm/hours-module.ts'

const FOLDER = fileURLToPath(new URL('../model/building/year/flat/', import.meta.url))
export const FLAT_FILE = `${FOLDER}hours.ts`
export const WASM_FILE = `${FOLDER}hours-wasm.ts`

/**
 * Parts that stay functions of their own and hand numbers over in places: all at once V8 would compile anew whenever a branch is
 * met for the first time, and that takes longer than a season.
 */
const APART = [
  'runStep',
  'beginHour',
  'setRoomHour',
  'solveStep',
  'solveLayers',
  'moveLayers',
  'settle',
  'settlePlate',
  'nextShare',
  'openWindows',
  'takeSlack',
  'finishAlone',
  'finishRun',
  'takePipes',
  'enterPipes',
  'enterStep',
  'enterRest',
  'setCharging',
  'takeFilmTangent',
  'solveMass',
  'enterRun',
]
/** The same in WebAssembly: those in several places, which would be written as often, and the film’s solution. */
const APART_IN_WASM = ['takeFilmTangent', 'takeTangent', 'solveLayers', 'setFlow', 'finishRoom']

const TYPES = { columns: 'Columns', whole: 'Whole', numbers: 'Float64Array' } as const

/** A function of the made file: its part's name, its text, and the numbers it names and sets. */
interface Unit {
  readonly name: string
  readonly body: string
  readonly named: ReadonlySet<string>
  readonly set: ReadonlySet<string>
  readonly calls: readonly string[]
}

const words = (text: string): string[] => text.match(/\b[A-Za-z_]\w*/g) ?? []

function unitOf(name: string, parts: Parts, numbers: ReadonlySet<string>, apart: readonly string[]): Unit {
  const body = inlined(name, parts, numbers, new Set(apart))
  const named = new Set(words(body).filter((word) => numbers.has(word)))
  const set = [...named].filter((word) =>
    new RegExp(`\\b${word}\\b\\s*(?:[-+*/]?=(?!=)|\\+\\+|--)`).test(body),
  )
  return {
    name,
    body,
    named,
    set: new Set(set),
    calls: apart.filter((other) => body.includes(callOf(other))),
  }
}

/** What a unit and all that it calls name, or set. */
function deep(unit: Unit, units: readonly Unit[], which: 'named' | 'set'): Set<string> {
  const called = units.filter(({ name }) => unit.calls.includes(name))
  return new Set([...unit[which], ...called.flatMap((each) => [...deep(each, units, which)])])
}

/** Writes the units, with the places of their numbers. */
class Writer {
  private readonly units: readonly Unit[]
  private readonly parts: Parts
  private readonly isWasm: boolean
  /** Numbers with a place: those given or kept, and those that several units name. */
  readonly places: readonly string[]

  /** @param isWasm  whether units are handed nothing, for WebAssembly, where all is in one memory */
  constructor(parts: Parts, apart: readonly string[], isWasm: boolean) {
    this.parts = parts
    this.isWasm = isWasm
    const numbers = new Set([...parts.kinds.values()].flat())
    this.units = [runHours.name, ...apart].map((name) => unitOf(name, parts, numbers, apart))
    const between = [...this.kind('Within'), ...this.kind('Flags')].filter(
      (name) => this.units.filter(({ named }) => named.has(name)).length > 1,
    )
    this.places = ['Given', 'Kept', 'Counts'].flatMap((kind) => this.kind(kind)).concat(between)
  }

  private kind(name: string): readonly string[] {
    return this.parts.kinds.get(name)!
  }

  private place(name: string): string {
    return `numbers[${this.places.indexOf(name)}]`
  }

  private read(name: string): string {
    if (this.kind('Flags').includes(name)) return `${this.place(name)} === 1`
    return this.kind('Counts').includes(name) ? `${this.place(name)}! | 0` : `${this.place(name)}!`
  }

  private write(name: string): string {
    return `${this.place(name)} = ${name}${this.kind('Flags').includes(name) ? ' ? 1 : 0' : ''}`
  }

  /** Numbers of a unit that have a place and may change. */
  private shared(of: Iterable<string>): string[] {
    const given = this.kind('Given')
    return [...of].filter((name) => this.places.includes(name) && !given.includes(name))
  }

  private call(from: Unit, name: string): string {
    const to = this.units.find((unit) => unit.name === name)!
    const read = deep(to, this.units, 'named')
    const changed = deep(to, this.units, 'set')
    return [
      ...this.shared(from.set)
        .filter((each) => read.has(each))
        .map((each) => this.write(each)),
      `${name}(${this.isWasm ? '' : this.arguments(to).join(', ')})`,
      ...this.shared(from.named)
        .filter((each) => changed.has(each))
        .map((each) => `${each} = ${this.read(each)}`),
    ].join('\n')
  }

  /** What a unit is handed: arrays and whole numbers where it, or one it calls, names any. */
  private arguments(unit: Unit): (keyof typeof TYPES)[] {
    const named = deep(unit, this.units, 'named')
    const asks = (kind: string): boolean => this.kind(kind).some((name) => named.has(name))
    return [
      ...(asks('Columns') ? ['columns' as const] : []),
      ...(asks('Whole') ? ['whole' as const] : []),
      'numbers',
    ]
  }

  private taken(unit: Unit, kind: string, from: string): string[] {
    const mine = this.kind(kind).filter((name) => unit.named.has(name))
    return mine.length === 0 ? [] : [`const { ${mine.join(', ')} } = ${from}`]
  }

  /** The body of a unit with the calls it makes. */
  private body(unit: Unit): string {
    return unit.calls.reduce(
      (text, name) => text.replaceAll(callOf(name), `{ ${markOf(`to ${name}`)}${this.call(unit, name)}\n}`),
      unit.body,
    )
  }

  /** That with its numbers read at its beginning and those it sets written at its end. */
  private inside(unit: Unit): string[] {
    const calls = new Set(
      unit.calls.flatMap((name) =>
        this.shared(
          deep(
            this.units.find((u) => u.name === name)!,
            this.units,
            'set',
          ),
        ),
      ),
    )
    const local = [...unit.named].filter((name) => !this.places.includes(name))
    const own = (kind: string): string[] => local.filter((name) => this.kind(kind).includes(name))
    return [
      ...this.kind('Given')
        .filter((name) => unit.named.has(name))
        .map((name) => `const ${name} = ${this.read(name)}`),
      ...this.shared(unit.named).map(
        (name) => `${unit.set.has(name) || calls.has(name) ? 'let' : 'const'} ${name} = ${this.read(name)}`,
      ),
      ...own('Within').map((name) => `let ${name} = 0`),
      ...own('Flags').map((name) => `let ${name} = false`),
      this.body(unit),
      ...this.shared(unit.set).map((name) => this.write(name)),
    ]
  }

  /** One unit as a function. */
  private function(unit: Unit): string {
    const isMain = unit.name === runHours.name
    return [
      `${isMain ? '/** Steps room, plant and tank through hours. @param numbers by the places in `hours-wasm.ts`; those kept are overwritten */\nexport ' : ''}function ${isMain ? 'flatHours' : unit.name}(${this.arguments(
        unit,
      )
        .map((each) => `${each}: ${TYPES[each]}`)
        .join(', ')}): void {`,
      ...this.taken(unit, 'Columns', 'columns'),
      ...this.taken(unit, 'Whole', 'whole'),
      ...this.inside(unit),
      '}',
    ].join('\n')
  }

  /** The hours as one block of text, and the units apart by name, likewise. */
  blocks(): Blocks {
    const [main, ...apart] = this.units
    return {
      text: this.body(main!),
      apart: new Map(apart.map((unit) => [unit.name, `{ ${this.inside(unit).join('\n')} }`])),
    }
  }

  /** The file. */
  text(): string {
    return [
      '// Made by `npm run -s flat` from the parts beside it: change those, each of which names the equation it is.',
      ...[...this.parts.called].map(([name, from]) => `import { ${name} } from '${from}'`),
      "import type { Columns, Whole } from './numbers.ts'",
      '',
      ...[...this.parts.constants].map(([name, value]) => `const ${name} = ${value}`),
      ...this.units.map((unit) => this.function(unit)),
    ].join('\n')
  }
}

/** What `npm run -s flat` writes: the parts of the flat year in a few functions, their numbers as local variables; and as WebAssembly. */
export async function flatFiles(): Promise<ReadonlyMap<string, string>> {
  const parts = await readParts(FOLDER)
  const writer = new Writer(parts, APART, false)
  const blocks = new Writer(parts, APART_IN_WASM, true).blocks()
  const file = ts.createSourceFile('hours.ts', writer.text(), ts.ScriptTarget.Latest, true)
  return new Map([
    [FLAT_FILE, ts.createPrinter().printFile(file)],
    [WASM_FILE, await wasmFile(parts, writer.places, blocks)],
  ])
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  for (const [path, text] of await flatFiles()) writeFileSync(path, text)
