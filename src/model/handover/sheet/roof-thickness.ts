import { isResistance, ROOF_BUILDS, type Construction } from '#model/building/construction'
import type { Scenario } from '#model/design/scenario'

/** From the ceiling to the outside of the roof, m; null where its layers are not given, or one of them is air of unknown depth. */
export function roofThickness_m({ room }: Pick<Scenario, 'room'>): number | null {
  if (room.roofBuild === 'own') return null
  const layers: Construction = ROOF_BUILDS[room.roofBuild].layers
  return layers.reduce<number | null>(
    (sum_m, layer) => (sum_m === null || isResistance(layer) ? null : sum_m + layer.thickness_m),
    0,
  )
}
