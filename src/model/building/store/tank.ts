import type { StoreKind } from './spec.ts'

/** True for the kinds of store that hold water of their own; slab and building have no tank to choose. */
export function isTank(kind: StoreKind): boolean {
  return kind === 'mixed' || kind === 'layered'
}

/** An upright cylinder. */
export interface TankShape {
  readonly diameter_m: number
  readonly height_m: number
  /** Top or bottom, m². */
  readonly end_m2: number
  readonly side_m2: number
}

/**
 * Upright cylindrical tank of `volume_m3`, as high as it is wide (least skin for its volume) unless a height is given, m.
 * Volume 0 is a tank without size. Throws RangeError for a negative volume or a height of 0 or less.
 */
export function tankShape(volume_m3: number, height_m?: number): TankShape {
  if (!(volume_m3 >= 0)) throw new RangeError(`tank volume must be 0 or more, got ${volume_m3} m³`)
  if (height_m !== undefined && !(height_m > 0))
    throw new RangeError(`tank height must be above 0, got ${height_m} m`)
  const height = volume_m3 === 0 ? 0 : (height_m ?? Math.cbrt((4 * volume_m3) / Math.PI))
  const end_m2 = height === 0 ? 0 : volume_m3 / height
  const diameter_m = Math.sqrt((4 * end_m2) / Math.PI)
  return { diameter_m, height_m: height, end_m2, side_m2: Math.PI * diameter_m * height }
}
