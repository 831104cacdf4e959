/** Barrels, tanks and containers that are sold nearly everywhere, m³ (common practice, no source). */
const TANKS_SOLD_M3 = [
  0.06, 0.12, 0.2, 0.3, 0.5, 0.75, 1, 1.5, 2, 2.5, 3, 4, 5, 7.5, 10, 15, 20, 30, 50, 75, 100, 150, 200,
]
/** A volume this near to a size is that size, as a share of it. */
const SAME_SHARE = 1e-6

/**
 * The sizes sold to both sides of a volume, the smaller first, m³; one where it is such a size, or beyond the smallest or largest.
 * @param most_m3  what fits: larger ones are left out; where that leaves none, the largest that is sold and fits, else `most_m3` itself
 */
export function tanksSoldAbout_m3(volume_m3: number, most_m3 = Infinity): number[] {
  const fitting = soldAbout_m3(volume_m3).filter((size_m3) => size_m3 <= most_m3 * (1 + SAME_SHARE))
  if (fitting.length > 0) return fitting
  return [TANKS_SOLD_M3.findLast((size_m3) => size_m3 <= most_m3 * (1 + SAME_SHARE)) ?? most_m3]
}

function soldAbout_m3(volume_m3: number): number[] {
  const same = TANKS_SOLD_M3.find((size_m3) => Math.abs(size_m3 - volume_m3) <= SAME_SHARE * size_m3)
  if (same !== undefined) return [same]
  const above = TANKS_SOLD_M3.findIndex((size_m3) => size_m3 > volume_m3)
  if (above < 0) return [volume_m3]
  return TANKS_SOLD_M3.slice(Math.max(0, above - 1), above + 1)
}
