import { airMass, haurwitzGlobal_Wm2 } from '#inside/model/outdoors/sun/clear-sky.ts'
import { ineichenPerez, planeIrradiance, sunAt, sunHours } from '#model/outdoors/sun'
import { extraterrestrial_Wm2 } from '#inside/model/outdoors/sun/position.ts'
import { erbsDiffuse_frac } from '#inside/model/outdoors/sun/split.ts'
import type { Check } from '../check.ts'
import { solarTime } from './sun.ts'

const sun = (rest: Omit<Check, 'theme'>): Check => ({ theme: 'Sun', ...rest })
const RADIANS = Math.PI / 180

/** One hour of irradiance on a plane, W/m²: parts given, sun given. */
function onPlane(given: {
  dni: number
  dhi: number
  zenith: number
  azimuth: number
  tilt: number
  facing: number
  albedo: number
  extra: number
}) {
  const altitude = 90 - given.zenith
  const hours = {
    hours: 1,
    altitude_deg: Float64Array.of(altitude),
    azimuth_deg: Float64Array.of(given.azimuth),
    extraterrestrial_Wm2: Float64Array.of(given.extra),
  }
  const columns = {
    directNormal_Wm2: Float64Array.of(given.dni),
    diffuseHorizontal_Wm2: Float64Array.of(given.dhi),
    globalHorizontal_Wm2: Float64Array.of(given.dni * Math.sin(altitude * RADIANS) + given.dhi),
  }
  return planeIrradiance(hours, columns, given.tilt, given.facing, given.albedo).total_Wm2[0]!
}

/** Example 2.15.1: clearness of 1.04 MJ/m² at 40° N, 20 February 9–10 h solar, with our own sun. */
function clearness2151(): number {
  const at = sunAt(solarTime(2, 20, 9.5, -13.9), 40, 0)
  const extra = extraterrestrial_Wm2(Date.UTC(2026, 1, 20, 12))
  return 1.04e6 / 3600 / (extra * Math.sin(at.altitude_deg * RADIANS))
}

/** Example 2.16.1: the book's own sun (declination −11.6°), beam and diffuse, on a plane 60° to the south, MJ/m². */
function plane2161(): number {
  const perHour = 1e6 / 3600
  const dhi = 0.797 * perHour
  const given = { dni: (0.243 * perHour) / Math.cos(62.22 * RADIANS), dhi, zenith: 62.22, azimuth: 137.6 }
  return (
    onPlane({
      ...given,
      tilt: 60,
      facing: 180,
      albedo: 0.6,
      extra: (2.34 * perHour) / Math.cos(62.22 * RADIANS),
    }) / perHour
  )
}

/** Extraterrestrial energy on the horizontal over 15 April at 43° N, MJ/m². */
function dailyExtraterrestrial(): number {
  const hours = sunHours(Date.UTC(2026, 3, 15), 240, 0.05, 43, 0)
  let sum = 0
  for (let i = 0; i < 240; i++) {
    const at = sunAt(Date.UTC(2026, 3, 15) + (i + 0.5) * 360_000, 43, 0)
    sum += Math.max(0, Math.sin(at.altitude_deg * RADIANS)) * hours.extraterrestrial_Wm2[0]! * 360
  }
  return sum / 1e6
}

