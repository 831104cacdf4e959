import { within } from './within.ts'
import type { ClimatePlaces } from './pack.ts'
import { eastOf_km, northOf_km, type Spot } from './spot.ts'

/** A place of the climate data by its number, and how far it is. */
export interface AtDistance {
  readonly i: number
  readonly km: number
}

/** Fall of the mean temperature with height where nothing nearer says otherwise, K/m (the standard atmosphere has 0.0065; near the ground 0.0055: common practice, no source). */
const USUAL_LAPSE_KM = 0.0055
/** Lapse rates of monthly means lie between a deep inversion and nearly dry air, K/m. */
const LAPSES_KM = [-0.002, 0.0095] as const
const LAPSE = { reach_km: 150, most: 40, least: 4 }
/** What the usual lapse rate, and level climate, count for: as one place 200 m higher, or 50 km away. */
const PRIOR = { height_m: 200, apart_km: 50 }

/**
 * Fall of a month's mean temperature with height about a spot, K/m: weighted least squares on height and two directions over the
 * places within 150 km, drawn to 5.5 K/km where they say little. Left out at 15 km and more, 1199 places: the largest tenth of
 * errors begins at 1.25 K in January and 1.26 K in July, with 5.5 K/km everywhere 1.38 and 1.32 K.
 */
export function lapseRate_Km(
  places: ClimatePlaces,
  spot: Spot,
  near: readonly AtDistance[],
  month: number,
): number {
  const used = near.filter(({ km }) => km < LAPSE.reach_km).slice(0, LAPSE.most)
  if (used.length < LAPSE.least) return USUAL_LAPSE_KM
  const points = used.map(({ i, km }) => ({
    weight: Math.exp(-0.5 * (km / (0.5 * LAPSE.reach_km)) ** 2),
    x: eastOf_km(spot, places.longitude_deg[i]!),
    y: northOf_km(spot, places.latitude_deg[i]!),
    z: places.altitude_m[i]!,
    value: places.months.airTemp_C[month]![i]! + USUAL_LAPSE_KM * places.altitude_m[i]!,
  }))
  const m = moments(points)
  const [xx, yy, zz] = [m.xx + PRIOR.apart_km ** 2, m.yy + PRIOR.apart_km ** 2, m.zz + PRIOR.height_m ** 2]
  const all = zz * (xx * yy - m.xy ** 2) - m.xz * (m.xz * yy - m.xy * m.yz) + m.yz * (m.xz * m.xy - xx * m.yz)
  const up =
    m.zt * (xx * yy - m.xy ** 2) - m.xz * (m.xt * yy - m.xy * m.yt) + m.yz * (m.xt * m.xy - xx * m.yt)
  return within(USUAL_LAPSE_KM - up / all, ...LAPSES_KM)
}

interface Point {
  readonly weight: number
  readonly x: number
  readonly y: number
  readonly z: number
  readonly value: number
}

/** Weighted sums of products about the means. */
function moments(points: readonly Point[]) {
  let [all, x, y, z, t] = [0, 0, 0, 0, 0]
  for (const p of points) {
    all += p.weight
    x += p.weight * p.x
    y += p.weight * p.y
    z += p.weight * p.z
    t += p.weight * p.value
  }
  const sums = { xx: 0, xy: 0, yy: 0, xz: 0, yz: 0, zz: 0, xt: 0, yt: 0, zt: 0 }
  for (const p of points) {
    const [dx, dy, dz, dt] = [p.x - x / all, p.y - y / all, p.z - z / all, p.value - t / all]
    sums.xx += p.weight * dx * dx
    sums.xy += p.weight * dx * dy
    sums.yy += p.weight * dy * dy
    sums.xz += p.weight * dx * dz
    sums.yz += p.weight * dy * dz
    sums.zz += p.weight * dz * dz
    sums.xt += p.weight * dx * dt
    sums.yt += p.weight * dy * dt
    sums.zt += p.weight * dz * dt
  }
  return sums
}

const GRADIENT = { reach_km: 600, cell_deg: 1, inCell: 2, least: 60 }
/** Directions in which the places do not spread this far (root mean square) show no gradient, km. */
const LEAST_SPREAD_km = 150

/**
 * How steeply the mean temperature at sea level changes along the ground about a spot, K/km, twelve months: a plane through the
 * places within 1200 km, weighted to 600 km. Null where too few places show it (islands).
 */
export function airGradients_Kkm(
  places: ClimatePlaces,
  spot: Spot,
  near: readonly AtDistance[],
): number[] | null {
  const inCell = new Map<number, number>()
  const points = near
    .filter(({ i, km }) => {
      if (km > 2 * GRADIENT.reach_km) return false
      const cell =
        1000 * Math.floor(places.latitude_deg[i]! / GRADIENT.cell_deg) +
        Math.floor(places.longitude_deg[i]! / GRADIENT.cell_deg)
      inCell.set(cell, (inCell.get(cell) ?? 0) + 1)
      return inCell.get(cell)! <= GRADIENT.inCell
    })
    .map(({ i, km }) => ({
      i,
      weight: Math.exp(-0.5 * (km / GRADIENT.reach_km) ** 2),
      x: eastOf_km(spot, places.longitude_deg[i]!),
      y: northOf_km(spot, places.latitude_deg[i]!),
      z: places.altitude_m[i]!,
    }))
  if (points.length < GRADIENT.least) return null
  const all = points.reduce((sum, { weight }) => sum + weight, 0)
  return places.months.airTemp_C.map((column) => {
    const m = moments(points.map((p) => ({ ...p, value: column[p.i]! + USUAL_LAPSE_KM * p.z })))
    const least = all * LEAST_SPREAD_km ** 2
    const [xx, yy] = [Math.max(m.xx, least), Math.max(m.yy, least)]
    const all2 = Math.max(1e-9, xx * yy - m.xy ** 2)
    return Math.hypot((m.xt * yy - m.yt * m.xy) / all2, (m.yt * xx - m.xt * m.xy) / all2)
  })
}
