import { MONTH_STARTS, YEAR_DAYS, monthOfDay } from '#model/basis/hours'
import type { InventedPlace } from './place.ts'
import { persistentSeries, type RandomSource } from '#model/basis/numbers'

/** Day-by-day state of the weather: departures from the season, 365 values each. */
export interface DayStates {
  /** Standard normal, persistent; positive is cloudier. */
  readonly cloud: Float64Array
  /** Departure of the daily mean air temperature from the season, K, hot spells included. */
  readonly airTemp_K: Float64Array
  /** Departure of the daily mean dew point from the season, K. */
  readonly dewPoint_K: Float64Array
  /** Standard deviation of the dew point about the season that day, K: small in a damp summer. */
  readonly dewSpread_K: Float64Array
  /** Standard normal, persistent. */
  readonly wind: Float64Array
  readonly pressure: Float64Array
  /** 0…1, 1 at the peak of a planted hot spell. */
  readonly hotSpell: Float64Array
}

/** Lag-1 correlations of the daily drivers. Air masses stay 2–4 days (common practice, no source). */
const PERSISTENCE = { airTemp: 0.62, cloud: 0.5, dewPoint: 0.6, wind: 0.45, pressure: 0.72 }
/** How strongly cloud cools a summer day and warms a winter one (correlation of daily means). */
const CLOUD_TEMPERATURE = 0.35
/** How strongly cloudy days are humid days. */
const CLOUD_DEW = 0.35
/** Depression of the dew point beyond which it no longer follows the air mass's temperature, K. */
const DRY_DEPRESSION_K = 12

/** Draws a year of day-to-day weather for a place. */
export function drawDayStates(place: InventedPlace, random: RandomSource): DayStates {
  const cloud = persistentSeries(random, YEAR_DAYS, PERSISTENCE.cloud)
  const warmth = persistentSeries(random, YEAR_DAYS, PERSISTENCE.airTemp)
  const vapour = persistentSeries(random, YEAR_DAYS, PERSISTENCE.dewPoint)
  const wind = persistentSeries(random, YEAR_DAYS, PERSISTENCE.wind)
  const pressure = persistentSeries(random, YEAR_DAYS, PERSISTENCE.pressure)
  const hotSpell = plantHotSpells(place, random)
  const airTemp_K = new Float64Array(YEAR_DAYS)
  const dewPoint_K = new Float64Array(YEAR_DAYS)
  const dewSpread_K = new Float64Array(YEAR_DAYS)
  for (let day = 0; day < YEAR_DAYS; day += 1) {
    const summer = summerShare(place, day)
    const withCloud = CLOUD_TEMPERATURE * (1 - 2 * summer)
    const spread_K = place.coldSpread_K + (place.warmSpread_K - place.coldSpread_K) * summer
    const mixed = withCloud * cloud[day]! + Math.sqrt(1 - withCloud ** 2) * warmth[day]!
    const spell = hotSpell[day]!
    airTemp_K[day] = spread_K * mixed * (1 - spell) + place.hotSpell_K * spell
    const humid = CLOUD_DEW * cloud[day]! + Math.sqrt(1 - CLOUD_DEW ** 2) * vapour[day]!
    const damp = airMassShare(place, day)
    dewSpread_K[day] = place.dewSpread_K * (1 - damp * summer ** 2)
    const ordinary_K = dewSpread_K[day]! * humid + damp * spread_K * mixed
    dewPoint_K[day] = ordinary_K * (1 - spell) + place.hotSpellDew_K * spell
    cloud[day]! -= 1.2 * spell
  }
  return { cloud, airTemp_K, dewPoint_K, dewSpread_K, wind, pressure, hotSpell }
}

/** 0 in the coldest month, 1 in the warmest, by the place's own month means. */
function summerShare(place: InventedPlace, day: number): number {
  const coldest = Math.min(...place.airTemp_C)
  const warmest = Math.max(...place.airTemp_C)
  return (place.airTemp_C[monthOfDay(day)]! - coldest) / Math.max(warmest - coldest, 1)
}

/** Share of the temperature departure that the dew point follows: most in damp air, none in a desert. */
function airMassShare(place: InventedPlace, day: number): number {
  const month = monthOfDay(day)
  const depression_K = place.airTemp_C[month]! - place.dewPoint_C[month]!
  return Math.max(0, Math.min(0.9, 1 - depression_K / DRY_DEPRESSION_K))
}

/** Spells of 5–9 days in the three warmest months: a day up, three to seven held, a day down; the first is the worst. */
function plantHotSpells(place: InventedPlace, random: RandomSource): Float64Array {
  const shape = new Float64Array(YEAR_DAYS)
  const warmMonths = [...place.airTemp_C.keys()]
    .sort((a, b) => place.airTemp_C[b]! - place.airTemp_C[a]!)
    .slice(0, 3)
  for (let spell = 0; spell < place.hotSpells; spell += 1) {
    const month = warmMonths[spell % warmMonths.length]!
    const length = 5 + Math.floor(random() * 5)
    const first = MONTH_STARTS[month]! + 2 + Math.floor(random() * (27 - length))
    const strength = 1 / (1 + 0.3 * spell)
    for (let day = 0; day < length; day += 1) {
      const ramp = Math.min(1, (day + 1) / 2, (length - day) / 2)
      shape[first + day] = strength * ramp
    }
  }
  return shape
}
