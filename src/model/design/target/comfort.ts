import { outdoorDays, type Days, type WeatherRecord } from '#model/outdoors/weather'

/**
 * Adaptive comfort: bands that follow the outdoor temperature of the days before. Both standards were made for rooms
 * without mechanical cooling whose people open windows and dress as they like: for a cooled room they are a guide only.
 */
export const ADAPTIVE_STANDARDS = ['ashrae55', 'en16798'] as const
export type AdaptiveStandard = (typeof ADAPTIVE_STANDARDS)[number]

interface Band {
  readonly slope: number
  readonly intercept_C: number
  readonly above_K: number
  readonly below_K: number
  /** Outdoor running means the standard covers, °C; outside it the nearest end is used. */
  readonly range_C: readonly [number, number]
}

/** EN 16798-1: how far above and below the comfort temperature each category lets a room go, K. */
export const EN_CATEGORIES = {
  I: { above_K: 2, below_K: 3 },
  II: { above_K: 3, below_K: 4 },
  III: { above_K: 4, below_K: 5 },
} as const
/** ASHRAE 55's half-widths by the share of people content, K. */
export const ASHRAE_WIDTHS = { content80_K: 3.5, content90_K: 2.5 } as const

/** ASHRAE 55: 0.31 t + 17.8 at 80 % content. EN 16798-1: 0.33 t + 18.8 in category II. */
const BANDS: Readonly<Record<AdaptiveStandard, Band>> = {
  ashrae55: {
    slope: 0.31,
    intercept_C: 17.8,
    above_K: ASHRAE_WIDTHS.content80_K,
    below_K: ASHRAE_WIDTHS.content80_K,
    range_C: [10, 33.5],
  },
  en16798: { slope: 0.33, intercept_C: 18.8, ...EN_CATEGORIES.II, range_C: [10, 30] },
}

/** Temperature people feel best at, °C, for a running mean outdoor temperature (°C, held to the standard's range). */
export function adaptiveComfort_C(standard: AdaptiveStandard, runningMean_C: number): number {
  const band = BANDS[standard]
  return band.slope * Math.min(band.range_C[1], Math.max(band.range_C[0], runningMean_C)) + band.intercept_C
}

/** Upper limit of the operative temperature, °C per hour: ASHRAE 55 80 %, EN 16798-1 category II. */
export function adaptiveUpper_C(weather: WeatherRecord, standard: AdaptiveStandard): Float64Array {
  return limit_C(weather, standard, BANDS[standard].above_K)
}

/** Lower limit of the operative temperature, °C per hour: ASHRAE 55 80 %, EN 16798-1 category II. */
export function adaptiveLower_C(weather: WeatherRecord, standard: AdaptiveStandard): Float64Array {
  return limit_C(weather, standard, -BANDS[standard].below_K)
}

function limit_C(weather: WeatherRecord, standard: AdaptiveStandard, offset_K: number): Float64Array {
  return runningMeanOutdoor_C(weather).map((mean_C) => adaptiveComfort_C(standard, mean_C) + offset_K)
}

/** 1 in hours whose running mean lies in the range the standard covers, else 0. */
export function adaptiveApplies(weather: WeatherRecord, standard: AdaptiveStandard): Uint8Array {
  const [low, high] = BANDS[standard].range_C
  return Uint8Array.from(runningMeanOutdoor_C(weather), (mean_C) => Number(mean_C >= low && mean_C <= high))
}

/** Weight of each day in the next: EN 16798-1 takes 0.8; ASHRAE 55 allows 0.6–0.9. */
const MEMORY = 0.8

/** How the days before are weighed: the endless sum, or EN 16798-1's rounded seven days. */
export type RunningMeanForm = 'exponential' | 'sevenDay'

/**
 * Running mean outdoor temperature, °C per hour (one value a day), from the daily means of the days *before*. Exponential:
 * (1 − α)(T₋₁ + α T₋₂ + …), α = 0.8. A whole year closes on itself; a shorter record starts from its first day's mean.
 */
export function runningMeanOutdoor_C(
  weather: WeatherRecord,
  form: RunningMeanForm = 'exponential',
): Float64Array {
  const days = outdoorDays(weather)
  const daily_C = form === 'sevenDay' ? sevenDayMeans_C(days) : exponentialMeans_C(days)
  return new Float64Array(weather.hours).map((_, h) => daily_C[days.dayOfHour[h]!]!)
}

/** Days run before the first one, so that where the sum starts no longer shows (0.8⁶⁰ < 2e-6). */
const RUN_IN_days = 60

function exponentialMeans_C(days: Days): Float64Array {
  const count = days.mean_C.length
  const means = new Float64Array(count)
  let mean_C = days.mean_C[0] ?? 0
  for (let day = days.cyclic ? -RUN_IN_days : 0; day < count; day++) {
    if (day >= 0) means[day] = mean_C
    mean_C = MEMORY * mean_C + (1 - MEMORY) * dayMean_C(days, day)
  }
  return means
}

const SEVEN_DAY_WEIGHTS = [1, 0.8, 0.6, 0.5, 0.4, 0.3, 0.2] as const

function sevenDayMeans_C(days: Days): Float64Array {
  return days.mean_C.map(
    (_, day) =>
      SEVEN_DAY_WEIGHTS.reduce((sum, weight, back) => sum + weight * dayMean_C(days, day - 1 - back), 0) /
      3.8,
  )
}

/** Mean of a day that may lie before the record: the other end of a whole year, or the first day again. */
function dayMean_C(days: Days, day: number): number {
  const count = days.mean_C.length
  return days.mean_C[day >= 0 ? day : days.cyclic ? (day + count) % count : 0]!
}
