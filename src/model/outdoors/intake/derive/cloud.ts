import { clearSkyIndex_frac, type SunHours } from '#model/outdoors/sun'
import { hiddenSun } from './hidden-sun.ts'

/** The sun must be this high before global radiation separates cloud from haze, degrees (common practice, no source). */
export const CLOUD_SUN_DEG = 10

export const CLOUD_NOTE =
  'Worked out: 1 − global ÷ clear-sky global, held to the clear hours of the record itself, while the sun is above 10° and no hill or tree hides it, carried over the night by a straight line between the days before and after it, each the mean of its whole daylight and of the three hours next to the night ' +
  '(Crawford & Duchon 1999; clear sky Ineichen & Perez 2002).'

/**
 * Cloud fraction from the clear-sky index by day, carried across the hours with a low or hidden sun or none.
 * Source: Crawford & Duchon 1999, J. Appl. Meteorol. 38, 474: clf = 1 − s. The record in which the sun is always
 * hidden is read as it is. `null` where the sun never rises high enough.
 */
export function deriveCloud(
  global: Float64Array,
  sun: SunHours,
  altitude_m: number,
  cyclic: boolean,
): Float64Array | null {
  const index = global.map((g, i) =>
    clearSkyIndex_frac(g, sun.altitude_deg[i]!, sun.extraterrestrial_Wm2[i]!, altitude_m, CLOUD_SUN_DEG),
  )
  const hidden = hiddenSun(global, sun, altitude_m, CLOUD_SUN_DEG)
  const seen = index.map((value, i) => (hidden[i] === 1 ? NaN : value))
  return (
    carryOverNight(cloudFromIndex(seen, sun), cyclic) ?? carryOverNight(cloudFromIndex(index, sun), cyclic)
  )
}

/** Hours with a sun this high tell what a clear hour reads, degrees (common practice, no source). */
const CLEAR_SUN_DEG = 20
/** So many of them must be there. */
const ENOUGH_HOURS = 100
/** Share of those hours with a lower clear-sky index than a clear hour. */
export const CLEAR_SHARE = 0.95
/** Haze, height and a pyranometer’s error move a clear hour no further than this (common practice, no source). */
const MOST_OFF = 0.15

/**
 * Cloud fraction from clear-sky indices, NaN where there is none: 1 − index/c, 0…1. c is what a clear hour of this record
 * reads, the index that 95 % of the hours with a high sun stay under: it takes up haze, and an instrument that reads high
 * or low. Held within 15 % of 1, and 1 for a short record. Chosen with the rule of the night, by leaving sites out.
 */
export function cloudFromIndex(index: Float64Array, sun: SunHours, share = CLEAR_SHARE): Float64Array {
  const high = index.filter((value, i) => value === value && sun.altitude_deg[i]! > CLEAR_SUN_DEG).sort()
  const clear = high.length < ENOUGH_HOURS ? 1 : high[Math.floor(share * (high.length - 1))]!
  const held = Math.min(1 + MOST_OFF, Math.max(1 - MOST_OFF, clear))
  return index.map((value) => Math.min(1, Math.max(0, 1 - value / held)))
}

/** Daylight hours at each end of a night that give its cloud. */
const END_HOURS = 3

/** What a night's cloud is drawn from: the hours of daylight next to it, the means of the whole days, or the mean of these two. */
export type NightRule = 'duskAndDawn' | 'wholeDays' | 'meanOfBoth'

/**
 * Fills the NaN stretches of cloud. A night is a straight line from the cloud of the day before it to that of the day after
 * (round the year when `cyclic`), each the mean of two: its three hours of daylight next to the night, and its whole daylight.
 * Chosen by leaving sites out, over five places with measured longwave (`npm run -s evidence -- sky`); nothing in it is fitted.
 * @returns null when all are NaN
 */
export function carryOverNight(
  values: Float64Array,
  cyclic: boolean,
  rule: NightRule = 'meanOfBoth',
): Float64Array | null {
  const days = daylights(values, rule)
  const first = days[0]
  const last = days.at(-1)
  if (first === undefined || last === undefined) return null
  const n = values.length
  const result = values.slice()
  const bridge = (before: Daylight, after: Daylight, until: number): void => {
    const hours = until - before.end + 1
    for (let i = before.end; i < until; i += 1) {
      result[i % n] = before.dusk + ((after.dawn - before.dusk) * (i - before.end + 1)) / hours
    }
  }
  for (let k = 1; k < days.length; k += 1) bridge(days[k - 1]!, days[k]!, days[k]!.start)
  if (cyclic) bridge(last, first, first.start + n)
  else {
    result.fill(first.dawn, 0, first.start)
    result.fill(last.dusk, last.end)
  }
  return result
}

/** A run of hours with a value, `start` ≤ i < `end`, and what it gives to the night before it and after it. */
interface Daylight {
  readonly start: number
  readonly end: number
  readonly dawn: number
  readonly dusk: number
}

function daylights(values: Float64Array, rule: NightRule): Daylight[] {
  const found: Daylight[] = []
  for (let i = 0; i < values.length; i += 1) {
    if (Number.isNaN(values[i]!)) continue
    const start = i
    while (i < values.length && !Number.isNaN(values[i]!)) i += 1
    const end = i
    const count = Math.min(END_HOURS, end - start)
    const day = meanOf(values, start, end)
    const ofRule = (ends: number) =>
      rule === 'duskAndDawn' ? ends : rule === 'wholeDays' ? day : 0.5 * (ends + day)
    found.push({
      start,
      end,
      dawn: ofRule(meanOf(values, start, start + count)),
      dusk: ofRule(meanOf(values, end - count, end)),
    })
  }
  return found
}

function meanOf(values: Float64Array, from: number, until: number): number {
  let sum = 0
  for (let i = from; i < until; i += 1) sum += values[i]!
  return sum / (until - from)
}
