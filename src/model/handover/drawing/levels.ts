import type { Spot } from './shapes.ts'

/** Levels and places in the section, m: heights above the floor, places from the left outer wall. */
export interface Levels {
  readonly onRoof: boolean
  /** Low and high edge of the panels above the ground, m. */
  readonly low_m: number
  readonly high_m: number
  /** Left end of the panels and of the tank, from the outer wall, m. */
  readonly panel_m: number
  readonly tank_m: number
  readonly left_m: number
  readonly right_m: number
}

/** Where on paper a place of the section is: to the right of the left wall and above the floor, m. */
export type At = (x_m: number, z_m: number) => Spot
