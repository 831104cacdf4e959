/* Sunlight, and cloud worked out from it by day and carried over the night, as src/model/README.md describes it (Weather; Sun),
 * written from that page alone by someone who had not read the code. */

const RAD = Math.PI / 180
const held = (x: number, low: number, high: number) => Math.min(high, Math.max(low, x))
const mean = (of: readonly number[]) => of.reduce((sum, x) => sum + x, 0) / of.length

export interface PageSunlight {
  readonly altitude_deg: number
  /** On a face turned to the sun, outside the air, W/m². */
  readonly outside: number
  readonly global_Wm2: number
}

/** Sunlight on a face turned to the sun outside the air. */
export function extraterrestrial_Wm2(dayOfYear: number): number {
  const B = (2 * Math.PI * (dayOfYear - 1)) / 365
  const course = 0.034221 * Math.cos(B) + 0.00128 * Math.sin(B)
  return 1361 * (1.00011 + course + 0.000719 * Math.cos(2 * B) + 0.000077 * Math.sin(2 * B))
}

const TURBIDITY = 3
const airMass = (h_deg: number) => 1 / (Math.sin(h_deg * RAD) + 0.50572 * (h_deg + 6.07995) ** -1.6364)

/** Global irradiance under a clear sky. */
export function clearGlobal_Wm2(altitude_deg: number, outside: number, z_m: number): number {
  if (altitude_deg <= 0) return 0
  const mass = airMass(altitude_deg)
  const through = Math.exp(-z_m / 8000) + Math.exp(-z_m / 1250) * (TURBIDITY - 1)
  const weakened = Math.exp(-(3.92e-5 * z_m + 0.0387) * mass * through + 0.01 * mass ** 1.8)
  return (5.09e-5 * z_m + 0.868) * outside * Math.sin(altitude_deg * RAD) * weakened
}

/** Beam under a clear sky, on a face turned to the sun. */
export function clearBeam_Wm2(altitude_deg: number, outside: number, z_m: number): number {
  if (altitude_deg <= 0) return 0
  const f = Math.exp(-z_m / 8000)
  const first = (0.664 + 0.163 / f) * outside * Math.exp(-0.09 * airMass(altitude_deg) * (TURBIDITY - 1))
  const most = 1 - (0.1 - 0.2 * Math.exp(-TURBIDITY)) / (0.1 + 0.882 / f)
  return Math.min(first, (clearGlobal_Wm2(altitude_deg, outside, z_m) / Math.sin(altitude_deg * RAD)) * most)
}

/** Beam in a global irradiance, on a face turned to the sun. */
export function splitBeam_Wm2(altitude_deg: number, outside: number, global_Wm2: number): number {
  if (altitude_deg < 3) return 0
  const up = Math.sin(altitude_deg * RAD)
  const k = global_Wm2 / (outside * up)
  let diffuse = 0.165
  if (k <= 0.22) diffuse = 1 - 0.09 * k
  else if (k <= 0.8) diffuse = 0.9511 - 0.1604 * k + 4.388 * k ** 2 - 16.638 * k ** 3 + 12.336 * k ** 4
  return (global_Wm2 * (1 - diffuse)) / up
}

/** Value that a share of the values stays under. */
function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b)
  const at = share * (sorted.length - 1)
  const below = Math.floor(at)
  return sorted[below]! + (at - below) * ((sorted[below + 1] ?? sorted[below]!) - sorted[below]!)
}

/** Cloud of the hours in which the sun tells it. */
function byDay(hours: readonly PageSunlight[], z_m: number): (number | null)[] {
  const index = hours.map((hour) => hour.global_Wm2 / clearGlobal_Wm2(hour.altitude_deg, hour.outside, z_m))
  const high = index.filter((_, i) => hours[i]!.altitude_deg > 20)
  const clear = high.length < 100 ? 1 : held(quantile(high, 0.95), 0.85, 1.15)
  return index.map((k, i) => (hours[i]!.altitude_deg > 10 ? held(1 - k / clear, 0, 1) : null))
}

/** Cloud that a night joins on to: of its nearest three hours of daylight, and of the whole day, half each. */
function besideNight(seen: readonly (number | null)[], from: number, step: 1 | -1): number {
  const day: number[] = []
  for (let i = from; typeof seen[i] === 'number'; i += step) day.push(seen[i]!)
  return (mean(day.slice(0, 3)) + mean(day)) / 2
}

/** Cloud of every hour: over a night a straight line; before the first hour with a value and after the last one, level. */
export function pageCloud(hours: readonly PageSunlight[], z_m: number): number[] {
  const seen = byDay(hours, z_m)
  const cloud: number[] = []
  while (cloud.length < seen.length) {
    const start = cloud.length
    if (seen[start] !== null) {
      cloud.push(seen[start]!)
      continue
    }
    let end = start
    while (seen[end] === null) end++
    const dusk = start > 0 ? besideNight(seen, start - 1, -1) : besideNight(seen, end, 1)
    const dawn = end < seen.length ? besideNight(seen, end, 1) : dusk
    for (let i = start; i < end; i++) cloud.push(dusk + ((dawn - dusk) * (i - start + 1)) / (end - start + 1))
  }
  return cloud
}
