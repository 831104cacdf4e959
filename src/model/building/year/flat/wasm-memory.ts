/** What is used of a memory of WebAssembly, which is no part of the language's own library. */
export interface WasmMemory {
  readonly buffer: ArrayBuffer
  grow(pages: number): number
}

type Column = Float64Array | Int32Array | Uint8Array

const PAGE_BYTES = 65_536
/** Pages that a memory is made larger by at least. */
const GROW_PAGES = 16
/** Past this all columns are given up and those of the run at hand are copied anew. A year’s weather, room and panel take 5 MB. */
const MOST_BYTES = 64 * 2 ** 20
const ALIGN = 8

const aligned = (bytes: number): number => Math.ceil(bytes / ALIGN) * ALIGN

interface Held {
  readonly at: number
  /** Entries that have been copied. */
  filled: number
}

/**
 * Columns in a memory, each copied when it is first met. Below them is room for the state of one run. They stay until there are too
 * many: then all are given up at once, and `generation` says that what was known of their places is no longer so.
 */
export class WasmColumns {
  generation = 1
  /** The whole memory as numbers; another array when it has grown. */
  numbers: Float64Array<ArrayBuffer>
  private readonly memory: WasmMemory
  private readonly most_bytes: number
  private held = new WeakMap<Column, Held>()
  private base: number
  private top: number

  constructor(memory: WasmMemory, most_bytes = MOST_BYTES) {
    this.memory = memory
    this.most_bytes = most_bytes
    this.numbers = new Float64Array(memory.buffer)
    this.base = this.top = 0
  }

  /**
   * Holds columns, all at once.
   * @param growing      one that has entries to come: it gets its place, and what it has by `fill`
   * @param below_bytes  that are kept free below all columns
   * @returns where each begins, bytes
   */
  hold(columns: readonly Column[], growing: Column, below_bytes: number): number[] {
    const wanted = (): number =>
      columns.reduce((sum, each) => sum + (this.held.has(each) ? 0 : aligned(each.byteLength)), 0)
    if (below_bytes > this.base) {
      this.base = aligned(below_bytes)
      this.giveUp()
    } else if (this.top + wanted() > this.most_bytes) this.giveUp()
    this.reach(this.top + wanted())
    return columns.map((each) => this.placeOf(each, each === growing))
  }

  /** Copies the entries of a held column from where they were last copied on to before `filled`. */
  fill(column: Float64Array, filled: number): void {
    const held = this.held.get(column)!
    if (held.filled >= filled) return
    this.numbers.set(column.subarray(held.filled, filled), held.at / ALIGN + held.filled)
    held.filled = filled
  }

  private placeOf(column: Column, isGrowing: boolean): number {
    const known = this.held.get(column)
    if (known !== undefined) return known.at
    const at = this.top
    const bytes = new Uint8Array(column.buffer, column.byteOffset, column.byteLength)
    if (!isGrowing) new Uint8Array(this.memory.buffer).set(bytes, at)
    this.held.set(column, { at, filled: isGrowing ? 0 : column.length })
    this.top += aligned(column.byteLength)
    return at
  }

  private giveUp(): void {
    this.held = new WeakMap()
    this.top = this.base
    this.generation++
  }

  private reach(bytes: number): void {
    const { memory } = this
    const lacking = Math.ceil((bytes - memory.buffer.byteLength) / PAGE_BYTES)
    if (lacking > 0) memory.grow(Math.max(lacking, GROW_PAGES))
    if (this.numbers.buffer !== memory.buffer) this.numbers = new Float64Array(memory.buffer)
  }
}
