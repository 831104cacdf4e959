/** One area tried, and its distance from the target (≤ 0: met). */
export interface Trial {
  readonly area_m2: number
  readonly measure: number
}

export interface AreaSearch {
  /** Smallest area that meets the target, or null when the largest does not. */
  readonly area_m2: number | null
  /** Where between the last two trials to both sides the measure is zero, along a line over the logarithm of the area; null likewise. */
  readonly zero_m2: number | null
  readonly trials: readonly Trial[]
}

/** The area is found to this share of itself; the last trial is always on the met side. */
const AREA_TOLERANCE = 0.003
const SMALLEST_AREA_m2 = 0.05
const MOST_TRIALS = 24
/** A bracket is opened by this factor, or by where the slope says the zero is, a little beyond it. */
const OPENING = 1.6
const BEYOND = 1.15
const WIDEST_OPENING = 4
/** Trials aim this much of the tolerance past the expected zero, so that both ends of the bracket close on it. */
const AIM = 0.2

/** What is known before a search begins. */
export interface AreaSearchStart {
  readonly guess_m2: number
  readonly max_m2: number
  /** The share of itself that the area is found to. */
  readonly tolerance?: number
  /** Change of the measure with the logarithm of the area near the guess, if known (< 0). */
  readonly slope?: number | null
}

/**
 * Smallest area at which a continuous measure falls to zero: bracketed from a first guess, then closed by the
 * Illinois form of false position, on the logarithm of the area.
 * @param measureAt  distance from the target at an area, m² (≤ 0 when met); not met at 0
 * Source: Dowell & Jarratt 1971, BIT 11, 168–174 (Illinois method).
 */
export function smallestArea(measureAt: (area_m2: number) => number, start: AreaSearchStart): AreaSearch {
  const { max_m2, tolerance = AREA_TOLERANCE } = start
  const trials: Trial[] = []
  const tryArea = (area_m2: number): Trial => {
    const trial = { area_m2, measure: measureAt(area_m2) }
    trials.push(trial)
    return trial
  }
  const guess_m2 = Math.min(Math.max(start.guess_m2, SMALLEST_AREA_m2), max_m2)
  const bracket = bracketArea(tryArea, guess_m2, max_m2, start.slope ?? null)
  if (bracket === null) return { area_m2: null, zero_m2: null, trials }
  const { low, high } = closeBracket(tryArea, bracket, tolerance, () => trials.length >= MOST_TRIALS)
  return { area_m2: high.area_m2, zero_m2: zeroBetween(low, high), trials }
}

function zeroBetween(low: Trial, high: Trial): number {
  const share = low.measure / (low.measure - high.measure)
  return low.area_m2 * (high.area_m2 / low.area_m2) ** share
}

interface Bracket {
  /** Not met at `low`, met at `high`. */
  low: Trial
  high: Trial
}

function bracketArea(
  tryArea: (area_m2: number) => Trial,
  guess_m2: number,
  max_m2: number,
  slope: number | null,
): Bracket | null {
  let here = tryArea(guess_m2)
  let factor = slope === null ? OPENING : openingBy(here.measure, slope)
  if (here.measure > 0) {
    while (here.area_m2 < max_m2) {
      const low = here
      here = tryArea(Math.min(low.area_m2 * factor, max_m2))
      if (here.measure <= 0) return { low, high: here }
      factor = OPENING
    }
    return null
  }
  while (here.area_m2 > SMALLEST_AREA_m2) {
    const high = here
    here = tryArea(high.area_m2 / factor)
    if (here.measure > 0) return { low: here, high }
    factor = OPENING
  }
  return { low: { area_m2: here.area_m2 / 2, measure: 1 }, high: here }
}

/** Factor from an area to a little beyond the zero that a slope promises. */
function openingBy(measure: number, slope: number): number {
  const way = Math.abs(measure / slope)
  return Math.min(WIDEST_OPENING, Math.exp(BEYOND * way + AREA_TOLERANCE))
}

function closeBracket(
  tryArea: (area_m2: number) => Trial,
  { low, high }: Bracket,
  tolerance: number,
  spent: () => boolean,
): Bracket {
  let lowMeasure = low.measure
  let highMeasure = high.measure
  let lastSide = 0
  while (high.area_m2 - low.area_m2 > tolerance * high.area_m2 && !spent()) {
    const width = Math.log(high.area_m2 / low.area_m2)
    const zero = (width * lowMeasure) / (lowMeasure - highMeasure)
    const aimed = zero + (zero > width / 2 ? -AIM : AIM) * tolerance
    const inside = Math.min(0.95, Math.max(0.05, aimed / width))
    const trial = tryArea(low.area_m2 * Math.exp(width * inside))
    if (trial.measure > 0) {
      low = trial
      lowMeasure = trial.measure
      if (lastSide === 1) highMeasure /= 2
      lastSide = 1
    } else {
      high = trial
      highMeasure = trial.measure
      if (trial.measure === 0) break
      if (lastSide === -1) lowMeasure /= 2
      lastSide = -1
    }
  }
  return { low, high }
}
