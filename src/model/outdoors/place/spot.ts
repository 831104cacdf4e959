/** A point on Earth. */
export interface Spot {
  /** North positive. */
  readonly latitude_deg: number
  /** East positive. */
  readonly longitude_deg: number
  readonly altitude_m: number
}

type Level = Omit<Spot, 'altitude_m'>

const KM_PER_DEGREE = 111.2

/** Kilometres east of a, on a plane about it. */
export function eastOf_km(a: Level, longitude_deg: number): number {
  const east_deg = ((((longitude_deg - a.longitude_deg + 540) % 360) + 360) % 360) - 180
  return KM_PER_DEGREE * east_deg * Math.cos((a.latitude_deg * Math.PI) / 180)
}

/** Kilometres north of a. */
export const northOf_km = (a: Level, latitude_deg: number): number =>
  KM_PER_DEGREE * (latitude_deg - a.latitude_deg)

/** Kilometres between two points, on a plane about the first: good to 1 % within 500 km outside the polar circles. */
export function apart_km(a: Level, latitude_deg: number, longitude_deg: number): number {
  return Math.hypot(northOf_km(a, latitude_deg), eastOf_km(a, longitude_deg))
}