export const sunlightChecks: readonly Check[] = [
  sun({
    quantity: 'extraterrestrial energy on the horizontal, 43° N, 15 April',
    unit: 'MJ/m²',
    kind: 'published',
    source: 'duffieBeckman',
    where: 'example 1.10.1',
    fromMemory: true,
    got: dailyExtraterrestrial,
    want: 33.8,
    within: 0.35,
    because: '1 %: the book’s solar constant is 1367 against 1361 W/m²',
  }),
  sun({
    quantity: 'hourly clearness index, 40° N, 20 February 9–10 h, 1.04 MJ/m²',
    unit: '–',
    kind: 'published',
    source: 'duffieBeckman',
    where: 'example 2.15.1',
    got: clearness2151,
    want: 0.445,
    within: 0.012,
    because: 'solar constant and declination as above, the middle of the hour for its integral',
  }),
  sun({
    quantity: 'the same hour on a plane 60° to the south, albedo 0.6, from the book’s sun, beam and diffuse',
    unit: 'MJ/m²',
    kind: 'published',
    source: 'duffieBeckman',
    where: 'example 2.16.1, HDKR',
    got: plane2161,
    want: 1.28,
    within: 0.05,
    because: '4 %: the book adds horizon brightening, which we leave out; its isotropic answer is 1.17',
  }),
  ...(
    [
      [0.1, 0.991],
      [0.5, 0.65915],
      [0.7, 0.24398],
      [0.9, 0.165],
    ] as const
  ).map(([kt, want]) =>
    sun({
      quantity: `diffuse share at clearness ${kt}`,
      unit: '–',
      kind: 'independent calculation' as const,
      source: 'erbs' as const,
      where: 'hourly correlation by hand',
      got: () => erbsDiffuse_frac(kt),
      want,
      within: 1e-4,
      because: 'the printed polynomial',
    }),
  ),
  ...(
    [
      ['A', 'tilt 30° south, sun south', 0, 800, 100, 40, 180, 30, 180, 0.2, 787.846 + 114.722 + 9.55],
      ['B', 'upright south, sun 250°', 0, 800, 100, 60, 250, 90, 180, 0.2, 236.959 + 55.614 + 50],
      ['C', 'overcast, tilt 30°', 0, 50, 300, 40, 180, 30, 180, 0, 50 * Math.cos(10 * RADIANS) + 283.92],
    ] as const
  ).map(([name, what, , dni, dhi, zenith, azimuth, tilt, facing, albedo, want]) =>
    sun({
      quantity: `irradiance on a plane, case ${name}: ${what}`,
      unit: 'W/m²',
      kind: 'independent calculation' as const,
      source: 'hayDavies' as const,
      where: 'worked out apart',
      got: () => onPlane({ dni, dhi, zenith, azimuth, tilt, facing, albedo, extra: 1316.69 }),
      want: Number(want.toFixed(2)),
      within: 0.5,
      because: 'the same published model worked out by another program',
    }),
  ),
  ...(
    [
      [1, 1408.7],
      [80, 1371.75],
      [172, 1316.69],
      [266, 1351.54],
    ] as const
  ).map(([n, want]) =>
    sun({
      quantity: `extraterrestrial irradiance on day ${n}`,
      unit: 'W/m²',
      kind: 'independent calculation' as const,
      source: 'spencer' as const,
      where: 'series by hand, 1361 W/m²',
      got: () => extraterrestrial_Wm2(Date.UTC(2026, 0, n, 12)),
      want,
      within: 0.6,
      because: 'half a day’s change',
    }),
  ),
  ...(
    [
      [60, 1.9943],
      [85, 10.3058],
    ] as const
  ).map(([zenith, want]) =>
    sun({
      quantity: `relative air mass at zenith ${zenith}°`,
      unit: '–',
      kind: 'independent calculation' as const,
      source: 'kastenYoung' as const,
      where: 'formula by hand',
      fromMemory: true,
      got: () => airMass(90 - zenith),
      want,
      within: 0.002,
      because: 'rounding of the coefficients',
    }),
  ),
  sun({
    quantity: 'clear-sky global at zenith 60°, by the sun’s height alone',
    unit: 'W/m²',
    kind: 'independent calculation',
    source: 'haurwitz',
    where: 'formula by hand',
    got: () => haurwitzGlobal_Wm2(30),
    want: 487.894,
    within: 0.01,
    because: 'the printed formula',
  }),
  sun({
    quantity: 'clear-sky global at zenith 30°, sea level, turbidity 3, day 172',
    unit: 'W/m²',
    kind: 'independent calculation',
    source: 'ineichen',
    where: 'worked out apart',
    fromMemory: true,
    got: () => ineichenPerez(60, 1316.69, 0).global_Wm2,
    want: 876.94,
    within: 0.5,
    because: 'the same published model worked out by another program',
  }),
]
