import type { Plant } from './plant.ts'
import { quantitiesOf } from './quantities.ts'

/** A tank is full to this share of its height (common practice, no source). */
const FULL_frac = 0.93
/** The outlet lies so far under the lowest water, and the return ends so far above the bottom, m (common practice, no source). */
const UNDER_WATER_m = 0.1
const OFF_BOTTOM_m = 0.1

/** Heights above a tank's bottom, m. */
export interface TankLevels {
  /** Water line with the panels empty: what the tank is filled to. */
  readonly water_m: number
  /** Water line while the panels are full. */
  readonly running_m: number
  /** Outlet to the pump of the panel loop. */
  readonly outlet_m: number
  /** Lower end of the return pipe in the tank. */
  readonly end_m: number
}

/** Levels of a tank that gives its water to the panels while they run; the drawings and the lists share them. */
export function tankLevels(plant: Plant, tank: NonNullable<Plant['tank']>): TankLevels {
  const base_m2 = 0.25 * Math.PI * tank.diameter_m ** 2
  const water_m = FULL_frac * tank.height_m
  const running_m = Math.max(0, water_m - quantitiesOf(plant).loopVolume_m3 / base_m2)
  const end_m = Math.min(OFF_BOTTOM_m, 0.2 * tank.height_m)
  return { water_m, running_m, outlet_m: Math.max(end_m, running_m - UNDER_WATER_m), end_m }
}
