/** A point on Earth. */
export interface Spot {
  /** North positive. */
  readonly latitude_deg: number
  /** East positive. */
  readonly longitude_deg: number
  readonly altitude_m: number
}

const KM_PER_DEGREE = 111.2

/** Kilometres between two points, on a plane about the first: good to 1 % within 500 km outside the polar circles. */
export function apart_km(a: Omit<Spot, 'altitude_m'>, latitude_deg: number, longitude_deg: number): number {
  const east_deg = ((((longitude_deg - a.longitude_deg + 540) % 360) + 360) % 360) - 180
  const north_deg = latitude_deg - a.latitude_deg
  return KM_PER_DEGREE * Math.hypot(north_deg, east_deg * Math.cos((a.latitude_deg * Math.PI) / 180))
}
