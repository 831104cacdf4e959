/** What the map varies beside the area. */
export const MAP_KINDS = ['store', 'flow'] as const
export type MapKind = (typeof MAP_KINDS)[number]

/** The two axes of the map, rising: area in equal steps, store or flow in equal ratios. */
export interface MapAxes {
  readonly kind: MapKind
  readonly area_m2: readonly number[]
  /** Store volume, m³, or flow per panel area, kg/s m². */
  readonly other: readonly number[]
}

/** Areas run in this many steps to about twice the one in the middle. */
const AREA_STEPS = 17
/** Store and flow run from a quarter to four times the one in the middle, so many steps to a doubling. */
const DOUBLINGS = 2
const STEPS_A_DOUBLING = 2
const NICE_STEPS = [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10]

/**
 * Axes around a design.
 * @param area_m2  area in the middle, > 0
 * @param other    store volume (m³) or flow (kg/s m²) in the middle, > 0
 * @param room     largest area there is room for, and the least and most that store or flow may be
 * @throws RangeError unless all are above 0
 */
export function mapAxes(
  kind: MapKind,
  area_m2: number,
  other: number,
  { most_m2, least, most }: { most_m2: number; least: number; most: number },
): MapAxes {
  for (const [name, value] of [
    ['area', area_m2],
    [kind, other],
    ['largest area', most_m2],
  ] as const)
    if (!(value > 0)) throw new RangeError(`map axes: ${name} ${value} must be above 0`)
  const step_m2 = niceStep(Math.min(2 * area_m2, most_m2) / AREA_STEPS)
  const areas = Array.from({ length: AREA_STEPS }, (_, i) => tidy(step_m2 * (i + 1)))
  const within = areas.filter((area) => area < most_m2)
  const count = 2 * DOUBLINGS * STEPS_A_DOUBLING + 1
  const others = Array.from({ length: count }, (_, i) =>
    tidy(other * 2 ** (i / STEPS_A_DOUBLING - DOUBLINGS)),
  )
  const allowed = others.filter((value) => value >= least && value <= most)
  return { kind, area_m2: within.length === AREA_STEPS ? areas : [...within, most_m2], other: allowed }
}

/** The smallest pleasant number not below `least`. */
function niceStep(least: number): number {
  const decade = 10 ** Math.floor(Math.log10(least))
  return decade * NICE_STEPS.find((step) => step * decade >= least * (1 - 1e-9))!
}

const tidy = (value: number): number => Number(value.toPrecision(3))

/** Where a value is on an axis, in steps (between two marks: in proportion, on ratios if `ratios`); NaN outside. */
export function placeOn(axis: readonly number[], value: number, ratios: boolean): number {
  const scale = ratios ? Math.log : (x: number): number => x
  for (let i = 0; i + 1 < axis.length; i++) {
    const [low, high] = [axis[i]!, axis[i + 1]!]
    if (value >= low && value <= high) return i + (scale(value) - scale(low)) / (scale(high) - scale(low))
  }
  return NaN
}

/** The value at a place on an axis: the inverse of `placeOn`, held to its ends. */
export function valueOn(axis: readonly number[], place: number, ratios: boolean): number {
  const held = Math.min(Math.max(place, 0), axis.length - 1)
  const i = Math.min(Math.floor(held), axis.length - 2)
  const [low, high] = [axis[i]!, axis[i + 1]!]
  const share = held - i
  return ratios ? low * (high / low) ** share : low + (high - low) * share
}
