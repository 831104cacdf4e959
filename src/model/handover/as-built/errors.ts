/**
 * Errors of one logged hour that are nobody's fault, one standard deviation: the pair of sensors, each within 0.2 K of
 * which 0.17 K differs from hour to hour; the sky formula (measured stations: 8–16 W/m² an hour, half of it all night
 * long), more under cloud; gusts and shelter; the sun. Sensors, gusts and sun: common practice, no source.
 */
export const HOUR_ERRORS = {
  sensors_K: 0.25,
  skyHour_Wm2: 8,
  skyDay_Wm2: 8,
  cloudSky_Wm2: 20,
  windLog: 0.3,
  sun_frac: 0.06,
} as const

/** Noon-to-noon day of an hour of the log, so that a night stays together. */
export function nightOf(hour: number): number {
  return Math.floor((hour + 12) / 24)
}
