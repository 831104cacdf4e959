import { dayMeans, seasonal, YEAR_DAYS } from '#model/basis/hours'
import { persistentSeries, type RandomSource } from '#model/basis/numbers'
import type { MonthTargets } from './months.ts'
import { within } from './within.ts'
import type { DaySpreads } from './spreads.ts'

/** What makes one day unlike the next; 365 values each. */
export interface PlaceDays {
  /** Departure of the day's mean temperature and dew point, K. */
  readonly air_K: Float64Array
  readonly dew_K: Float64Array
  /** Standard normal states of cloud and wind. */
  readonly cloud: Float64Array
  readonly wind: Float64Array
}

/** Lag-1 correlations of daily means within a month: 0.61–0.65, 0.64, 0.42, 0.34 in station files. */
const PERSISTENCE = { air: 0.64, dew: 0.6, cloud: 0.48, wind: 0.42 }
/** Heat has a ceiling that cold has not: above 0.8 standard deviations a day departs by 0.65 of the rest. */
const CEILING = 0.8
const ABOVE_CEILING = 0.65
/** Share of the regression's spread that the days of one month show about their own mean. */
const WITHIN_MONTH = 0.95

/** How the days of a year are spread and hang together; 365 values each. */
export type DayShape = Readonly<
  Record<'airCloud' | 'dewCloud' | 'airDew' | 'airSpread' | 'dewSpread' | 'skewness', Float64Array>
>

export function dayShape(months: MonthTargets, spreads: DaySpreads): DayShape {
  const byDay = (values: readonly number[]): Float64Array => dayMeans(seasonal(values))
  return {
    airCloud: byDay(spreads.airCloud),
    dewCloud: byDay(spreads.dewCloud),
    airDew: byDay(spreads.airDew),
    airSpread: byDay(spreads.air_K),
    dewSpread: byDay(spreads.dew_K),
    skewness: byDay(months.dewPoint_C.map((dew_C) => within(-0.08 - 0.018 * (dew_C - 8), -0.26, -0.08))),
  }
}

/** Days of a year, drawn in a fixed order so that a seed gives the same year everywhere. */
export function placeDays(shape: DayShape, random: RandomSource, airSpread_frac = 1): PlaceDays {
  const own = {
    air: persistentSeries(random, YEAR_DAYS, PERSISTENCE.air),
    dew: persistentSeries(random, YEAR_DAYS, PERSISTENCE.dew),
    cloud: persistentSeries(random, YEAR_DAYS, PERSISTENCE.cloud),
    wind: persistentSeries(random, YEAR_DAYS, PERSISTENCE.wind),
  }
  const { airCloud, dewCloud, airDew, airSpread, dewSpread, skewness } = shape
  const cloud = new Float64Array(YEAR_DAYS)
  const air_K = new Float64Array(YEAR_DAYS)
  const dew_K = new Float64Array(YEAR_DAYS)
  for (let day = 0; day < YEAR_DAYS; day++) {
    const [a, b, c] = [airCloud[day]!, dewCloud[day]!, airDew[day]!]
    const air = own.air[day]!
    cloud[day] = a * air + Math.sqrt(1 - a * a) * own.cloud[day]!
    // The dew point regressed on air and cloud, the rest its own.
    const onAir = (c - a * b) / (1 - a * a)
    const onCloud = (b - a * c) / (1 - a * a)
    const rest = Math.max(0.05, 1 - onAir * c - onCloud * b)
    const dew = onAir * air + onCloud * cloud[day]! + Math.sqrt(rest) * own.dew[day]!
    air_K[day] = airSpread_frac * WITHIN_MONTH * airSpread[day]! * underCeiling(air)
    dew_K[day] = dewSpread[day]! * skewed(dew, skewness[day]!)
  }
  return { air_K, dew_K, cloud, wind: own.wind }
}

const underCeiling = (state: number): number =>
  state > CEILING ? CEILING + ABOVE_CEILING * (state - CEILING) : state

/** A state skewed to the dry side, y = (z + g (z² − 1))/√(1 + 2 g²), cut where it would turn back; g < 0. */
function skewed(state: number, g: number): number {
  const z = Math.min(state, -0.5 / g)
  return (z + g * (z * z - 1)) / Math.sqrt(1 + 2 * g * g)
}
