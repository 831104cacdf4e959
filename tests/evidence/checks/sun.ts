import { Body, Equator, Horizon, Observer, SearchRiseSet } from 'astronomy-engine'
import { getSpa } from 'nrel-spa'
import { incidenceCosine } from '#inside/model/outdoors/sun/plane.ts'
import { sunAt } from '#model/outdoors/sun'
import { once, type Check } from '../check.ts'

const sun = (rest: Omit<Check, 'theme'>): Check => ({ theme: 'Sun', ...rest })
const RADIANS = Math.PI / 180
const SPA_TIME = Date.UTC(2003, 9, 17, 19, 30, 30)
const spaSun = once(() => sunAt(SPA_TIME, 39.742476, -105.1786))
const PLACES = [
  [65, 25],
  [45, 8],
  [22, -100],
  [-5, 120],
  [-34, 151],
] as const

/** Refraction of the NREL algorithm for its own example: 820 mbar, 11 °C. */
function refracted_deg(altitude_deg: number): number {
  const k = (820 / 1010) * (283 / (273 + 11)) * 1.02
  return altitude_deg + k / (60 * Math.tan((altitude_deg + 10.3 / (altitude_deg + 5.11)) * RADIANS))
}

/** Every 37 h of 2026 at five latitudes, sun up: largest angle between the two directions, degrees. */
function worstAngle(
  theirs: (utc_ms: number, lat: number, lon: number) => { altitude: number; azimuth: number },
): number {
  let most = 0
  for (const [lat, lon] of PLACES) {
    for (let t = Date.UTC(2026, 0, 1); t < Date.UTC(2027, 0, 1); t += 37 * 3_600_000) {
      const ours = sunAt(t, lat, lon)
      const other = theirs(t, lat, lon)
      if (other.altitude < 0) continue
      most = Math.max(most, angleBetween(ours.altitude_deg, ours.azimuth_deg, other.altitude, other.azimuth))
    }
  }
  return most
}

function angleBetween(h1: number, a1: number, h2: number, a2: number): number {
  const half = Math.sin(((h1 - h2) / 2) * RADIANS) ** 2
  const turn = Math.cos(h1 * RADIANS) * Math.cos(h2 * RADIANS) * Math.sin(((a1 - a2) / 2) * RADIANS) ** 2
  return (2 * Math.asin(Math.sqrt(half + turn))) / RADIANS
}

function byAstronomyEngine(utc_ms: number, lat: number, lon: number) {
  const observer = new Observer(lat, lon, 0)
  const place = Equator(Body.Sun, new Date(utc_ms), observer, true, true)
  return Horizon(new Date(utc_ms), observer, place.ra, place.dec)
}

function byNrelSpa(utc_ms: number, lat: number, lon: number) {
  const { zenith, azimuth } = getSpa(new Date(utc_ms), lat, lon, 0, { atmos_refract: 0, pressure: 0 })
  return { altitude: 90 - zenith, azimuth }
}

/** Minutes between our crossing of −0.833° and the rise (+1) or set (−1) of astronomy-engine on a day. */
function crossing_min(lat: number, lon: number, day: Date, direction: 1 | -1): number {
  const theirs = SearchRiseSet(Body.Sun, new Observer(lat, lon, 0), direction, day, 1)!.date.getTime()
  let [low, high] = [theirs - 1.2e6, theirs + 1.2e6]
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2
    const up = sunAt(middle, lat, lon).altitude_deg > -0.833
    if (up === (direction === 1)) high = middle
    else low = middle
  }
  return (low - theirs) / 60000
}

/** UTC of an apparent solar hour at longitude 0, from the equation of time printed for the day (minutes). */
export const solarTime = (month: number, day: number, hour: number, equation_min: number) =>
  Date.UTC(2026, month - 1, day) + (hour - equation_min / 60) * 3_600_000

const feb13 = once(() => sunAt(solarTime(2, 13, 10.5, -14.2), 43, 0))
const feb13Early = once(() => sunAt(solarTime(2, 13, 9.5, -14.2), 43, 0))
const jul1 = once(() => sunAt(solarTime(7, 1, 18.5, -3.5), 43, 0))

