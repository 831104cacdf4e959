import { F64, I32, type Kind, OP, float, signed, unsigned } from './bytes.ts'

/** A local variable; its index is known when all its uses are. */
export class Local {
  uses = 0
  readonly kind: Kind
  constructor(kind: Kind) {
    this.kind = kind
  }
}

/** Indices that take one byte. */
const SHORT = 128

/** The instructions of one function as they are written, with variables that blocks over give back. */
export class Code {
  private readonly items: (number | Local)[] = []
  private readonly locals: Local[] = []
  private readonly spare: Record<Kind, Local[]> = { [I32]: [], [F64]: [] }
  private readonly takes: readonly Local[]
  /** What can be left by a branch, innermost last: its label, or null. */
  private readonly frames: (string | null)[] = []

  constructor(takes: readonly Local[] = []) {
    this.takes = takes
  }

  emit(...bytes: readonly number[]): void {
    this.items.push(...bytes)
  }

  /** A variable for a block, or for all. */
  local(kind: Kind): Local {
    const found = this.spare[kind].pop()
    if (found !== undefined) return found
    const made = new Local(kind)
    this.locals.push(made)
    return made
  }

  /** Gives a variable back. */
  free(local: Local): void {
    this.spare[local.kind].push(local)
  }

  of(op: typeof OP.localGet | typeof OP.localSet | typeof OP.localTee, local: Local): void {
    local.uses++
    this.items.push(op, local)
  }

  i32(value: number): void {
    this.emit(OP.i32Const, ...signed(value))
  }

  f64(value: number): void {
    this.emit(OP.f64Const, ...float(value))
  }

  /** A load or store at the address on the stack and `offset` bytes more. @param align log 2 of the width */
  memory(op: number, align: number, offset: number): void {
    this.emit(op, align, ...unsigned(offset))
  }

  /** Opens a block, loop or if. @param gives a kind, or NOTHING */
  open(op: number, gives: number, label: string | null = null): void {
    this.emit(op, gives)
    this.frames.push(label)
  }

  close(): void {
    this.emit(OP.end)
    this.frames.pop()
  }

  /** A branch to the innermost frame of a label. @throws Error where none is around */
  branch(op: typeof OP.br | typeof OP.brIf, label: string): void {
    const at = this.frames.lastIndexOf(label)
    if (at < 0) throw new Error(`no block named ${label} is around this`)
    this.emit(op, ...unsigned(this.frames.length - 1 - at))
  }

  /** The body with its locals declared: those used most have the short indices, in runs of one kind. */
  bytes(): number[] {
    const used = this.locals.filter(({ uses }) => uses > 0).toSorted((a, b) => b.uses - a.uses)
    const short = SHORT - this.takes.length
    const runs = [used.slice(0, short), used.slice(short)].flatMap((some) =>
      [I32, F64].map((kind) => some.filter((local) => local.kind === kind)),
    )
    const places = new Map([...this.takes, ...runs.flat()].map((local, i) => [local, i]))
    const declared = runs.filter((run) => run.length > 0)
    return [
      ...unsigned(declared.length),
      ...declared.flatMap((run) => [...unsigned(run.length), run[0]!.kind]),
      ...this.items.flatMap((item) => (item instanceof Local ? unsigned(places.get(item)!) : [item])),
      OP.end,
    ]
  }
}
