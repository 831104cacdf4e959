import { runningMeanOutdoor_C, type WeatherRecord } from '#model/outdoors/weather'

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
