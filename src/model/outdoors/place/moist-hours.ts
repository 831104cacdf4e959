import {
  dayMeans,
  dayRanges,
  hourlyFromDays,
  monthMeans,
  monthOfDay,
  seasonal,
  YEAR_HOURS,
} from '#model/basis/hours'
import { persistentSeries, type RandomSource } from '#model/basis/numbers'
import { dayCourse, slowedNearDew } from '#model/outdoors/climate'
import type { Site } from '#model/outdoors/weather'
import type { MonthTargets } from './months.ts'
import { within } from './within.ts'
import type { PlaceDays } from './day-states.ts'
import type { DaySpreads } from './spreads.ts'

/**
 * How fast a night cools: 0.9, where the source has 2.2. With 2.2 nights from 20 to 6 h are 0.6 K too cold on 64 stations, with
 * 0.9 0.1 K.
 */
const NIGHT_DECAY = 0.9
/** A day's range over the month's: less by 0.6 for each unit of cloud above it, by 0.015 for each K of warmth. */
const RANGE = { perCloud: 0.6, perKelvin: 0.015, least: 0.3, most: 1.7 }
/** Where the day's mean lies in its course, and the hours' unrest, K. */
const MEAN_OF_COURSE = 0.45
const UNREST = { air_K: 0.35, airPersistence: 0.6, dewShare: 0.25, dewPersistence: 0.9 }
const PASSES = 17
const RANGE_GAIN = 0.9

/** Air and dew point of each hour, °C: month means of both, and of the daily range, are held. */
export function placeMoistHours(
  site: Site,
  months: MonthTargets,
  spreads: DaySpreads,
  days: PlaceDays,
  cloud_frac: Float64Array,
  random: RandomSource,
): { airTemp_C: Float64Array; dewPoint_C: Float64Array } {
  const warmth = dayCourse(site, NIGHT_DECAY).map((share) => share - MEAN_OF_COURSE)
  const dayCloud = dayMeans(cloud_frac)
  const airDay_K = hourlyFromDays(days.air_K)
  const dewDay_K = hourlyFromDays(days.dew_K)
  const airUnrest = persistentSeries(random, YEAR_HOURS, UNREST.airPersistence)
  const dewUnrest = persistentSeries(random, YEAR_HOURS, UNREST.dewPersistence)
  const dewSpread_K = seasonal(spreads.dew_K)
  const rangeFactor = hourlyFromDays(
    dayCloud.map((cloud, day) =>
      within(
        1 -
          RANGE.perCloud * (cloud - months.cloud_frac[monthOfDay(day)]!) -
          RANGE.perKelvin * Math.max(0, days.air_K[day]!),
        RANGE.least,
        RANGE.most,
      ),
    ),
  )
  const nodes = {
    air: Float64Array.from(months.airTemp_C),
    dew: Float64Array.from(months.dewPoint_C),
    range: Float64Array.from(months.dailyRange_K),
  }
  const airTemp_C = new Float64Array(YEAR_HOURS)
  const dewPoint_C = new Float64Array(YEAR_HOURS)
  for (let pass = 0; ; pass++) {
    const [air, dew, range] = [seasonal(nodes.air), seasonal(nodes.dew), seasonal(nodes.range)]
    for (let h = 0; h < YEAR_HOURS; h++) {
      const dew_C = dew[h]! + dewDay_K[h]! + UNREST.dewShare * dewSpread_K[h]! * dewUnrest[h]!
      const air_C =
        air[h]! + airDay_K[h]! + range[h]! * rangeFactor[h]! * warmth[h]! + UNREST.air_K * airUnrest[h]!
      airTemp_C[h] = slowedNearDew(air_C, dew_C)
      dewPoint_C[h] = Math.min(dew_C, airTemp_C[h]!)
    }
    if (pass === PASSES) return { airTemp_C, dewPoint_C }
    correct(nodes.air, months.airTemp_C, monthMeans(airTemp_C), 1)
    correct(nodes.dew, months.dewPoint_C, monthMeans(dewPoint_C), 1)
    correct(nodes.range, months.dailyRange_K, monthMeans(dayRanges(airTemp_C)), RANGE_GAIN)
  }
}

function correct(nodes: Float64Array, wanted: readonly number[], got: ArrayLike<number>, gain: number): void {
  for (let k = 0; k < nodes.length; k++) nodes[k]! += gain * (wanted[k]! - got[k]!)
}
