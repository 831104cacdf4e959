import { correlation } from '../column/profile.ts'
import type { ProblemList } from '../problems.ts'
import { asRead } from '../question.ts'
import type { Site } from '#model/outdoors/weather'
import { sunHours } from '#model/outdoors/sun'

/** Days a record must have for its seasons to show. */
const SEASONS_D = 300
/** How much better the other hemisphere must fit, and how well, as correlations of daily sums. */
const BETTER = 0.3
const FITS = 0.4

/** Asks when the daily radiation follows the seasons of the other hemisphere: a latitude with the wrong sign. */
export function checkHemisphere(
  global: Float64Array,
  start_utcMs: number,
  site: Pick<Site, 'latitude_deg' | 'longitude_deg'>,
  problems: ProblemList,
): void {
  if (global.length < SEASONS_D * 24 || Math.abs(site.latitude_deg) < 15) return
  const measured = dailySums(global)
  const fit = (latitude_deg: number): number => {
    const sun = sunHours(start_utcMs, global.length, 0.5, latitude_deg, site.longitude_deg)
    const light = sun.altitude_deg.map((altitude) => Math.max(0, Math.sin((altitude * Math.PI) / 180)))
    return correlation(measured, dailySums(light))
  }
  const other = fit(-site.latitude_deg)
  if (other < FITS || other < fit(site.latitude_deg) + BETTER) return
  problems.ask({
    about: 'latitude',
    sentence: `The radiation follows the seasons of the other side of the equator: the latitude ${site.latitude_deg}° looks like it has the wrong sign.`,
    choices: [
      {
        words: `Take the latitude as ${-site.latitude_deg}°.`,
        change: { site: { latitude_deg: -site.latitude_deg } },
      },
      asRead('latitude'),
    ],
  })
}

function dailySums(values: Float64Array): Float64Array {
  return Float64Array.from({ length: Math.floor(values.length / 24) }, (_, day) =>
    values.subarray(day * 24, day * 24 + 24).reduce((sum, value) => sum + value, 0),
  )
}
