import { YEAR_DAYS, YEAR_HOURS } from '#model/basis/hours'
import type { Site } from '#model/outdoors/weather'

/** Lag of the warmest hour behind noon, h, and how fast the night cools. */
const MAXIMUM_LAG_H = 1.86
const NIGHT_DECAY = 2.2

/** True solar hour (equation of time left out, ±0.27 h) at the middle of an hour of the local clock. */
export function solarHour_h(site: Site, hour: number): number {
  const solar = (hour % 24) + 0.5 + site.longitude_deg / 15 - site.utcOffset_h
  return ((solar % 24) + 24) % 24
}

/** Hours of daylight on a day of the year (0-based); declination of Cooper 1969, sun as a point, no refraction. */
export function dayLength_h(latitude_deg: number, day: number): number {
  const declination = ((23.45 * Math.PI) / 180) * Math.sin((2 * Math.PI * (284 + day + 1)) / YEAR_DAYS)
  const cosine = -Math.tan((latitude_deg * Math.PI) / 180) * Math.tan(declination)
  return (24 / Math.PI) * Math.acos(Math.max(-1, Math.min(1, cosine)))
}

/**
 * Course of air temperature through a day: 0 at sunrise, 1 at the warmest hour; a sine by day, an exponential
 * by night.
 * Source: Parton & Logan 1981, Agricultural Meteorology 23, 205–216 (coefficients from memory). Differs: the
 * night branch is stretched to reach 0 at sunrise, where the original steps by e^−2.2; the minimum is at sunrise.
 * @param solar_h     solar hour, 0…24
 * @param daylight_h  hours of daylight, kept within 4…20
 * @param nightDecay  how fast the night cools, –
 */
export function warmthOfDay(solar_h: number, daylight_h: number, nightDecay = NIGHT_DECAY): number {
  const daylight = Math.max(4, Math.min(20, daylight_h))
  const sinceSunrise = (solar_h - (12 - daylight / 2) + 24) % 24
  if (sinceSunrise <= daylight) {
    return Math.sin((Math.PI * sinceSunrise) / (daylight + 2 * MAXIMUM_LAG_H))
  }
  const atSunset = Math.sin((Math.PI * daylight) / (daylight + 2 * MAXIMUM_LAG_H))
  const night = (sinceSunrise - daylight) / (24 - daylight)
  const end = Math.exp(-nightDecay)
  return (atSunset * (Math.exp(-nightDecay * night) - end)) / (1 - end)
}

/** The course of warmth through every day of the year, 0…1, hour by hour. */
export function dayCourse(site: Site, nightDecay = NIGHT_DECAY): Float64Array {
  return Float64Array.from({ length: YEAR_HOURS }, (_, hour) =>
    warmthOfDay(solarHour_h(site, hour), dayLength_h(site.latitude_deg, Math.floor(hour / 24)), nightDecay),
  )
}
