import { stop } from '#model/basis/words'
import type { ClimatePlaces, PackedQuantity } from './pack.ts'
import { airGradients_Kkm, lapseRate_Km } from './slopes.ts'
import { apart_km, type Spot } from './spot.ts'

/** Places that are asked, and how height counts: 100 m as 10 km. Weight 1/(d + 3 km)². */
const ASKED = 6
const KM_PER_M = 0.1
const NEAR_KM = 3
/** Further away in latitude than this nothing is looked at, degrees. */
const BAND_DEG = 11

/** A place whose monthly climate is held. */
export interface Neighbour extends Spot {
  readonly apart_km: number
  /** Its height over that of the spot, m. */
  readonly higher_m: number
  /** Its share of the answer, 0…1. */
  readonly weight: number
}

/** The monthly climate of 1961–1990 at a spot, by the nearest places; twelve values each. */
export interface NearbyClimate {
  readonly neighbours: readonly Neighbour[]
  readonly months: Readonly<Record<PackedQuantity, readonly number[]>>
  /** Change of the sea-level mean temperature along the ground, K/km, twelve months; null where too few places show it. */
  readonly airGradient_Kkm: readonly number[] | null
}

/**
 * Weighted mean of the six nearest places, its temperature moved to the spot's height by the lapse rate that the places around show in
 * that month.
 * @param leaveOut_km  places nearer than this are left out: for checks of the method by itself
 * @throws ProblemError where there is no place within 11° of latitude
 */
export function nearbyClimate(places: ClimatePlaces, spot: Spot, leaveOut_km = 0): NearbyClimate {
  const near: { i: number; far_km: number; km: number }[] = []
  for (let i = 0; i < places.count; i++) {
    if (Math.abs(places.latitude_deg[i]! - spot.latitude_deg) > BAND_DEG) continue
    const km = apart_km(spot, places.latitude_deg[i]!, places.longitude_deg[i]!)
    if (km < leaveOut_km) continue
    near.push({ i, km, far_km: Math.hypot(km, KM_PER_M * (places.altitude_m[i]! - spot.altitude_m)) })
  }
  if (near.length === 0)
    throw stop(
      'no-place-near',
      'No monthly climate is held for this part of the Earth.',
      'Give a weather file.',
    )
  const chosen = near.toSorted((a, b) => a.far_km - b.far_km).slice(0, ASKED)
  const raw = chosen.map(({ far_km }) => (far_km + NEAR_KM) ** -2)
  const all = raw.reduce((sum, each) => sum + each, 0)
  const neighbours = chosen.map(({ i, km }, k) => ({
    latitude_deg: places.latitude_deg[i]!,
    longitude_deg: places.longitude_deg[i]!,
    altitude_m: places.altitude_m[i]!,
    apart_km: km,
    higher_m: places.altitude_m[i]! - spot.altitude_m,
    weight: raw[k]! / all,
  }))
  const mixed = (values: Float32Array): number =>
    chosen.reduce((sum, { i }, k) => sum + neighbours[k]!.weight * values[i]!, 0)
  const lift_m = -neighbours.reduce((sum, { weight, higher_m }) => sum + weight * higher_m, 0)
  const byDistance = near.toSorted((a, b) => a.km - b.km)
  const yearOf = (name: PackedQuantity): number[] => places.months[name].map(mixed)
  return {
    neighbours,
    months: {
      airTemp_C: yearOf('airTemp_C').map(
        (air_C, month) => air_C - lapseRate_Km(places, spot, byDistance, month) * lift_m,
      ),
      dailyRange_K: yearOf('dailyRange_K'),
      humidity_pct: yearOf('humidity_pct'),
      sunshine_pct: yearOf('sunshine_pct'),
      wind_ms: yearOf('wind_ms'),
    },
    airGradient_Kkm: airGradients_Kkm(places, spot, byDistance),
  }
}

/** Height that is taken where nobody gives one, m: of the three nearest places, by distance alone. */
export function usualAltitude_m(places: ClimatePlaces, spot: Omit<Spot, 'altitude_m'>): number {
  const near: { km: number; altitude_m: number }[] = []
  for (let i = 0; i < places.count; i++) {
    if (Math.abs(places.latitude_deg[i]! - spot.latitude_deg) > BAND_DEG) continue
    const km = apart_km(spot, places.latitude_deg[i]!, places.longitude_deg[i]!)
    near.push({ km, altitude_m: places.altitude_m[i]! })
  }
  const nearest = near.toSorted((a, b) => a.km - b.km).slice(0, 3)
  const weights = nearest.map(({ km }) => 1 / (km + NEAR_KM))
  const all = weights.reduce((sum, each) => sum + each, 0)
  return nearest.reduce((sum, { altitude_m }, k) => sum + (weights[k]! * altitude_m) / all, 0)
}
