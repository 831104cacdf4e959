import { HOUR_S } from '#model/basis/hours'
import type { PanelHours } from '#model/panels/plate'
import { PlateAlone } from './plate-alone.ts'

/**
 * A plate this near to the one that never ran, and as wet to this much, is taken for it, K and kg/m²; the heat of that difference
 * is entered as given off. Room and store move by less than 1e-10 K (measured; `tests/rooms/building/year/resting-course.test.ts`).
 */
export const SAME_K = 1e-9
export const SAME_KGM2 = 1e-13

/** What is kept of a step: temperature and water at its beginning; its mean, the tangent’s slope, and heat given off. */
export const STRIDE = 5
export const WATER = 1
export const MEAN = 2
export const SLOPE = 3
export const SHED = 4
/** Steps that there is room for at first. */
const FIRST_STEPS = 4096
/** Courses kept of one panel: the year’s, and those of a few seasons. */
const MOST_COURSES = 6

/**
 * One square metre of a plate through which no fluid ever goes, from a given hour on, step by step. It hangs on weather,
 * coating and cover alone, not on area, flow, store or room: worked out once, as far as anyone has asked, for all designs.
 */
export class RestingCourse {
  readonly fieldFactor_frac: number
  readonly start: number
  readonly start_C: number
  private readonly plate: PlateAlone
  private readonly hours: number
  private readonly stepsPerHour: number
  private steps = 0
  private rows = new Float64Array(STRIDE * FIRST_STEPS)

  constructor(panel: PanelHours, fieldFactor_frac: number, step_s: number, start: number, start_C: number) {
    this.fieldFactor_frac = fieldFactor_frac
    this.start = start
    this.start_C = start_C
    this.hours = panel.hours
    this.stepsPerHour = Math.round(HOUR_S / step_s)
    this.plate = new PlateAlone(panel, panel.heatCapacity_Jm2K, fieldFactor_frac, step_s)
    this.plate.temp_C = this.rows[0] = start_C
  }

  /** What is known so far, `STRIDE` numbers a step: read by the flat year. */
  get known(): Float64Array {
    return this.rows
  }

  /** How many of them: all of the steps gone through, temperature and water of the next. */
  get filled(): number {
    return STRIDE * this.steps + WATER + 1
  }

  get step_s(): number {
    return this.plate.step_s
  }

  /** Goes on until step `n` (0, 1, …) is known to its end. */
  reach(n: number): void {
    while (this.steps <= n) this.next()
  }

  private next(): void {
    const { plate, steps, hours } = this
    const at = STRIDE * steps
    if (at + STRIDE >= this.rows.length) {
      const { rows } = this
      this.rows = new Float64Array(2 * rows.length)
      this.rows.set(rows)
    }
    const { rows } = this
    const hour = (this.start + Math.floor(steps / this.stepsPerHour)) % hours
    plate.prepareAlone(hour)
    rows[at + MEAN] = plate.relaxation.mean_C(0)
    rows[at + SLOPE] = plate.point.slope_Wm2K
    plate.finishAlone(hour)
    rows[at + SHED] = plate.shed_J
    rows[at + STRIDE] = plate.temp_C
    rows[at + STRIDE + WATER] = plate.water_kgm2
    this.steps++
  }

  /** At the beginning of step `n`, °C. */
  temp_C(n: number): number {
    return this.rows[STRIDE * n]!
  }
  water_kgm2(n: number): number {
    return this.rows[STRIDE * n + WATER]!
  }
  mean_C(n: number): number {
    return this.rows[STRIDE * n + MEAN]!
  }
  slope_Wm2K(n: number): number {
    return this.rows[STRIDE * n + SLOPE]!
  }
  /** Given off in step `n`, J/m². */
  shed_Jm2(n: number): number {
    return this.rows[STRIDE * n + SHED]!
  }

  /** True for a plate that is as this one at the beginning of step `n`. */
  isAt(n: number, temp_C: number, water_kgm2: number): boolean {
    this.reach(n)
    const warmer_K = temp_C - this.temp_C(n)
    const wetter_kgm2 = water_kgm2 - this.water_kgm2(n)
    return warmer_K < SAME_K && warmer_K > -SAME_K && wetter_kgm2 < SAME_KGM2 && wetter_kgm2 > -SAME_KGM2
  }
}

const known = new WeakMap<PanelHours, RestingCourse[]>()

/** The course of a panel at rest from `start_C` (dry) at the beginning of hour `start`; the same one for the same question. */
export function restingCourse(
  panel: PanelHours,
  fieldFactor_frac: number,
  step_s: number,
  start: number,
  start_C: number,
): RestingCourse {
  const courses = known.get(panel) ?? []
  known.set(panel, courses)
  const found = courses.find(
    (course) =>
      course.start === start &&
      course.start_C === start_C &&
      course.step_s === step_s &&
      course.fieldFactor_frac === fieldFactor_frac,
  )
  if (found !== undefined) return found
  if (courses.length === MOST_COURSES) courses.shift()
  const made = new RestingCourse(panel, fieldFactor_frac, step_s, start, start_C)
  courses.push(made)
  return made
}
