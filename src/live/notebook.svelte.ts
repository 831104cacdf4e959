import type { Problem } from '#model/basis/words'
import { readKept, setAside, writeKept } from '#live/kept-text.ts'
import { problemsOf } from '#live/problems-of.ts'

/** How a page's own work is written to a file and read back. */
export interface NotebookFormat<T> {
  readonly read: (text: string, file: string) => T
  readonly write: (value: T) => string
}

const MOST_STEPS = 100

/** Work of one page beside the design (field notes, a recipe): kept in the browser, with its way back. */
export class Notebook<T> {
  value: T = $state.raw() as T
  /** What was wrong with a file that was asked for; the work on the page is unchanged. */
  problems = $state.raw<readonly Problem[]>([])
  /** False when the browser refuses to keep the work. */
  kept = $state(true)
  #past = $state.raw<readonly T[]>([])
  readonly #name: string
  readonly #format: NotebookFormat<T>

  constructor(name: string, first: T, format: NotebookFormat<T>) {
    this.value = first
    this.#name = name
    this.#format = format
  }

  get canUndo(): boolean {
    return this.#past.length > 0
  }

  get text(): string {
    return this.#format.write(this.value)
  }

  /** Takes up what an earlier visit left; call once in the browser. */
  recall(): void {
    const text = readKept(this.#name)
    if (text === null) return
    this.open(text, 'the work kept in this browser')
    if (this.problems.length > 0) setAside(this.#name)
    this.#past = []
  }

  change(next: T): void {
    this.#past = [...this.#past, this.value].slice(-MOST_STEPS)
    this.#take(next)
  }

  undo(): void {
    const before = this.#past.at(-1)
    if (before === undefined) return
    this.#past = this.#past.slice(0, -1)
    this.#take(before)
  }

  /** Opens a file's text; what was there is one undo away. */
  open(text: string, file: string): void {
    this.problems = []
    try {
      this.change(this.#format.read(text, file))
    } catch (reason) {
      this.problems = problemsOf(reason)
    }
  }

  #take(next: T): void {
    this.value = next
    this.kept = writeKept(this.#name, this.#format.write(next))
  }
}
