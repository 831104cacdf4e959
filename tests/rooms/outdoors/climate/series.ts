/** Plain statistics that the tests work out for themselves. */
export function mean(values: ArrayLike<number>): number {
  let sum = 0
  for (let at = 0; at < values.length; at += 1) sum += values[at]!
  return sum / values.length
}

/** Standard deviation. */
export function spread(values: ArrayLike<number>): number {
  const middle = mean(values)
  return Math.sqrt(mean(Array.from(values, (value) => (value - middle) ** 2)))
}

export function correlation(a: ArrayLike<number>, b: ArrayLike<number>): number {
  const [meanA, meanB] = [mean(a), mean(b)]
  const together = mean(Array.from(a, (value, at) => (value - meanA) * (b[at]! - meanB)))
  return together / (spread(a) * spread(b))
}

/** Daily values minus their 31-day running mean, the year closed on itself. */
export function departures(days: Float64Array): Float64Array {
  return days.map((value, day) => {
    let sum = 0
    for (let near = -15; near <= 15; near += 1) sum += days[(day + near + days.length) % days.length]!
    return value - sum / 31
  })
}
