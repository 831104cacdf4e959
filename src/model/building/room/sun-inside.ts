/** An inner face as sunlight finds it. */
export interface SunlitFace {
  readonly area_m2: number
  /** Share of the sunlight on it that it keeps, or, of a window, lets out again. */
  readonly absorptance_frac: number
  readonly floor: boolean
}

/** Share of the sunlight let in that strikes the floor first; the rest strikes all faces by area (common practice, no source). */
const TO_FLOOR = 0.5

/**
 * Shares of the sunlight let in that each face keeps, in the order given; they add to 1. What a face does not keep is
 * spread over all faces by area and absorptance; what windows keep has gone out again.
 */
export function sunShares(faces: readonly SunlitFace[]): number[] {
  const area_m2 = faces.reduce((sum, face) => sum + face.area_m2, 0)
  const floor_m2 = faces.reduce((sum, face) => sum + (face.floor ? face.area_m2 : 0), 0)
  const toFloor = floor_m2 > 0 ? TO_FLOOR : 0
  const first = faces.map(
    ({ area_m2: own_m2, absorptance_frac, floor }) =>
      absorptance_frac * (((1 - toFloor) * own_m2) / area_m2 + (floor ? (toFloor * own_m2) / floor_m2 : 0)),
  )
  const kept = first.reduce((sum, share) => sum + share, 0)
  const taking_m2 = faces.reduce((sum, face) => sum + face.area_m2 * face.absorptance_frac, 0)
  return faces.map(
    ({ area_m2: own_m2, absorptance_frac }, i) =>
      first[i]! + ((1 - kept) * own_m2 * absorptance_frac) / taking_m2,
  )
}
