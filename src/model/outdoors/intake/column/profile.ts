/** What the numbers of one column look like. */
export interface Profile {
  /** Values that are numbers, and their share of the rows. */
  readonly count: number
  readonly filled_frac: number
  readonly min: number
  readonly max: number
  /** 1st, 50th and 99th percentile. */
  readonly low: number
  readonly median: number
  readonly high: number
  readonly mean: number
  readonly deviation: number
  readonly whole_frac: number
  readonly zero_frac: number
  /** Mean change in an hour over the standard deviation: 0 smooth, above 1 noise; NaN for a constant. */
  readonly roughness: number
  readonly constant: boolean
}

/**
 * Describes a column's sampled values; null when it has none.
 * @param before index of the value an hour earlier, −1 where there is none
 */
export function profileOf(values: Float64Array, before: Int32Array): Profile | null {
  const known = values.filter((value) => value === value).sort()
  const n = known.length
  if (n === 0) return null
  let sum = 0
  let squares = 0
  let whole = 0
  let zero = 0
  for (const value of known) {
    sum += value
    squares += value * value
    if (value === Math.round(value)) whole += 1
    if (value === 0) zero += 1
  }
  const mean = sum / n
  const deviation = Math.sqrt(Math.max(0, squares / n - mean * mean))
  const at = (share: number): number => known[Math.min(n - 1, Math.floor(share * n))]!
  return {
    ...{ count: n, filled_frac: n / values.length, min: known[0]!, max: known[n - 1]! },
    ...{ low: at(0.01), median: at(0.5), high: at(0.99), mean, deviation },
    ...{ whole_frac: whole / n, zero_frac: zero / n },
    roughness: deviation > 0 ? meanStep(values, before) / deviation : NaN,
    constant: known[0] === known[n - 1],
  }
}

function meanStep(values: Float64Array, before: Int32Array): number {
  let sum = 0
  let steps = 0
  for (let i = 0; i < values.length; i += 1) {
    const step = Math.abs(values[i]! - (values[before[i]!] ?? NaN))
    if (step !== step) continue
    sum += step
    steps += 1
  }
  return steps === 0 ? NaN : sum / steps
}

/** What a column changed by since an earlier value; NaN where there is none. */
export function changesSince(values: Float64Array, before: Int32Array): Float64Array {
  return values.map((value, i) => value - (values[before[i]!] ?? NaN))
}

/** Correlation of two columns, −1…1; 0 when it means nothing. */
export function correlation(a: Float64Array, b: Float64Array): number {
  let n = 0
  let sa = 0
  let sb = 0
  let saa = 0
  let sbb = 0
  let sab = 0
  for (let i = 0; i < a.length; i += 1) {
    const x = a[i]!
    const y = b[i]!
    if (x !== x || y !== y) continue
    n += 1
    sa += x
    sb += y
    saa += x * x
    sbb += y * y
    sab += x * y
  }
  const va = saa - (sa * sa) / n
  const vb = sbb - (sb * sb) / n
  return n > 5 && va > 1e-12 && vb > 1e-12 ? (sab - (sa * sb) / n) / Math.sqrt(va * vb) : 0
}
