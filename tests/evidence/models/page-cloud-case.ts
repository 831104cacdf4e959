/** Invented sunlight put to the project and to the second model of `page-cloud.ts`. */
import { deriveCloud } from '#inside/model/outdoors/intake/derive/cloud.ts'
import { ineichenPerez, splitGlobal, sunHours } from '#model/outdoors/sun'
import { once } from '../check.ts'
import {
  clearBeam_Wm2,
  clearGlobal_Wm2,
  extraterrestrial_Wm2,
  pageCloud,
  splitBeam_Wm2,
} from './page-cloud.ts'
import { xorshift } from './random.ts'

const RECORDS = [
  { latitude_deg: 10, days: 365, clarity: 1, z_m: 0 },
  { latitude_deg: 40, days: 365, clarity: 0.93, z_m: 700 },
  { latitude_deg: -30, days: 365, clarity: 1.1, z_m: 1500 },
  { latitude_deg: 60, days: 365, clarity: 1, z_m: 200 },
  { latitude_deg: 75, days: 365, clarity: 1, z_m: 50 },
  { latitude_deg: -45, days: 9, clarity: 0.97, z_m: 300 },
] as const

const apart = (a: readonly number[], b: ArrayLike<number>, counts: (i: number) => boolean = () => true) =>
  Math.max(...a.map((x, i) => (counts(i) ? Math.abs(x - b[i]!) : 0)))

/** A year from March, of cloud that wanders, under a sky that is clearer or hazier than the formula's. */
function compare({ latitude_deg, days, clarity, z_m }: (typeof RECORDS)[number]) {
  const draw = xorshift(1 + Math.round(1000 * (90 + latitude_deg + clarity)))
  const sun = sunHours(Date.UTC(2025, 2, 1), 24 * days, 0.5, latitude_deg, 20)
  const heights = [...sun.altitude_deg]
  const outside = heights.map((_, i) => extraterrestrial_Wm2(1 + ((59 + Math.floor(i / 24)) % 365)))
  const clear = heights.map((h, i) => clearGlobal_Wm2(h, outside[i]!, z_m))
  let cloud = 0.5
  const global = clear.map((under) => {
    cloud = Math.min(1, Math.max(0, cloud + 0.3 * (draw() - 0.5)))
    return clarity * (1 - 0.9 * cloud ** 2) * under
  })
  const hours = heights.map((altitude_deg, i) => ({
    altitude_deg,
    outside: outside[i]!,
    global_Wm2: global[i]!,
  }))
  const page = pageCloud(hours, z_m)
  const got = deriveCloud(Float64Array.from(global), sun, z_m, false)!
  const sky = heights.map((h, i) => ineichenPerez(h, sun.extraterrestrial_Wm2[i]!, z_m))
  const beam = (of: (h: number, outside_Wm2: number, i: number) => number) =>
    heights.map((h, i) => of(h, outside[i]!, i))
  return {
    outside_Wm2: apart(outside, sun.extraterrestrial_Wm2),
    clear_Wm2: apart(
      clear,
      sky.map((one) => one.global_Wm2),
    ),
    clearBeam_Wm2: apart(
      beam((h, o) => clearBeam_Wm2(h, o, z_m)),
      sky.map((one) => one.direct_Wm2),
    ),
    split_Wm2: apart(
      beam((h, o, i) => splitBeam_Wm2(h, o, global[i]!)),
      heights.map((h, i) => splitGlobal(global[i]!, h, sun.extraterrestrial_Wm2[i]!).directNormal_Wm2),
    ),
    day: apart(page, got, (i) => heights[i]! > 10),
    night: apart(page, got, (i) => heights[i]! <= 10),
  }
}

/** Largest differences between project and page over all records. */
export const pageSunlight = once(() => {
  const all = RECORDS.map(compare)
  const worst = (key: keyof (typeof all)[number]) => Math.max(...all.map((one) => one[key]))
  return {
    outside_Wm2: worst('outside_Wm2'),
    clear_Wm2: worst('clear_Wm2'),
    clearBeam_Wm2: worst('clearBeam_Wm2'),
    split_Wm2: worst('split_Wm2'),
    cloudByDay: worst('day'),
    cloudByNight: worst('night'),
  }
})
