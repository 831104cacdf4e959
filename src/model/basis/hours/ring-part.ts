/** First hour and one past the last of a record taken as a ring: the second may pass its end and goes on at its beginning. */
type RingSpan = readonly [number, number]

type Column = Float64Array | Uint8Array

const DAY_h = 24

/**
 * Some spells of a record, whole days each, cut out of its hourly columns and put back into them: what is worked out hour by hour
 * is then worked out for those hours alone. The hour of the day goes on from one spell to the next, the date does not.
 */
export class RingPart {
  /** Hours of the whole, and of the part. */
  readonly hours: number
  readonly length: number
  /** The hour of the whole that the part begins with. */
  readonly from: number
  private readonly spans: readonly RingSpan[]
  private readonly cuts = new WeakMap<object, unknown>()

  /** @param spans  in rising order, widened to whole days; those that then touch are one */
  constructor(hours: number, spans: readonly RingSpan[]) {
    this.hours = hours
    this.spans = wholeDays(spans, hours)
    this.length = this.spans.reduce((sum, [from, to]) => sum + to - from, 0)
    this.from = this.spans[0]?.[0] ?? 0
  }

  /** The part of everything hourly in `whole`; the same column, and the same object, give the same part each time. */
  of<T>(whole: T): T {
    if (typeof whole !== 'object' || whole === null) return whole
    const known = this.cuts.get(whole)
    if (known !== undefined) return known as T
    const made = this.cutOut(whole)
    this.cuts.set(whole, made)
    return made as T
  }

  private cutOut(whole: object): unknown {
    if (isColumn(whole)) return whole.length === this.hours ? this.cut(whole) : whole
    if (Array.isArray(whole)) return whole.map((one: unknown) => this.of(one))
    const entries = Object.entries(whole).map(([name, value]: [string, unknown]) => [
      name,
      name === 'hours' && value === this.hours ? this.length : this.of(value),
    ])
    return Object.fromEntries(entries)
  }

  /** `whole` with the hours of the part in the place of its own; what is not hourly is the part's. */
  into<T>(whole: T, part: T): T {
    if (typeof part !== 'object' || part === null) return part
    if (isColumn(part)) return this.put(whole, part) as T
    if (Array.isArray(part))
      return part.map((one: unknown, i) => this.into((whole as readonly unknown[])[i], one)) as T
    const entries = Object.entries(part).map(([name, value]: [string, unknown]) => [
      name,
      name === 'hours' && value === this.length
        ? this.hours
        : this.into((whole as Record<string, unknown>)[name], value),
    ])
    return Object.fromEntries(entries) as T
  }

  private cut<T extends Column>(whole: T): T {
    const part = new (whole.constructor as new (length: number) => T)(this.length)
    this.pieces((from, to, at) => part.set(whole.subarray(from, to), at))
    return part
  }

  private put(whole: unknown, part: Column): Column {
    if (part.length !== this.length) return part
    if (!isColumn(whole) || whole.length !== this.hours)
      throw new RangeError(`a part of ${this.length} hours has no whole of ${this.hours} to be put into`)
    if (this.cuts.get(whole) === part) return whole
    const made = whole.slice()
    this.pieces((from, to, at) => made.set(part.subarray(at, at + to - from), from))
    return made
  }

  /** The hours of the whole, piece by piece: first, one past the last, and where the piece begins in the part. */
  pieces(each: (from: number, to: number, at: number) => void): void {
    let at = 0
    for (const span of this.spans)
      for (let [from] = span; from < span[1];) {
        const start = from % this.hours
        const long = Math.min(span[1] - from, this.hours - start)
        each(start, start + long, at)
        at += long
        from += long
      }
  }
}

const isColumn = (value: unknown): value is Column =>
  value instanceof Float64Array || value instanceof Uint8Array

/** Not before the record's beginning and not longer than it. */
function wholeDays(spans: readonly RingSpan[], hours: number): RingSpan[] {
  const first = spans[0]
  if (first === undefined) return []
  const turn = first[0] < 0 ? hours : 0
  const found: [number, number][] = []
  for (const [from, to] of spans) {
    const day = Math.floor((from + turn) / DAY_h) * DAY_h
    const end = Math.ceil((to + turn) / DAY_h) * DAY_h
    const last = found.at(-1)
    if (last !== undefined && day <= last[1]) last[1] = Math.max(last[1], end)
    else found.push([day, end])
  }
  const [start] = found[0]!
  return found.map(([from, to]) => [from, Math.min(to, start + hours)])
}
