import { monthMeans, seasonal } from '#model/basis/hours'

/**
 * Finds the slow seasonal correction under which an hourly series holds its month means, as the months of a
 * typical year do: build, compare, correct, again.
 * @param target  twelve month means
 * @param build   makes the hourly series from an hourly correction
 * @param gain    correction per unit of miss: 1 where the series moves one for one with it
 * @param passes  how often to correct; 8 leaves less than the file's rounding where the series answers smoothly
 */
export function holdMonths(
  target: readonly number[],
  build: (correction: Float64Array) => Float64Array,
  gain: number,
  passes: number,
): Float64Array {
  const nodes = new Float64Array(12)
  let series = build(seasonal(nodes))
  for (let pass = 0; pass < passes; pass += 1) {
    const means = monthMeans(series)
    for (let month = 0; month < 12; month += 1) nodes[month]! += gain * (target[month]! - means[month]!)
    series = build(seasonal(nodes))
  }
  return series
}
