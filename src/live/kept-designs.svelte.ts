import { del, entries, set, createStore, type UseStore } from 'idb-keyval'
import { placedText, readPlacedText, type PlacedDesign } from '#live/design-link.ts'
import { problemsOf } from '#live/problems-of.ts'
import type { Problem } from '#model/basis/words'

export interface KeptDesign {
  readonly name: string
  /** Epoch milliseconds. */
  readonly savedAt_ms: number
  readonly text: string
}

/** Designs kept under a name in this browser. */
export class KeptDesigns {
  list = $state.raw<readonly KeptDesign[]>([])
  problems = $state.raw<readonly Problem[]>([])
  #store: UseStore | null = null

  async refresh(): Promise<void> {
    await this.#trying(async () => {
      const found = await entries<string, KeptDesign>(this.#db())
      this.list = found
        .map(([, kept]) => kept)
        .filter(isKept)
        .sort((a, b) => b.savedAt_ms - a.savedAt_ms)
    })
  }

  /** Keeps a design; the same name replaces the earlier one. */
  async keep(name: string, design: PlacedDesign): Promise<void> {
    await this.#trying(async () => {
      await set(name, { name, savedAt_ms: Date.now(), text: placedText(design) }, this.#db())
      await this.refresh()
    })
  }

  async forget(name: string): Promise<void> {
    await this.#trying(async () => {
      await del(name, this.#db())
      await this.refresh()
    })
  }

  /** Null, with the reason in `problems`, when it cannot be read. */
  open(kept: KeptDesign): PlacedDesign | null {
    this.problems = []
    try {
      return readPlacedText(kept.text)
    } catch (reason) {
      this.problems = problemsOf(reason)
      return null
    }
  }

  async #trying(work: () => Promise<void>): Promise<void> {
    this.problems = []
    try {
      await work()
    } catch {
      this.problems = [
        {
          code: 'browser-keeps-nothing',
          severity: 'error',
          message: 'This browser does not let the page keep anything.',
          remedy: 'Save a file instead.',
          place: {},
        },
      ]
    }
  }

  #db(): UseStore {
    return (this.#store ??= createStore('duskbank-designs', 'designs'))
  }
}

/** What something else may have left under our names is passed over. */
function isKept(value: unknown): value is KeptDesign {
  if (typeof value !== 'object' || value === null) return false
  const { name, savedAt_ms, text } = value as Partial<KeptDesign>
  return typeof name === 'string' && Number.isFinite(savedAt_ms) && typeof text === 'string'
}
