import { describe, expect, test } from 'vitest'
import { findPlace, nearbyClimate } from '#model/outdoors/place'
import { monthTargets } from '#inside/model/outdoors/place/months.ts'
import { daySpreads } from '#inside/model/outdoors/place/spreads.ts'
import { PLACES, TOWNS } from './held-data.ts'

/** Root mean square error of the warmest months, K, of every so many-th place worked out from others at least 15 km away. */
function leftOut_K(every: number): number {
  let [sum, count] = [0, 0]
  for (let i = 0; i < PLACES.count; i += every) {
    const spot = {
      latitude_deg: PLACES.latitude_deg[i]!,
      longitude_deg: PLACES.longitude_deg[i]!,
      altitude_m: PLACES.altitude_m[i]!,
    }
    const { months } = nearbyClimate(PLACES, spot, 15)
    for (const month of [0, 6]) {
      sum += (months.airTemp_C[month]! - PLACES.months.airTemp_C[month]![i]!) ** 2
      count++
    }
  }
  return Math.sqrt(sum / count)
}

test('places left out come back from their neighbours within 1.2 K (root mean square)', () => {
  const error_K = leftOut_K(200)
  console.log(`places left out, 15 km and more: ${error_K.toFixed(2)} K root mean square`)
  expect(error_K).toBeLessThan(1.2)
})

describe('day-to-day spread where no station of the regression is', () => {
  const spreads = (latitude_deg: number, longitude_deg: number) => {
    const place = findPlace(PLACES, TOWNS, {
      latitude_deg,
      longitude_deg,
      altitude_m: null,
      name: null,
      warming_K: null,
    })
    return daySpreads(monthTargets(place.months), place.site, place.nearby.airGradient_Kkm)
  }
  test('São Paulo’s spring has 2.5–3 K by its station year, where the regression alone gave 1.7 K (place method)', () => {
    const { air_K, airDoubt_K } = spreads(-23.55, -46.63)
    const spring_K = (0.95 * (air_K[8]! + air_K[9]! + air_K[10]!)) / 3
    expect(spring_K).toBeGreaterThan(2)
    expect(spring_K).toBeLessThan(3)
    expect(airDoubt_K[9]).toBeGreaterThan(0.3)
  })
  test('on islands too few places show a gradient: the regression alone', () => {
    expect(spreads(21.3, -157.9).airDoubt_K.every((doubt) => doubt === 0)).toBe(true)
    expect(spreads(-17.5, -149.6).airDoubt_K.every((doubt) => doubt === 0)).toBe(true)
  })
})
