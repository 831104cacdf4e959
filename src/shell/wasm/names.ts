import type ts from 'typescript'
import { F64, I32, type Kind } from './bytes.ts'
import type { Code, Local } from './code.ts'

/** An array in the memory: where its pointer is kept, or where it stands for good, and what its entries are. */
export interface Column {
  readonly pointer: Local | null
  readonly offset: number
  readonly entries: 'f64' | 'i32' | 'u8'
  /** Where its length is kept, where that is asked for. */
  readonly length: Local | null
}

/** What a name stands for: a variable, a number known beforehand, an array, or a function by its index. */
export type Meaning =
  | { readonly is: 'variable'; readonly local: Local }
  | { readonly is: 'constant'; readonly value: number }
  | { readonly is: 'column'; readonly column: Column }
  | { readonly is: 'function'; readonly index: number }

/** Names as they are seen from inside the block being written. */
export class Names {
  private readonly code: Code
  private readonly blocks: { own: Map<string, Meaning>; locals: Local[] }[] = []
  /** Variables begun with a whole number that turned out to hold others too, by where they are declared. */
  private readonly notWhole: Set<ts.Node>
  private readonly declared = new Map<Local, ts.Node>()
  /** True where a variable was first met as something else than was thought: the text is to be gone through once more. */
  changed = false

  constructor(code: Code, notWhole: Set<ts.Node>, known: ReadonlyMap<string, Meaning>) {
    this.code = code
    this.notWhole = notWhole
    this.blocks.push({ own: new Map(known), locals: [] })
  }

  /** @throws Error for a name that nobody gave */
  of(name: string): Meaning {
    const found = this.blocks.findLast(({ own }) => own.has(name))
    if (found === undefined) throw new Error(`no part says what ${name} is`)
    return found.own.get(name)!
  }

  /** Runs `write` with names of its own. */
  inside(write: () => void): void {
    this.blocks.push({ own: new Map(), locals: [] })
    write()
    for (const local of this.blocks.pop()!.locals) this.code.free(local)
  }

  /** A new variable of the innermost block, of the kind its first value has; it has no name yet. */
  variable(kind: Kind | 'whole', node: ts.Node): Local {
    const isWhole = kind === I32 || (kind === 'whole' && !this.notWhole.has(node))
    const local = this.code.local(isWhole ? I32 : F64)
    this.blocks.at(-1)!.locals.push(local)
    if (kind === 'whole') this.declared.set(local, node)
    else this.declared.delete(local)
    return local
  }

  /** Gives a variable of the innermost block its name. */
  name(name: string, local: Local): void {
    this.blocks.at(-1)!.own.set(name, { is: 'variable', local })
  }

  /** Notes that a variable is given a number of this kind. @throws Error where it can be whole only */
  given(local: Local, kind: Kind | 'whole'): void {
    if (local.kind === F64 || kind !== F64) return
    const node = this.declared.get(local)
    if (node === undefined) throw new Error('a whole number is given one that is not')
    this.notWhole.add(node)
    this.changed = true
  }
}