const SIMPLE = 'the book takes declination by a one-term formula, good to half a degree'

export const sunChecks: readonly Check[] = [
  sun({
    quantity: 'zenith of the sun, NREL test case (refracted as there)',
    unit: '°',
    kind: 'published',
    source: 'spa',
    where: 'appendix A.5',
    got: () => 90 - refracted_deg(spaSun().altitude_deg),
    want: 50.11162,
    within: 0.02,
    because: '0.02°: a compact routine without the long series; a fifteenth of the sun’s breadth',
  }),
  sun({
    quantity: 'azimuth of the sun, NREL test case',
    unit: '°',
    kind: 'published',
    source: 'spa',
    where: 'appendix A.5',
    got: () => spaSun().azimuth_deg,
    want: 194.34024,
    within: 0.02,
    because: 'as the zenith',
  }),
  sun({
    quantity: 'incidence on a plane of 30° slope facing 170°, NREL test case',
    unit: '°',
    kind: 'published',
    source: 'spa',
    where: 'appendix A.5',
    got: () =>
      Math.acos(incidenceCosine(refracted_deg(spaSun().altitude_deg), spaSun().azimuth_deg, 30, 170)) /
      RADIANS,
    want: 25.187,
    within: 0.03,
    because: 'errors of zenith and azimuth together',
  }),
  sun({
    quantity: 'direction of the sun over a year at five latitudes: largest angle from nrel-spa',
    unit: '°',
    kind: 'independent calculation',
    source: 'nrelSpa',
    got: () => worstAngle(byNrelSpa),
    want: [0, 0.03],
    within: 0,
    because: '0.03° is seven seconds of time',
  }),
  sun({
    quantity: 'direction of the sun over a year at five latitudes: largest angle from astronomy-engine',
    unit: '°',
    kind: 'independent calculation',
    source: 'astronomyEngine',
    got: () => worstAngle(byAstronomyEngine),
    want: [0, 0.03],
    within: 0,
    because: '0.03° is seven seconds of time',
  }),
  ...(
    [
      [45, 8, '2026-06-21T00:00:00Z', 1],
      [45, 8, '2026-12-21T00:00:00Z', -1],
      [-34, 151, '2026-03-20T12:00:00Z', 1],
      [22, -100, '2026-09-23T12:00:00Z', -1],
    ] as const
  ).map(([lat, lon, day, direction]) =>
    sun({
      quantity: `${direction === 1 ? 'sunrise' : 'sunset'} at ${lat}° latitude after ${day.slice(0, 10)}, ours less astronomy-engine’s`,
      unit: 'min',
      kind: 'independent calculation' as const,
      source: 'astronomyEngine' as const,
      got: () => crossing_min(lat, lon, new Date(day), direction),
      want: 0,
      within: 0.5,
      because: 'half a minute: refraction at the horizon itself varies by more',
    }),
  ),
  sun({
    quantity: 'incidence at 43° N, 13 February 10:30 solar, plane 45° facing 15° west of south',
    unit: '°',
    kind: 'published',
    source: 'duffieBeckman',
    where: 'example 1.6.1',
    got: () => Math.acos(incidenceCosine(feb13().altitude_deg, feb13().azimuth_deg, 45, 195)) / RADIANS,
    want: 35,
    within: 0.7,
    because: `${SIMPLE}; printed to a degree`,
  }),
  ...(
    [
      ['zenith', '13 February 9:30', () => 90 - feb13Early().altitude_deg, 66.5],
      ['azimuth from south', '13 February 9:30', () => feb13Early().azimuth_deg - 180, -40],
      ['zenith', '1 July 18:30', () => 90 - jul1().altitude_deg, 79.6],
      ['azimuth from south', '1 July 18:30', () => jul1().azimuth_deg - 180, 112],
    ] as const
  ).map(([what, when, got, want]) =>
    sun({
      quantity: `${what} of the sun at 43° N, ${when} solar`,
      unit: '°',
      kind: 'published' as const,
      source: 'duffieBeckman' as const,
      where: 'example 1.6.2',
      fromMemory: true,
      got,
      want,
      within: 0.6,
      because: SIMPLE,
    }),
  ),
]
