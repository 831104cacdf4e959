import { ineichenPerez, planeIrradiance, type SunHours, sunHours } from '#model/outdoors/sun'
import type { WeatherRecord } from '#model/outdoors/weather'

/**
 * What is recalled of the standard's weather file (typical year of Denver, cold and clear): mean air temperature, °C, mean
 * wind, m/s, the year's beam on a plane that faces the sun, diffuse light on the horizontal, and what falls on a wall to the
 * south, the middle of the published 1456 to 1566, kWh/m². All from memory.
 */
export const RECALLED = {
  mean_C: 9.71,
  wind_ms: 4.02,
  beam_kWhm2: 2353.6,
  diffuse_kWhm2: 492.3,
  south_kWhm2: 1511,
} as const
/** Linke turbidity of the clear hours: very clean mountain air (common practice, no source). */
const CLEAN = 2

const sumOf = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0)

const ALBEDO_frac = 0.2

/**
 * A year of the same city brought to those five numbers, and to nothing else: temperatures and dew points moved by one
 * amount, wind and diffuse light by one factor, beam by a power of its share of a clear sky's that swings once a year (so
 * that clear hours stay, broken ones clear up, and winters have their part); cloud by what beam is left. No result of
 * the cases enters.
 */
export function standardYear(record: WeatherRecord): WeatherRecord {
  const { hours, site } = record
  const sun = sunHours(
    record.start_utcMs,
    hours,
    record.radiationMiddle_h,
    site.latitude_deg,
    site.longitude_deg,
  )
  const shift_K = RECALLED.mean_C - sumOf(record.airTemp_C) / hours
  const moved = (values: Float64Array): Float64Array => values.map((value) => value + shift_K)
  const diffuser = (1000 * RECALLED.diffuse_kWhm2) / sumOf(record.diffuseHorizontal_Wm2)
  const windier = (RECALLED.wind_ms * hours) / sumOf(record.wind_ms)
  const diffuseHorizontal_Wm2 = record.diffuseHorizontal_Wm2.map((value) => value * diffuser)
  const clear_Wm2 = clearBeam_Wm2(record, sun)
  const lightOf = (directNormal_Wm2: Float64Array) => ({
    directNormal_Wm2,
    diffuseHorizontal_Wm2,
    globalHorizontal_Wm2: diffuseHorizontal_Wm2.map(
      (value, h) =>
        value + directNormal_Wm2[h]! * Math.max(0, Math.sin((sun.altitude_deg[h]! * Math.PI) / 180)),
    ),
  })
  const beam = (power: number, swing: number): Float64Array =>
    record.directNormal_Wm2.map((own_Wm2, h) => {
      const share = clear_Wm2[h]! > 0 ? Math.min(1, own_Wm2 / clear_Wm2[h]!) : 0
      // Winter has the smaller power, so the more sun, for a swing above 0.
      const season = Math.exp(-swing * Math.cos((2 * Math.PI * h) / hours))
      return share > 0 ? clear_Wm2[h]! * share ** (power * season) : 0
    })
  const ofYear = (swing: number): Float64Array =>
    beam(
      halved(0, 3, (power) => sumOf(beam(power, swing)) / 1000 > RECALLED.beam_kWhm2),
      swing,
    )
  const south_kWhm2 = (swing: number): number =>
    sumOf(planeIrradiance(sun, lightOf(ofYear(swing)), 90, 180, ALBEDO_frac).total_Wm2) / 1000
  const light = lightOf(ofYear(halved(-2, 2, (swing) => south_kWhm2(swing) < RECALLED.south_kWhm2)))
  const uncovered = (direct_Wm2: Float64Array): number => sumOf(direct_Wm2) / sumOf(clear_Wm2)
  const cloudier = (1 - uncovered(light.directNormal_Wm2)) / (1 - uncovered(record.directNormal_Wm2))
  return {
    ...record,
    ...light,
    airTemp_C: moved(record.airTemp_C),
    dewPoint_C: moved(record.dewPoint_C),
    wind_ms: record.wind_ms.map((value) => value * windier),
    cloud_frac: record.cloud_frac.map((value) => value * cloudier),
  }
}

/** Where `more` turns from true to false, between two ends. */
function halved(low: number, high: number, more: (at: number) => boolean): number {
  for (let k = 0; k < 20; k++) {
    const middle = (low + high) / 2
    if (more(middle)) low = middle
    else high = middle
  }
  return low
}

function clearBeam_Wm2({ hours, site }: WeatherRecord, sun: SunHours): Float64Array {
  return new Float64Array(hours).map((_, h) =>
    sun.altitude_deg[h]! > 0
      ? ineichenPerez(sun.altitude_deg[h]!, sun.extraterrestrial_Wm2[h]!, site.altitude_m, CLEAN).direct_Wm2
      : 0,
  )
}
