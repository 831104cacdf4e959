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
