/** One answer as numbers: its scalars by their paths, and each hourly column as its checksum and its mean. */
export type Digest = Readonly<Record<string, number | string | boolean | null>>

/** Columns at least this long are hourly. */
const HOURLY = 200
/** What was asked, and words: not part of an answer's numbers. */
const LEFT_OUT = new Set([
  'scenario',
  'weather',
  'warnings',
  'remarks',
  'message',
  'label',
  'sentence',
  'field',
  // Where the next search may begin.
  'anchor',
])
/** Short codes that are part of an answer; other text is words, which may change. */
const CODES = new Set(['kind', 'fault', 'cover', 'plan', 'climate', 'building', 'code'])

export function digest(answer: unknown): Digest {
  const found: Record<string, number | string | boolean | null> = {}
  gather(answer, '', found)
  return found
}

function gather(value: unknown, path: string, found: Record<string, number | string | boolean | null>): void {
  if (typeof value === 'number') found[path] = shortened(value)
  else if (typeof value === 'boolean' || value === null) found[path] = value
  else if (typeof value === 'string') {
    if (CODES.has(path.split('.').at(-1)!)) found[path] = value
  } else if (isColumn(value)) {
    found[`${path}#`] = checksum(value)
    found[`${path}~`] = shortened(meanOf(value))
  } else if (typeof value === 'object') {
    for (const [key, part] of Object.entries(value as object))
      if (!LEFT_OUT.has(key)) gather(part, path === '' ? key : `${path}.${key}`, found)
  }
}

/** Twelve digits; what JSON has no number for becomes its name. */
function shortened(value: number): number | string {
  return Number.isFinite(value) ? Number(value.toPrecision(12)) : String(value)
}

type Column = Float64Array | Uint8Array | readonly number[]

function isColumn(value: unknown): value is Column {
  if (ArrayBuffer.isView(value)) return true
  return Array.isArray(value) && value.length >= HOURLY && value.every((one) => typeof one === 'number')
}

/** Mean of the hours that are numbers. */
function meanOf(column: Column): number {
  let sum = 0
  let count = 0
  for (const value of column) {
    if (!Number.isFinite(value)) continue
    sum += value
    count++
  }
  return sum / count
}

/** FNV-1a (Fowler, Noll and Vo) over the bits of a column, as hexadecimal. */
function checksum(column: Column): string {
  const words = new Uint32Array(Float64Array.from(column).buffer)
  let hash = 0x811c9dc5
  for (const word of words) hash = Math.imul(hash ^ word, 0x01000193)
  return (hash >>> 0).toString(16)
}
