import type { Yardstick } from '#model/design/target'
import type { Limit } from './result.ts'
import { figure, words } from '#model/basis/words'
import type { YearInputs, YearResult } from '#model/building/year'

/** Hours around the worst one that are looked at. */
const AROUND_h = 12
/** A store this close to the room has little left to give, K. */
const SPENT_K = 2
/** A heat flow that makes up this share of the load is named as its cause. */
const MAIN_SHARE = 0.4
/** Usual films of a pane, m²K/W (ISO 6946). */
const FILMS_m2KW = 0.17

/**
 * Names what keeps the room from being cooler in its worst hours (and so, at the largest area, from its target): looks at the hours around the worst one and asks,
 * in this order, whether the dew point held the delivery, the store was at its lowest, the delivery was at full
 * stretch with a cold store, the room's mass is too small, sun or air change make most of the load; else the sky.
 */
export function limitOf(year: YearResult, inputs: YearInputs, stick: Yardstick): Limit {
  const worst = worstHour(year, stick)
  const hours = Array.from({ length: 2 * AROUND_h + 1 }, (_, k) => worst - AROUND_h + k).filter(
    (h) => h >= 0 && h < year.hours,
  )
  const mean = (column: Float64Array): number => hours.reduce((sum, h) => sum + column[h]!, 0) / hours.length
  const { room, plant } = inputs
  if (plant === null) return skyLimit(mean(year.room_C))
  const room_C = mean(year.room_C)
  const lowest_C = mean(room.indoorDewPoint_C) + plant.store.dewMargin_K
  if (!plant.store.drained && mean(year.storeBottom_C) < lowest_C && room_C - lowest_C < SPENT_K * 3)
    return dewLimit(lowest_C)
  if (year.storeTop_C[worst]! <= plant.plan.lowestStore_C + 0.5) {
    return {
      cause: 'lowestStore',
      sentence: words`The store is already at its lowest allowed ${figure(plant.plan.lowestStore_C, 'C')}: allow it colder, or make it larger.`,
    }
  }
  if (room_C - mean(year.storeBottom_C) > SPENT_K * 2) {
    return {
      cause: 'delivery',
      sentence: words`The store is ${figure(room_C - mean(year.storeBottom_C), 'K')} colder than the room, but the delivery cannot carry it over: a larger fan coil or cooled ceiling helps more than panel.`,
    }
  }
  return loadLimit(inputs, hours, mean(year.room_C))
}

function worstHour(year: YearResult, stick: Yardstick): number {
  let worst = 0
  let over_K = -Infinity
  for (let h = 0; h < year.hours; h++) {
    const above_K = year.room_C[h]! - stick.limit_C[h]!
    if (above_K > over_K) {
      over_K = above_K
      worst = h
    }
  }
  return worst
}

function dewLimit(lowest_C: number): Limit {
  return {
    cause: 'dewPoint',
    sentence: words`Humid air: the indoor dew point and its margin keep cooled surfaces at ${figure(lowest_C, 'C')} or above, however cold the store is.`,
  }
}

function skyLimit(room_C: number): Limit {
  return {
    cause: 'sky',
    sentence: words`In the worst days the nights are too warm, cloudy or humid for the sky to take more: the store never gets far below the room’s ${figure(room_C, 'C')}.`,
  }
}

/** Air change and panes, W/K. */
function airAndGlass_WK({ ventilation_WK, windows }: YearInputs['room'], h: number): number {
  const glass_WK = windows === null ? 0 : windows.area_m2 / (FILMS_m2KW + windows.resistance_m2KW)
  return ventilation_WK[h]! + glass_WK
}

/** Of the heat that comes in around the worst hour: sun, then air and windows, then what is left. */
function loadLimit({ room }: YearInputs, hours: readonly number[], room_C: number): Limit {
  let sun_W = 0
  let air_W = 0
  let other_W = 0
  for (const h of hours) {
    sun_W += room.sun_W[h]!
    air_W += Math.max(0, airAndGlass_WK(room, h) * (room.outdoor_C[h]! - room_C))
    other_W += room.gains_W[h]!
  }
  const all_W = sun_W + air_W + other_W
  if (all_W > 0 && sun_W / all_W > MAIN_SHARE) {
    return {
      cause: 'sunGain',
      sentence: words`Sunlight through the windows is most of the load in the worst days: shade them first.`,
    }
  }
  if (all_W > 0 && air_W / all_W > MAIN_SHARE) {
    return {
      cause: 'airChange',
      sentence: words`Hot air leaking in and window panes are most of the load in the worst days: seal and double them first.`,
    }
  }
  return skyLimit(room_C)
}
