import { HOUR_MS } from '#model/basis/hours'
import { getPosition } from 'suncalc'
import type { SunHours } from './hours.ts'

const RADIANS = Math.PI / 180
const DAY_MS = 86_400_000
/** Solar constant, W/m² (Kopp & Lean 2011, doi:10.1029/2010GL045777). */
export const SOLAR_CONSTANT_WM2 = 1361

/** Refraction that suncalc adds (Meeus, Astronomical Algorithms, eq. 16.4; held below the horizon), degrees. */
function addedRefraction_deg(geometric_deg: number): number {
  const h = Math.max(0, geometric_deg) * RADIANS
  return 0.0002967 / Math.tan(h + 0.00312536 / (h + 0.08901179)) / RADIANS
}

/** Geometric altitude from suncalc's apparent one: the refraction it adds is taken out by fixed-point steps. */
export function geometricAltitude_deg(apparent_deg: number): number {
  let geometric = apparent_deg - 0.01
  for (let i = 0; i < 12; i++) {
    const next = apparent_deg - addedRefraction_deg(geometric)
    const change = Math.abs(next - geometric)
    geometric = next
    if (change < 1e-6) break
  }
  return geometric
}

/** Sun at one instant: geometric altitude and azimuth clockwise from north, degrees. */
export function sunAt(
  utc_ms: number,
  latitude_deg: number,
  longitude_deg: number,
): { altitude_deg: number; azimuth_deg: number } {
  const { altitude, azimuth } = getPosition(new Date(utc_ms), latitude_deg, longitude_deg)
  return { altitude_deg: geometricAltitude_deg(altitude), azimuth_deg: azimuth }
}

/** Extraterrestrial irradiance normal to the beam, W/m². Source: Spencer 1971; day of year from the UTC date. */
export function extraterrestrial_Wm2(utc_ms: number): number {
  const yearStart_ms = Date.UTC(new Date(utc_ms).getUTCFullYear(), 0, 1)
  const angle = (2 * Math.PI * Math.floor((utc_ms - yearStart_ms) / DAY_MS)) / 365
  return (
    SOLAR_CONSTANT_WM2 *
    (1.00011 +
      0.034221 * Math.cos(angle) +
      0.00128 * Math.sin(angle) +
      0.000719 * Math.cos(2 * angle) +
      0.000077 * Math.sin(2 * angle))
  )
}

/**
 * The sun in every hour of a record, at the middle of the period its irradiance covers.
 * @param start_utcMs        beginning of hour 0, epoch ms UTC
 * @param radiationMiddle_h  from the beginning of an hour to where the sun is taken
 * @param longitude_deg      east positive
 * @throws RangeError when a place or length makes no sense
 * Positions: suncalc 2 (Meeus ch. 25), within 0.013° of the NREL algorithm.
 */
export function sunHours(
  start_utcMs: number,
  hours: number,
  radiationMiddle_h: number,
  latitude_deg: number,
  longitude_deg: number,
): SunHours {
  if (!(Math.abs(latitude_deg) <= 90)) throw new RangeError(`latitude ${latitude_deg}°, must be −90…90`)
  if (!(Math.abs(longitude_deg) <= 180)) throw new RangeError(`longitude ${longitude_deg}°, must be −180…180`)
  if (!Number.isFinite(start_utcMs)) throw new RangeError(`start ${start_utcMs} ms, must be a time`)
  const altitude_deg = new Float64Array(hours)
  const azimuth_deg = new Float64Array(hours)
  const extraterrestrial = new Float64Array(hours)
  for (let i = 0; i < hours; i++) {
    const utc_ms = start_utcMs + (i + radiationMiddle_h) * HOUR_MS
    const sun = sunAt(utc_ms, latitude_deg, longitude_deg)
    altitude_deg[i] = sun.altitude_deg
    azimuth_deg[i] = sun.azimuth_deg
    extraterrestrial[i] = extraterrestrial_Wm2(utc_ms)
  }
  return { hours, altitude_deg, azimuth_deg, extraterrestrial_Wm2: extraterrestrial }
}
