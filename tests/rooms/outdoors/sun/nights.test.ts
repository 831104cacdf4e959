import { SearchRiseSet, Body, Observer } from 'astronomy-engine'
import { describe, expect, test } from 'vitest'
import { nightEdges, sunHours } from '#model/outdoors/sun'

const START_MS = Date.UTC(2023, 0, 1)
const HOUR_MS = 3_600_000

/* Second implementation: astronomy-engine 2.1.19, rise and set with refraction. Tolerance 5 min: straight lines
 * between hourly altitudes. */
describe.each([
  ['on the equator', 0, 0],
  ['48° N', 48, 11],
  ['35° S', -35, 0],
])('sunset and sunrise %s', (_name, latitude_deg, longitude_deg) => {
  test('within 5 minutes of astronomy-engine in every tenth night', () => {
    const { altitude_deg } = sunHours(START_MS, 8760, 0.5, latitude_deg, longitude_deg)
    const edges = nightEdges(altitude_deg, 0.5, 12, 364)
    const observer = new Observer(latitude_deg, longitude_deg, 0)
    for (let night = 0; night < 364; night += 10) {
      const noon_ms = START_MS + (12 + 24 * night) * HOUR_MS
      for (const [got_h, direction] of [
        [edges.sunset_h[night]!, -1],
        [edges.sunrise_h[night]!, 1],
      ] as const) {
        const found = SearchRiseSet(Body.Sun, observer, direction, new Date(noon_ms), 1)!
        expect(Math.abs(got_h - (found.date.getTime() - noon_ms) / HOUR_MS), `night ${night}`).toBeLessThan(
          5 / 60,
        )
      }
    }
  })
})

test('in polar night and day there is neither', () => {
  const { altitude_deg } = sunHours(START_MS, 8760, 0.5, 75, 0)
  const edges = nightEdges(altitude_deg, 0.5, 12, 364)
  expect(edges.sunset_h[0]).toBeNaN()
  expect(edges.sunrise_h[172]).toBeNaN()
})
