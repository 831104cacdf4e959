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

/** Day and time to the second, as 2026-01-31 14:30:00. */
const MOMENT = new Intl.DateTimeFormat('sv-SE', { dateStyle: 'short', timeStyle: 'medium' })

/** Designs kept under a name in this browser. */
export class KeptDesigns {
  list = $state.raw<readonly KeptDesign[]>([])
  /** The design dropped last. */
  dropped = $state.raw<KeptDesign | null>(null)
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

  /** Keeps a design; another one of that name goes on under its name and time. */
  async keep(name: string, design: PlacedDesign): Promise<void> {
    await this.#trying(async () => {
      await this.refresh()
      const text = placedText(design)
      const before = this.list.find((kept) => kept.name === name)
      if (before !== undefined && before.text !== text) {
        const time = MOMENT.format(before.savedAt_ms)
        await this.#put({ ...before, name: `${name} (of ${time})` })
      }
      await this.#put({ name, savedAt_ms: Date.now(), text })
      await this.refresh()
    })
  }

  /** Drops a design; until the next one is dropped it can be brought back. */
  async forget(kept: KeptDesign): Promise<void> {
    await this.#trying(async () => {
      await del(kept.name, this.#db())
      this.dropped = kept
      await this.refresh()
    })
  }

  async bringBack(): Promise<void> {
    const { dropped } = this
    if (dropped === null) return
    await this.#trying(async () => {
      await this.#put(dropped)
      this.dropped = null
      await this.refresh()
    })
  }

  #put(kept: KeptDesign): Promise<void> {
    return set(kept.name, kept, this.#db())
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
