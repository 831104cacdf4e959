import type { Plant } from './plant.ts'
import { CLEAR_frac, NIGHT_deg, RAN_frac } from './running-night.ts'
import { spanOf, type Span } from './span.ts'

/** What a builder reads on a clear, running night at one outdoor temperature. */
export interface ClearNight {
  /** Middle of the band of outdoor temperature, °C. */
  readonly outdoor_C: number
  readonly hours: number
  /** How much colder the return is than the supply, K. */
  readonly drop_K: Span
  /** Heat out of the fluid, W. */
  readonly heat_W: Span
  /** Store in the same hours, the middle value, °C. */
  readonly store_C: number
}

/** Bands of outdoor temperature, from middle to middle, K. */
const BAND_K = 5
/** Fewer hours than this are no basis for a reading. */
const FEWEST = 8

/** The simulated year's clear running nights, by outdoor temperature; empty where there are too few. */
export function clearNights({ answer }: Plant): ClearNight[] {
  const { year, loop, weather, sun } = answer
  const bands = new Map<number, number[]>()
  for (let h = 0; h < year.hours; h++) {
    if (year.pumpRun_frac[h]! < RAN_frac) continue
    if (!(weather.cloud_frac[h]! < CLEAR_frac) || !(sun.altitude_deg[h]! < NIGHT_deg)) continue
    const band = Math.round(weather.airTemp_C[h]! / BAND_K)
    bands.set(band, [...(bands.get(band) ?? []), h])
  }
  return [...bands]
    .filter(([, hours]) => hours.length >= FEWEST)
    .toSorted(([a], [b]) => a - b)
    .map(([band, hours]) => ({
      outdoor_C: band * BAND_K,
      hours: hours.length,
      drop_K: spanOf(hours.map((h) => year.panelHeat_W[h]! / loop.capacityRate_WK)),
      heat_W: spanOf(hours.map((h) => year.panelHeat_W[h]!)),
      store_C: spanOf(hours.map((h) => year.store_C[h]!)).middle,
    }))
}
