import type { Construction } from '#model/building/construction'
import type { RoomSpec } from './spec.ts'

/** Brick or plasterboard on studs as one layer: only its mass matters (ISO 10456, masonry of medium weight). */
const LAYER = { conductivity_WmK: 0.8, density_kgm3: 1500, specificHeat_JkgK: 1000 }

/** Walls inside the room: both faces take part, each with half of the thickness behind it. */
export function partition({
  partition_m2,
  partitionMass_kgm2,
}: Pick<RoomSpec, 'partition_m2' | 'partitionMass_kgm2'>): {
  readonly area_m2: number
  readonly layers: Construction
} {
  const thickness_m = partitionMass_kgm2 / LAYER.density_kgm3 / 2
  return { area_m2: 2 * partition_m2, layers: [{ thickness_m, ...LAYER }] }
}
