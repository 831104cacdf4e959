/** One area tried, and its distance from the target (≤ 0: met). */
export interface Trial {
  readonly area_m2: number
  readonly measure: number
}

export interface AreaSearch {
  /** Smallest area that meets the target, or null when the largest does not. */
  readonly area_m2: number | null
  readonly trials: readonly Trial[]
}

/** The area is found to this share of itself; the last trial is always on the met side. */
const AREA_TOLERANCE = 0.003
const SMALLEST_AREA_m2 = 0.05
const MOST_TRIALS = 24

/**
 * Smallest area at which a continuous measure falls to zero: bracketed by doubling or halving from a first guess,
 * then closed by the Illinois form of false position, on the logarithm of the area.
 * @param measureAt  distance from the target at an area, m² (≤ 0 when met); not met at 0
 * Source: Dowell & Jarratt 1971, BIT 11, 168–174 (Illinois method).
 */
export function smallestArea(
  measureAt: (area_m2: number) => number,
  guess_m2: number,
  max_m2: number,
): AreaSearch {
  const trials: Trial[] = []
  const tryArea = (area_m2: number): number => {
    const measure = measureAt(area_m2)
    trials.push({ area_m2, measure })
    return measure
  }
  const bracket = bracketArea(tryArea, Math.min(Math.max(guess_m2, SMALLEST_AREA_m2), max_m2), max_m2)
  if (bracket === null) return { area_m2: null, trials }
  const area_m2 = closeBracket(tryArea, bracket, () => trials.length >= MOST_TRIALS)
  return { area_m2, trials }
}

interface Bracket {
  /** Not met at `low`, met at `high`. */
  low: Trial
  high: Trial
}

function bracketArea(tryArea: (area_m2: number) => number, guess_m2: number, max_m2: number): Bracket | null {
  let area_m2 = guess_m2
  let measure = tryArea(area_m2)
  if (measure > 0) {
    while (measure > 0) {
      if (area_m2 >= max_m2) return null
      const low = { area_m2, measure }
      area_m2 = Math.min(area_m2 * 1.6, max_m2)
      measure = tryArea(area_m2)
      if (measure <= 0) return { low, high: { area_m2, measure } }
    }
  }
  let high = { area_m2, measure }
  while (area_m2 > SMALLEST_AREA_m2) {
    area_m2 /= 1.6
    measure = tryArea(area_m2)
    if (measure > 0) return { low: { area_m2, measure }, high }
    high = { area_m2, measure }
  }
  return { low: { area_m2: area_m2 / 2, measure: 1 }, high }
}

function closeBracket(
  tryArea: (area_m2: number) => number,
  { low, high }: Bracket,
  spent: () => boolean,
): number {
  let lowMeasure = low.measure
  let highMeasure = high.measure
  let low_m2 = low.area_m2
  let high_m2 = high.area_m2
  let lastSide = 0
  while (high_m2 - low_m2 > AREA_TOLERANCE * high_m2 && !spent()) {
    const share = lowMeasure / (lowMeasure - highMeasure)
    const inside = Math.min(0.95, Math.max(0.05, share))
    const area_m2 = low_m2 * (high_m2 / low_m2) ** inside
    const measure = tryArea(area_m2)
    if (measure > 0) {
      low_m2 = area_m2
      lowMeasure = measure
      if (lastSide === 1) highMeasure /= 2
      lastSide = 1
    } else {
      high_m2 = area_m2
      highMeasure = measure
      if (measure === 0) return area_m2
      if (lastSide === -1) lowMeasure /= 2
      lastSide = -1
    }
  }
  return high_m2
}
