/** Half the window of the running mean that separates a spell from an afternoon, h: three days in all. */
const HALF_WINDOW_H = 36
/** Shares of the year below which nothing is a hot spell, and above which all of it is. */
const BEGINS_FRAC = 0.8
const FULL_FRAC = 0.98

/**
 * How much each hour belongs to the hottest spells of its record: 0 below the 80th percentile of the three-day
 * running mean, 1 above the 98th (about a week of a year), a smooth step between. The level itself is judged,
 * not its departure from the season: a warm week in January is no test of a cooling panel.
 */
export function hotSpellWeights(airTemp_C: Float64Array): Float64Array {
  const found = known.get(airTemp_C) ?? weightsOf(airTemp_C)
  known.set(airTemp_C, found)
  return found
}

/** Kept with the record's column: every draw of a range asks again. */
const known = new WeakMap<Float64Array, Float64Array>()

function weightsOf(airTemp_C: Float64Array): Float64Array {
  const smooth_C = runningMean(airTemp_C, HALF_WINDOW_H)
  const ordered = smooth_C.slice().sort()
  const begins_C = ordered[Math.floor(BEGINS_FRAC * (ordered.length - 1))]!
  const full_C = ordered[Math.floor(FULL_FRAC * (ordered.length - 1))]!
  return smooth_C.map((mean_C) => {
    if (mean_C >= full_C) return 1
    const share = Math.max(0, (mean_C - begins_C) / (full_C - begins_C))
    return share * share * (3 - 2 * share)
  })
}

/** Mean over the hours from i − half to i + half, shorter at the ends. */
function runningMean(series: Float64Array, half: number): Float64Array {
  const sums = new Float64Array(series.length + 1)
  for (let hour = 0; hour < series.length; hour += 1) sums[hour + 1] = sums[hour]! + series[hour]!
  return series.map((_, hour) => {
    const from = Math.max(0, hour - half)
    const to = Math.min(series.length, hour + half + 1)
    return (sums[to]! - sums[from]!) / (to - from)
  })
}
