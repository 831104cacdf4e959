import {
  dayMeans,
  dayRanges,
  hourlyFromDays,
  monthMeans,
  monthOfDay,
  seasonal,
  YEAR_HOURS,
} from '#model/basis/hours'
import { dayCourse } from './day-shape.ts'
import { slowedNearDew } from './slowed-near-dew.ts'
import type { InventedPlace } from './place.ts'
import { persistentSeries, type RandomSource } from '#model/basis/numbers'
import type { DayStates } from './spells.ts'

/** Change of a day's range per unit of cloud above the month's, and per kelvin of dew-point depression above it. */
const RANGE_PER_CLOUD = 0.8
const RANGE_PER_KELVIN = 0.03
/** Hourly unrest about the smooth course, K, and its lag-1 correlation. */
const UNREST_K = 0.35
const AIR_PERSISTENCE = 0.6
/** Hourly unrest of the dew point, share of its day-to-day spread, and its lag-1 correlation. */
const DEW_UNREST = 0.4
const DEW_PERSISTENCE = 0.88
const PASSES = 12

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
  const air_K = airDepartures(days, random)
  const dew_K = dewDepartures(days, random)
  const spell = hourlyFromDays(days.hotSpell)
  const warmth = dayCourse(place.site)
  const rangeFactor = dayRangeFactors(place, days, cloud_frac)
  const build = (means: MonthNodes): MoistHours => {
    const air_C = outsideSpells(means.air_C, place.airTemp_C, spell)
    const dew_C = outsideSpells(means.dew_C, place.dewPoint_C, spell)
    const range_K = hourlyFromDays(rangeFactor.map((factor, day) => factor * means.range_K[monthOfDay(day)]!))
    return joined(
      air_C.map((mean_C, hour) => mean_C + air_K[hour]! + range_K[hour]! * (warmth[hour]! - 0.45)),
      dew_C.map((mean_C, hour) => mean_C + dew_K[hour]!),
    )
  }
  return heldToTargets(place, build)
}

/** The season an hour departs from: the corrected one, but the target itself in a hot spell, which keeps its height. */
function outsideSpells(
  corrected: Float64Array,
  target: readonly number[],
  spell: Float64Array,
): Float64Array {
  const plain = seasonal(target)
  return seasonal(corrected).map((value, hour) => value + spell[hour]! * (plain[hour]! - value))
}

/** Month values that the year is built from. */
interface MonthNodes {
  readonly air_C: Float64Array
  readonly dew_C: Float64Array
  readonly range_K: Float64Array
}

/** Builds, compares the month means with the targets, moves the month values by the miss, and builds again. */
function heldToTargets(place: InventedPlace, build: (nodes: MonthNodes) => MoistHours): MoistHours {
  const nodes = {
    air_C: Float64Array.from(place.airTemp_C),
    dew_C: Float64Array.from(place.dewPoint_C),
    range_K: Float64Array.from(place.dailyRange_K),
  }
  let hours = build(nodes)
  for (let pass = 0; pass < PASSES; pass += 1) {
    correct(nodes.air_C, place.airTemp_C, monthMeans(hours.airTemp_C))
    correct(nodes.dew_C, place.dewPoint_C, monthMeans(hours.dewPoint_C))
    correct(nodes.range_K, place.dailyRange_K, monthMeans(dayRanges(hours.airTemp_C)))
    hours = build(nodes)
  }
  return hours
}

function airDepartures(days: DayStates, random: RandomSource): Float64Array {
  const unrest = persistentSeries(random, YEAR_HOURS, AIR_PERSISTENCE)
  return hourlyFromDays(days.airTemp_K).map((drift, hour) => drift + UNREST_K * unrest[hour]!)
}

function dewDepartures(days: DayStates, random: RandomSource): Float64Array {
  const unrest = persistentSeries(random, YEAR_HOURS, DEW_PERSISTENCE)
  const spread_K = hourlyFromDays(days.dewSpread_K)
  return hourlyFromDays(days.dewPoint_K).map(
    (drift, hour) => drift + DEW_UNREST * spread_K[hour]! * unrest[hour]!,
  )
}

function correct(nodes: Float64Array, target: readonly number[], got: Float64Array): void {
  for (let month = 0; month < 12; month += 1) nodes[month]! += target[month]! - got[month]!
}

/** Joins unlimited air temperature and dew point so that the dew point is never above the air. */
function joined(air_C: Float64Array, dew_C: Float64Array): MoistHours {
  const airTemp_C = air_C.map((air, hour) => slowedNearDew(air, dew_C[hour]!))
  return { airTemp_C, dewPoint_C: dew_C.map((dew, hour) => Math.min(dew, airTemp_C[hour]!)) }
}

/** A clear dry day swings more than a cloudy damp one: factor on the month's range, month mean about 1. */
function dayRangeFactors(place: InventedPlace, days: DayStates, cloud_frac: Float64Array): Float64Array {
  return dayMeans(cloud_frac).map((cloud, day) => {
    const clearer = place.cloud_frac[monthOfDay(day)]! - cloud
    const drier_K = days.airTemp_K[day]! - days.dewPoint_K[day]!
    return Math.max(0.3, Math.min(1.6, 1 + RANGE_PER_CLOUD * clearer + RANGE_PER_KELVIN * drier_K))
  })
}
