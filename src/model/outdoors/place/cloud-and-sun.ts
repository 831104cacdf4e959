import { hourlyFromDays, monthMeans, monthOfDay, YEAR_HOURS } from '#model/basis/hours'
import { persistentSeries, type RandomSource } from '#model/basis/numbers'
import { holdMonths } from '#model/outdoors/climate'
import { ineichenPerez, splitGlobal, sunHours } from '#model/outdoors/sun'
import type { Site, WeatherRecord } from '#model/outdoors/weather'
import { cloudCourse } from './cloud-course.ts'
import type { MonthTargets } from './months.ts'
import { within } from './within.ts'

/** Hour of the cloud's own course, and how far logits spread. */
const CLOUD = { persistence: 0.85, spread: 2.2, dayShare: 0.7, dayScale: 1.08 }
/** Mean of n (1 − n) over states that spread so about one half: how far the mean follows its logit. */
const MEAN_SLOPE = 0.25 / Math.sqrt(1 + (Math.PI / 8) * CLOUD.spread ** 2)
const HOLD = { gain: 5, passes: 40 }

/** Opaque cloud of each hour, 0…1: logistic of day and hour states, held to the month means. */
export function placeCloud(
  site: Site,
  months: MonthTargets,
  dayState: Float64Array,
  random: RandomSource,
): Float64Array {
  const byDay = hourlyFromDays(dayState)
  const byHour = persistentSeries(random, YEAR_HOURS, CLOUD.persistence)
  const ofHour = cloudCourse(site, months, MEAN_SLOPE)
  const state = byDay.map(
    (day, h) =>
      ofHour[h]! +
      CLOUD.spread *
        (Math.sqrt(CLOUD.dayShare) * CLOUD.dayScale * day + Math.sqrt(1 - CLOUD.dayShare) * byHour[h]!),
  )
  const build = (shift: Float64Array): Float64Array => state.map((z, h) => 1 / (1 + Math.exp(-z - shift[h]!)))
  return holdMonths(months.cloud_frac, build, HOLD.gain, HOLD.passes)
}

/** Turbidity of ordinary air (Linke), and the power of cloud in what it takes from the sun. */
const TURBIDITY = 3
const CLOUD_POWER = 1.5
const LEAST_LOSS = 0.25
const MOST_LOSS = 0.85
const MOST_DIM = 1.05

type Sunshine = Pick<WeatherRecord, 'globalHorizontal_Wm2' | 'directNormal_Wm2' | 'diffuseHorizontal_Wm2'>

/**
 * Sun of each hour under that cloud: G = G_clear (1 − a n^1.5) b, with a and then b of each month so that the month's
 * clear-sky index is held. Clear sky: Ineichen & Perez 2002; beam and diffuse: Erbs, Klein & Duffie 1982.
 */
export function placeSun(
  site: Site,
  start_utcMs: number,
  months: MonthTargets,
  cloud: Float64Array,
): Sunshine {
  const sun = sunHours(start_utcMs, YEAR_HOURS, 0.5, site.latitude_deg, site.longitude_deg)
  const clear = Float64Array.from({ length: YEAR_HOURS }, (_, h) =>
    sun.altitude_deg[h]! > 0
      ? ineichenPerez(sun.altitude_deg[h]!, sun.extraterrestrial_Wm2[h]!, site.altitude_m, TURBIDITY)
          .global_Wm2
      : 0,
  )
  const taken = cloud.map((n) => n ** CLOUD_POWER)
  const clearMean = monthMeans(clear)
  const takenMean = monthMeans(clear.map((value, h) => value * taken[h]!))
  const loss = months.clearIndex_frac.map((index, k) =>
    within(((1 - index) * clearMean[k]!) / Math.max(1, takenMean[k]!), LEAST_LOSS, MOST_LOSS),
  )
  const dim = months.clearIndex_frac.map((index, k) =>
    Math.min(MOST_DIM, (index * clearMean[k]!) / Math.max(1, clearMean[k]! - loss[k]! * takenMean[k]!)),
  )
  const globalHorizontal_Wm2 = new Float64Array(YEAR_HOURS)
  const directNormal_Wm2 = new Float64Array(YEAR_HOURS)
  const diffuseHorizontal_Wm2 = new Float64Array(YEAR_HOURS)
  for (let h = 0; h < YEAR_HOURS; h++) {
    if (sun.altitude_deg[h]! <= 0) continue
    const k = monthOfDay(Math.floor(h / 24))
    const global = Math.max(0, clear[h]! * (1 - loss[k]! * taken[h]!) * dim[k]!)
    const split = splitGlobal(global, sun.altitude_deg[h]!, sun.extraterrestrial_Wm2[h]!)
    globalHorizontal_Wm2[h] = global
    directNormal_Wm2[h] = split.directNormal_Wm2
    diffuseHorizontal_Wm2[h] = split.diffuseHorizontal_Wm2
  }
  return { globalHorizontal_Wm2, directNormal_Wm2, diffuseHorizontal_Wm2 }
}
