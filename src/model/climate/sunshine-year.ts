import { getPosition } from 'suncalc'
import type { Site } from '#model/weather/record.ts'

/** Sunshine on a horizontal plane and across the beam, hourly, W/m². */
export interface SunshineHours {
  readonly globalHorizontal_Wm2: Float64Array
  readonly directNormal_Wm2: Float64Array
  readonly diffuseHorizontal_Wm2: Float64Array
}

/**
 * Sunshine under a given cloud: clear-sky global (Haurwitz 1945) × cloud transmission 1 − 0.75 n^3.4 (Kasten &
 * Czeplak 1980), split by Erbs 1982. Direct and diffuse are whole W/m²; global = direct · sin h + diffuse exactly.
 */
export function sunshineYear(site: Site, start_utcMs: number, cloud_frac: Float64Array): SunshineHours {
  const hours = cloud_frac.length
  const globalHorizontal_Wm2 = new Float64Array(hours)
  const directNormal_Wm2 = new Float64Array(hours)
  const diffuseHorizontal_Wm2 = new Float64Array(hours)
  for (let hour = 0; hour < hours; hour += 1) {
    const at = new Date(start_utcMs + (hour + 0.5) * 3_600_000)
    const sine = Math.sin((getPosition(at, site.latitude_deg, site.longitude_deg).altitude * Math.PI) / 180)
    if (sine <= 0) continue
    const outside = 1361 * (1 + 0.033 * Math.cos((2 * Math.PI * (hour / 24)) / 365))
    const global = 1098 * sine * Math.exp(-0.057 / sine) * (1 - 0.75 * cloud_frac[hour]! ** 3.4)
    const kt = global / (outside * sine)
    const share =
      kt <= 0.22
        ? 1 - 0.09 * kt
        : kt <= 0.8
          ? 0.9511 - 0.1604 * kt + 4.388 * kt ** 2 - 16.638 * kt ** 3 + 12.336 * kt ** 4
          : 0.165
    diffuseHorizontal_Wm2[hour] = Math.round(global * share)
    directNormal_Wm2[hour] = Math.round((global * (1 - share)) / sine)
    globalHorizontal_Wm2[hour] = directNormal_Wm2[hour]! * sine + diffuseHorizontal_Wm2[hour]!
  }
  return { globalHorizontal_Wm2, directNormal_Wm2, diffuseHorizontal_Wm2 }
}
