import type { StoreModel } from '#model/building/store'
import type { LayerSystem } from './layer-system.ts'
import type { Nodes } from './nodes.ts'
import type { PlateCourse } from './plate-course.ts'

/**
 * Flow through the layers of a tank: up with the panel's loop (drawn at the top, back at the bottom), down with the
 * delivery's (drawn at the bottom, back at the top); only the net of the two passes between layers. Conduction
 * between neighbours.
 * @param running  the plate with its loop, or null at rest
 * @param down_WK  ṁc of the delivery
 */
export function addLayers(
  tank: LayerSystem,
  drive_W: Float64Array,
  { top, bottom }: Nodes,
  store: StoreModel,
  running: PlateCourse | null,
  down_WK: number,
): void {
  const up_WK = running === null ? 0 : running.share * running.flow.rate_WK
  const fromBelow_WK = Math.max(up_WK - down_WK, 0) + store.betweenLayers_WK
  const fromAbove_WK = Math.max(down_WK - up_WK, 0) + store.betweenLayers_WK
  // Σ of a layer's inflows equals Σ of its outflows: its diagonal takes all that leaves it.
  const { own_WK } = tank
  tank.fromBelow_WK = fromBelow_WK
  tank.fromAbove_WK = fromAbove_WK
  for (let i = top; i < bottom; i++) {
    own_WK[i + 1]! += fromBelow_WK
    own_WK[i]! += fromAbove_WK
  }
  own_WK[top]! += up_WK
  tank.atTop_WK -= down_WK
  own_WK[bottom]! += down_WK
  if (running === null) return
  const { flow, relaxation } = running
  tank.atBottom_WK -= up_WK * (flow.backTop + flow.backPlate * relaxation.meanSlope)
  drive_W[bottom]! += up_WK * (flow.backPlate * relaxation.meanOffset_C + flow.backConst_C)
}

/**
 * Mixes layers until none is colder (denser) than the one below it, and no more than that takes: each run of layers that
 * turned over ends at its mean by heat capacity, so energy is kept.
 */
export function turnOver({ top, bottom, capacity_JK }: Nodes, temp_C: Float64Array): void {
  for (let i = top + 1; i <= bottom; i++) {
    if (temp_C[i - 1]! >= temp_C[i]!) continue
    let first = i
    let heat_J = capacity_JK[i]! * temp_C[i]!
    let mixed_JK = capacity_JK[i]!
    while (first > top && temp_C[first - 1]! < heat_J / mixed_JK) {
      first--
      heat_J += capacity_JK[first]! * temp_C[first]!
      mixed_JK += capacity_JK[first]!
    }
    temp_C.fill(heat_J / mixed_JK, first, i + 1)
  }
}
