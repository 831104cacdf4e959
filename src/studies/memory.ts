/**
 * Remembers the last results of each stage by what they were made from: objects by identity, plain values and
 * small specs by content. Keeps a few per stage, so that two plans or coatings side by side do not push each
 * other out.
 */
export class Memory {
  private readonly kept = new Map<string, { key: readonly unknown[]; value: unknown }[]>()
  private readonly capacity: number

  constructor(capacity = 4) {
    this.capacity = capacity
  }

  /** The stage's remembered value for this key, or the one `make` makes. Bound, so that it can be handed on. */
  readonly recall = <T>(stage: string, key: readonly unknown[], make: () => T): T => {
    const entries = this.kept.get(stage) ?? []
    const at = entries.findIndex((entry) => sameKey(entry.key, key))
    const entry = at >= 0 ? entries.splice(at, 1)[0]! : { key, value: make() }
    this.kept.set(stage, [entry, ...entries].slice(0, this.capacity))
    return entry.value as T
  }
}

function sameKey(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((part, i) => samePart(part, b[i]))
}

/** Hourly columns, and results of stages that hold them, are the same only if they are one object; specs if they read alike. */
function samePart(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false
  if ('hours' in a || 'hours' in b || ArrayBuffer.isView(a) || ArrayBuffer.isView(b)) return false
  return JSON.stringify(a) === JSON.stringify(b)
}
