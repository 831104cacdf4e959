import type { BenchMoment, Thermometer } from './reading.ts'

/** What may be wrong with the conditions of a reading; added to the moment before the plate is solved. */
export interface Disturbance {
  readonly air_K: number
  /** Share by which all sunlight is misread. */
  readonly sunGain_frac: number
  readonly sun_Wm2: number
  readonly sky_Wm2: number
  /** Natural logarithm of true wind over wind taken. */
  readonly windLog: number
  readonly filmSolar_frac: number
  readonly filmInfrared_frac: number
}

export const UNDISTURBED: Disturbance = {
  air_K: 0,
  sunGain_frac: 0,
  sun_Wm2: 0,
  sky_Wm2: 0,
  windLog: 0,
  filmSolar_frac: 0,
  filmInfrared_frac: 0,
}

/**
 * An error shared by readings: by all of one moment (the air, this hour's cloud), or by all there are (the meter's
 * calibration, the sky formula, the film). Because two coatings in one moment share it, their difference keeps
 * little of it. `sd` is one standard deviation.
 */
export interface ErrorSource {
  readonly of: keyof Disturbance
  readonly shared: 'moment' | 'all'
  sd(moment: BenchMoment): number
}

/** Random error of one surface temperature, K. Common practice, no source. */
export const THERMOMETER_SD_K: Readonly<Record<Thermometer, number>> = { contact: 0.3, infrared: 0.7 }
/** Calibration error that all readings of one thermometer share, K. Common practice, no source. */
export const THERMOMETER_SHARED_SD_K: Readonly<Record<Thermometer, number>> = { contact: 0.3, infrared: 0.8 }

/** Irradiance taken when a moment in the sun or shade has no meter reading, W/m², and how far off it may be. */
export const UNMETERED_SUN = {
  sun: { mean_Wm2: 850, sd_Wm2: 150 },
  shade: { mean_Wm2: 60, sd_Wm2: 30 },
} as const

/**
 * Sky longwave: clear-sky formulas miss by 8–16 W/m² an hour and a few W/m² at a whole place (measured stations,
 * Matsunobu & Coimbra 2024; Remote Sensing 2024, 16, 3422), cloud judged by eye by more, a wall in the shade by
 * more again. Meter, air and wind: common practice, no source.
 */
export const ERROR_SOURCES: readonly ErrorSource[] = [
  { of: 'air_K', shared: 'moment', sd: () => 0.5 },
  { of: 'sunGain_frac', shared: 'all', sd: () => 0.05 },
  { of: 'sun_Wm2', shared: 'moment', sd: sunSd_Wm2 },
  { of: 'sky_Wm2', shared: 'all', sd: () => 6 },
  { of: 'sky_Wm2', shared: 'moment', sd: skySd_Wm2 },
  { of: 'windLog', shared: 'moment', sd: windLogSd },
  { of: 'filmSolar_frac', shared: 'all', sd: () => 0.02 },
  { of: 'filmInfrared_frac', shared: 'all', sd: () => 0.04 },
]

/** Irradiance of a moment, W/m²: metered, or what an unmetered sun or shade usually has. */
export function momentSun_Wm2(moment: BenchMoment): number {
  if (moment.light === 'night') return 0
  return moment.sun_Wm2 ?? UNMETERED_SUN[moment.light].mean_Wm2
}

function sunSd_Wm2(moment: BenchMoment): number {
  if (moment.light === 'night') return 0
  if (moment.sun_Wm2 === null) return UNMETERED_SUN[moment.light].sd_Wm2
  return 5 + 0.02 * moment.sun_Wm2
}

function skySd_Wm2(moment: BenchMoment): number {
  const shade = moment.light === 'shade' ? 12 : 0
  const sky = moment.skyLongwave_Wm2 !== null ? 4 : 8 + 25 * moment.cloud_frac
  return Math.hypot(sky, shade)
}

/** Gusts between the moment and its class; a meter near its stall speed says little. */
function windLogSd(moment: BenchMoment): number {
  if (moment.wind !== 'metered') return 0.3
  return Math.min(0.6, Math.hypot(0.15, 0.15 / Math.max(0.2, moment.wind_ms ?? 0.2)))
}
