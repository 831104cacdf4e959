import {
  dayMeans,
  dayRanges,
  hourlyFromDays,
  monthMeans,
  monthOfDay,
  seasonal,
} from '#model/climate/calendar.ts'
import { dayLength_h, solarHour_h, warmthOfDay } from '#model/climate/day-shape.ts'
import type { InventedPlace } from '#model/climate/place.ts'
import { persistentSeries, type RandomSource } from '#model/climate/random.ts'
import type { DayStates } from '#model/climate/spells.ts'

/** Change of a day's range per unit of cloud above the month's, and per kelvin of dew-point depression above it. */
const RANGE_PER_CLOUD = 0.8
const RANGE_PER_KELVIN = 0.03
/** Hourly unrest about the smooth course, K. */
const UNREST_K = 0.35
/** Over how many kelvin above the dew point the night's cooling is slowed. */
const DEW_SOFTNESS_K = 1.2
const PASSES = 8

/** Air temperature and dew point, hourly, °C. */
export interface MoistHours {
  readonly airTemp_C: Float64Array
  readonly dewPoint_C: Float64Array
}

/**
 * Air temperature and dew point of a year. The dew point drifts slowly from day to day and through the day is
 * conserved; a night that cools to it is slowed (condensation gives heat back) and takes it down with the air.
 * Month means of air, dew point and daily range are held to the place's targets.
 */
export function temperatureYear(
  place: InventedPlace,
  days: DayStates,
  cloud_frac: Float64Array,
  random: RandomSource,
): MoistHours {
  const unrest = persistentSeries(random, cloud_frac.length, 0.6)
  const warmth = cloud_frac.map((_, hour) =>
    warmthOfDay(solarHour_h(place.site, hour), dayLength_h(place.site.latitude_deg, Math.floor(hour / 24))),
  )
  const air_K = hourlyFromDays(days.airTemp_K)
  const dew_K = hourlyFromDays(days.dewPoint_K)
  const rangeFactor = dayRangeFactors(place, days, cloud_frac)
  const airNodes = Float64Array.from(place.airTemp_C)
  const dewNodes = Float64Array.from(place.dewPoint_C)
  const rangeNodes = Float64Array.from(place.dailyRange_K)
  let hours = { airTemp_C: air_K, dewPoint_C: dew_K }
  for (let pass = 0; pass <= PASSES; pass += 1) {
    const airBase = seasonal(airNodes)
    const dewBase = seasonal(dewNodes)
    const range = hourlyFromDays(rangeFactor.map((factor, day) => factor * rangeNodes[monthOfDay(day)]!))
    hours = moistHours((hour) => {
      const swing_K = range[hour]! * (warmth[hour]! - 0.45) + UNREST_K * unrest[hour]!
      return [airBase[hour]! + air_K[hour]! + swing_K, dewBase[hour]! + dew_K[hour]!]
    }, cloud_frac.length)
    correct(airNodes, place.airTemp_C, monthMeans(hours.airTemp_C))
    correct(dewNodes, place.dewPoint_C, monthMeans(hours.dewPoint_C))
    correct(rangeNodes, place.dailyRange_K, monthMeans(dayRanges(hours.airTemp_C)))
  }
  return hours
}

function correct(nodes: Float64Array, target: readonly number[], got: Float64Array): void {
  for (let month = 0; month < 12; month += 1) nodes[month]! += target[month]! - got[month]!
}

/** Joins unlimited air temperature and dew point so that the dew point never stands above the air. */
function moistHours(free: (hour: number) => readonly [number, number], hours: number): MoistHours {
  const airTemp_C = new Float64Array(hours)
  const dewPoint_C = new Float64Array(hours)
  for (let hour = 0; hour < hours; hour += 1) {
    const [air_C, dew_C] = free(hour)
    airTemp_C[hour] = slowedNearDew(air_C, dew_C)
    dewPoint_C[hour] = Math.min(dew_C, airTemp_C[hour]!)
  }
  return { airTemp_C, dewPoint_C }
}

/** Air that would fall through its dew point follows it down at half the pace, with a smooth bend. */
function slowedNearDew(air_C: number, dew_C: number): number {
  const above = (air_C - dew_C) / DEW_SOFTNESS_K
  if (above > 8) return air_C
  return dew_C + DEW_SOFTNESS_K * (0.5 * above + 0.5 * Math.log(1 + Math.exp(Math.max(-40, above))))
}

/** A clear dry day swings more than a cloudy damp one: factor on the month's range, month mean about 1. */
function dayRangeFactors(place: InventedPlace, days: DayStates, cloud_frac: Float64Array): Float64Array {
  return dayMeans(cloud_frac).map((cloud, day) => {
    const clearer = place.cloud_frac[monthOfDay(day)]! - cloud
    const drier_K = days.airTemp_K[day]! - days.dewPoint_K[day]!
    return Math.max(0.3, Math.min(1.6, 1 + RANGE_PER_CLOUD * clearer + RANGE_PER_KELVIN * drier_K))
  })
}
