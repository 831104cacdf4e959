/** Random hours put to the project and to the second model of `page-hour.ts`. */
import { once } from '../check.ts'
import { soiled, waterKept_kgm2, weathered } from './page-ageing.ts'
import { projectAnswers, STEP_S, type Answers } from './page-ask.ts'
import { drawHours, type DrawnHour } from './page-draw.ts'
import { pageLosses } from './page-hour.ts'
import { pageSky } from './page-sky.ts'
import { sunOn_Wm2 } from './page-tilt.ts'

export const HOURS = 500

function pageAnswers(hour: DrawnHour): Answers {
  const { weather, plane, sheet, years, plate_C, water_kgm2 } = hour
  const sky = pageSky(weather)
  const sun_Wm2 = sunOn_Wm2(hour.sun, plane)
  const panel = {
    ...hour,
    ...plane,
    coating: soiled(hour.fresh, hour.soiling_1y, years),
    film: sheet && weathered(sheet, years),
  }
  const lost = pageLosses(weather, sun_Wm2, panel, plate_C, water_kgm2)
  return {
    sky_Wm2: sky.total,
    window_Wm2: sky.window,
    sun_Wm2,
    full_Wm2: lost.heat,
    reduced_Wm2: pageLosses(weather, sun_Wm2, panel, plate_C, water_kgm2, true).heat,
    vapour_Wm2: 2.501e6 * lost.vapour,
    water_kgm2: waterKept_kgm2(water_kgm2, -lost.vapour * STEP_S, plate_C, plane.tilt_deg),
  }
}

const KEYS = [
  'sky_Wm2',
  'window_Wm2',
  'sun_Wm2',
  'full_Wm2',
  'reduced_Wm2',
  'vapour_Wm2',
  'water_kgm2',
] as const

type Apart = Record<(typeof KEYS)[number], number>

/** Each hour with how far page and project are apart in it. */
const compareHours = (hours: readonly DrawnHour[]) =>
  hours.map((hour) => {
    const page = pageAnswers(hour)
    const got = projectAnswers(hour)
    const apart = Object.fromEntries(KEYS.map((key) => [key, Math.abs(got[key] - page[key])])) as Apart
    return { hour, page, got, apart }
  })

export const pageHours = once(() => compareHours(drawHours(HOURS)))

const perKey = (of: (apart: readonly number[]) => number) =>
  Object.fromEntries(KEYS.map((key) => [key, of(pageHours().map(({ apart }) => apart[key]))])) as Apart

/** Largest differences between project and page over the hours. */
export const pageDifferences = once(() => perKey((apart) => Math.max(...apart)))

/** Typical ones: of the hours, half are nearer. */
export const typicalDifferences = once(() => perKey((apart) => [...apart].sort((a, b) => a - b)[HOURS / 2]!))
