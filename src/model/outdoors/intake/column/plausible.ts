import type { Profile } from './profile.ts'
import { QUANTITIES, type Unit, type Quantity } from './quantity.ts'
import { conversion } from './unit.ts'

/** Where the middle and the ends of an hourly column lie, in our units: [least min, most max, median from, median to]. */
const RANGES: Partial<Record<Quantity, readonly [number, number, number, number]>> = {
  airTemp: [-60, 57, -35, 42],
  dewPoint: [-75, 36, -45, 30],
  relativeHumidity: [0, 110, 8, 100],
  wetBulb: [-60, 40, -36, 34],
  vapourPressure: [0, 5500, 20, 4300],
  vapourDeficit: [-50, 12_000, 0, 6000],
  specificHumidity: [0, 0.04, 0.0001, 0.03],
  mixingRatio: [0, 0.04, 0.0001, 0.03],
  windEast: [-60, 60, -15, 15],
  windNorth: [-60, 60, -15, 15],
  pressure: [47_000, 109_500, 50_000, 107_000],
  windSpeed: [0, 60, 0.05, 20],
  windDirection: [0, 360, 20, 340],
  globalHorizontal: [-20, 1500, -20, 800],
  directNormal: [-20, 1400, -20, 1000],
  diffuseHorizontal: [-20, 900, -20, 500],
  directHorizontal: [-20, 1400, -20, 1000],
  skyLongwave: [80, 560, 120, 460],
  opaqueCloud: [0, 1, 0, 1],
  totalCloud: [0, 1, 0, 1],
  latitude: [-90, 90, -90, 90],
  longitude: [-180, 180, -180, 180],
}

/** True when a column's values, read in a unit, lie where hourly weather lies. */
export function isPlausible(quantity: Quantity, unit: Unit, profile: Profile): boolean {
  const range = RANGES[quantity]
  if (range === undefined) return true
  const { factor, offset } = conversion(quantity, unit)
  const inside = (value: number): number => value * factor + offset
  const slack = (range[1] - range[0]) * 0.005
  return (
    inside(profile.low) >= range[0] - slack &&
    inside(profile.high) <= range[1] + slack &&
    inside(profile.median) >= range[2] - slack &&
    inside(profile.median) <= range[3] + slack &&
    (!FULL_SCALE.has(quantity) || inside(profile.high) > FULL_SCALE.get(quantity)!)
  )
}

/** A year or even a day of these reaches this much, in our units: what separates W/m² from MJ/m², % from a fraction. */
const FULL_SCALE: ReadonlyMap<Quantity, number> = new Map([
  ['relativeHumidity', 12],
  ['vapourPressure', 80],
  ['vapourDeficit', 60],
  ['specificHumidity', 0.0005],
  ['mixingRatio', 0.0005],
  ['globalHorizontal', 60],
  ['directNormal', 30],
  ['diffuseHorizontal', 30],
  ['directHorizontal', 30],
  ['windDirection', 60],
  ['windSpeed', 0.4],
])

/** The first unit of a quantity that its values allow, the usual one first; null when none does. */
export function plausibleUnit(quantity: Quantity, profile: Profile): Unit | null {
  if (quantity === 'opaqueCloud' || quantity === 'totalCloud') return cloudUnit(profile)
  return QUANTITIES[quantity].units.find((unit) => isPlausible(quantity, unit, profile)) ?? null
}

function cloudUnit({ min, max, whole_frac }: Profile): Unit | null {
  if (min < 0 || max > 100) return null
  if (max <= 1) return 'frac'
  if (max > 10) return '%'
  return max <= 8 && whole_frac > 0.99 ? 'oktas' : 'tenths'
}
