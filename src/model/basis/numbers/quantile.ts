/**
 * Value below which `share` (0…1) of the sorted values lie, straight between neighbours; NaN without values.
 * Source: Hyndman & Fan 1996, The American Statistician 50, 361, definition 7 (from memory).
 */
export function quantile(sorted: readonly number[], share: number): number {
  const place = share * (sorted.length - 1)
  const below = sorted[Math.floor(place)] ?? NaN
  const above = sorted[Math.ceil(place)] ?? NaN
  return below + (above - below) * (place - Math.floor(place))
}

/** The middle one of values in any order, or the mean of both middle ones; NaN without values. */
export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b)
  return quantile(sorted, 0.5)
}

/**
 * The value of a rank, 0 for the smallest: what sorting would put there, in fewer steps. The values change places; none is NaN.
 * Source: Hoare 1961, Communications of the ACM 4, 321 (algorithm 65).
 */
export function ranked(values: Float64Array, rank: number): number {
  let low = 0
  let high = values.length - 1
  while (low < high) {
    const pivot = values[rank]!
    let i = low
    let j = high
    while (i <= j) {
      while (values[i]! < pivot) i++
      while (values[j]! > pivot) j--
      if (i > j) break
      const held = values[i]!
      values[i++] = values[j]!
      values[j--] = held
    }
    if (j < rank) low = i
    if (i > rank) high = j
  }
  return values[rank]!
}
