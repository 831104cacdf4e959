import type { Figure, Text } from '#model/basis/words'

/** Walls of the room as seen on its plan, the front at the foot of the page. */
export type Side = 'front' | 'right' | 'back' | 'left'

export interface WayWindow {
  readonly side: Side
  readonly faces_deg: number
  readonly area_m2: number
  readonly width_m: number
  readonly height_m: number
}

/** What of a way without panels is drawn; null where it was not chosen. Sizes in m, areas in m², angles in degrees. */
export interface WayFacts {
  /** Along the front. */
  readonly length_m: number
  readonly width_m: number
  readonly height_m: number
  /** The way the front faces. */
  readonly azimuth_deg: number
  readonly windows: readonly WayWindow[]
  readonly paint: {
    readonly coats: number
    readonly wetCoat: Text
    readonly wetAll: Text
    readonly dry: Text
    readonly litres: Text
    readonly primer: Text
  } | null
  readonly roofInsulation: Insulation | null
  readonly wallInsulation: Insulation | null
  /** An outside shade is wider and higher than its window by so much on each side. */
  readonly shade: { readonly past_m: number; readonly sunLeft: Text } | null
  readonly glazing: boolean
  /** Two openings of this size, one low, one high in the wall opposite. */
  readonly opening: { readonly each_m2: number; readonly height_m: number } | null
  /** Fans; what their vent leaves free, its hole behind louvre and mesh, and the room air that stops them. */
  readonly fan: {
    readonly fans: number
    readonly each: Figure
    readonly inlet_m2: number
    readonly hole_m2: number
    readonly stopsAt: Text
  } | null
  /** Blades so far above the floor; wall fans where the room is too low for them. */
  readonly ceilingFan: {
    readonly fans: number
    readonly across_m: number
    readonly blades_m: number
    readonly ceiling: boolean
    readonly least_m: number
  } | null
  readonly jars: { readonly jars: number; readonly mass: Text } | null
  readonly sealed: boolean
  readonly cooler: {
    readonly direct: boolean
    readonly flow: Text
    readonly duct_m: number
    readonly leaving_m2: number
    readonly water: Text
    readonly bled: Text
    readonly mostHumid: Text
    readonly feed: Text
    readonly drain: Text
  } | null
  readonly conditioner: {
    readonly cooling: Text
    readonly electric: Text
    readonly drain: Text
  } | null
}

interface Insulation {
  readonly thickness_m: number
  readonly what: Text
}

/** Lower edge of openings near the floor, above splashing rain; upper edge of those near the ceiling, under it, m (common practice, no source). */
const OFF_FLOOR_m = 0.3
const UNDER_CEILING_m = 0.1
/** Sill of a window of which only the area is known, m (common practice, no source). */
const SILL_m = 0.9
/** Opening in the wall for a fan of some 500 m³/h, m (common practice, no source). */
export const FAN_m = 0.3
/** Height of vents and flaps where their area allows it, m. */
const FLAP_m = 0.4
/** A small indoor unit, m (common practice, no source). */
export const INDOOR_m = { width: 0.8, height: 0.3, deep: 0.22 } as const
/** Of more fans so many are drawn in the wall. */
export const MOST_FANS = 4

/** One thing in or on a wall: its width along the wall and its edges above the floor, m. */
export interface Piece {
  readonly mark: string
  readonly side: Side
  readonly width_m: number
  readonly low_m: number
  readonly high_m: number
  /** False for windows that are there already. */
  readonly made: boolean
}

/** Low or high in its wall, of that area. */
function flap(mark: string, side: Side, area_m2: number, high: boolean, room_m: number): Piece {
  const height_m = Math.min(FLAP_m, Math.sqrt(area_m2))
  return piece(mark, side, area_m2 / height_m, height_m, high, room_m)
}

function piece(
  mark: string,
  side: Side,
  width_m: number,
  height_m: number,
  high: boolean,
  room_m: number,
): Piece {
  const fits_m = Math.min(height_m, room_m - UNDER_CEILING_m)
  const low_m = high
    ? room_m - UNDER_CEILING_m - fits_m
    : Math.min(OFF_FLOOR_m, room_m - UNDER_CEILING_m - fits_m)
  return { mark, side, width_m, low_m, high_m: low_m + fits_m, made: true }
}

/**
 * All that is in or on the walls, each wall's from its left end on the plan: air comes in low at the left of the front and
 * leaves high at the right of the back; a machine is at the left of the back and its air leaves at the right of the front.
 */
export function piecesOf(facts: WayFacts): Piece[] {
  const { opening, fan, cooler, conditioner, height_m } = facts
  const windows = facts.windows.map((pane, i): Piece => {
    const low_m = Math.max(0, Math.min(SILL_m, height_m - UNDER_CEILING_m - pane.height_m))
    return {
      mark: `W${i + 1}`,
      side: pane.side,
      width_m: pane.width_m,
      low_m,
      high_m: low_m + pane.height_m,
      made: false,
    }
  })
  const on = (side: Side): Piece[] => windows.filter((pane) => pane.side === side)
  const hole = (mark: string, side: Side, high: boolean): Piece[] =>
    opening === null
      ? []
      : [piece(mark, side, opening.each_m2 / opening.height_m, opening.height_m, high, height_m)]
  const fans = Math.min(fan?.fans ?? 0, MOST_FANS)
  return [
    ...hole('N1', 'front', false),
    ...(fan === null ? [] : [flap('V1', 'front', fan.hole_m2, false, height_m)]),
    ...on('front'),
    ...(cooler === null ? [] : [flap('X1', 'front', cooler.leaving_m2, true, height_m)]),
    ...(cooler === null ? [] : [piece('D1', 'back', cooler.duct_m, cooler.duct_m, true, height_m)]),
    ...(conditioner === null ? [] : [piece('A1', 'back', INDOOR_m.width, INDOOR_m.height, true, height_m)]),
    ...on('back'),
    ...Array.from({ length: fans }, (_, i) => piece(`F${i + 1}`, 'back', FAN_m, FAN_m, true, height_m)),
    ...hole('N2', 'back', true),
    ...on('left'),
    ...on('right'),
  ]
}

/** A piece at its place: its left (or, on the sides, upper) end on the plan from the corner, m. */
export interface Placed extends Piece {
  readonly at_m: number
}

/** Pieces of one wall with equal gaps between them; narrowed together where the wall is too short for them. */
export function placedOn(pieces: readonly Piece[], side: Side, wall_m: number): Placed[] {
  const mine = pieces.filter((one) => one.side === side)
  const sum_m = mine.reduce((sum, { width_m }) => sum + width_m, 0)
  const share = Math.min(1, (0.96 * wall_m) / Math.max(sum_m, 1e-9))
  const gap_m = (wall_m - share * sum_m) / (mine.length + 1)
  let at_m = 0
  return mine.map((one) => {
    at_m += gap_m
    const placed = { ...one, width_m: share * one.width_m, at_m }
    at_m += placed.width_m
    return placed
  })
}

/** Walls on which what was chosen finds no place side by side. */
export function overfull(facts: WayFacts): Side[] {
  const pieces = piecesOf(facts)
  return (['front', 'back'] as const).filter(
    (side) =>
      pieces.filter((one) => one.side === side).reduce((sum, { width_m }) => sum + width_m, 0) >
      0.96 * facts.length_m,
  )
}
