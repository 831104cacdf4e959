import type { StoreModel } from '#model/building/store'
import type { HubSystem } from './hub-system.ts'
import type { YearInputs } from './inputs.ts'
import type { Nodes } from './nodes.ts'
import type { PlateCourse } from './plate-course.ts'

/**
 * The rows of the tank in the system of a step: what it loses, and what the loop does to a mixed one.
 * @param running  the plate with its loop, or null at rest
 */
export function setTank(
  system: HubSystem,
  nodes: Nodes,
  { plant, room }: YearInputs,
  hour: number,
  running: PlateCourse | null,
): void {
  const { store } = plant!
  const isOutside = store.lossTo === 'outside'
  const { tankDrive_W, airTank_WK, tankAir_WK } = system
  const tank = system.tank!
  tank.atTop_WK = tank.atEntry_WK = 0
  for (let i = 0; i < nodes.layers; i++) {
    const loss_WK = store.layerLoss_WK[i]!
    tank.own_WK[i] = loss_WK
    tankDrive_W[i] = isOutside ? loss_WK * room.outdoor_C[hour]! : 0
    airTank_WK[i] = tankAir_WK[i] = isOutside ? 0 : -loss_WK
    if (!isOutside) system.air_WK += loss_WK
  }
  if (nodes.layers === 1 && running !== null) {
    tank.own_WK[nodes.sink]! += running.charging_WK
    tankDrive_W[nodes.sink]! += running.charging_W
  }
}

/**
 * Flow through the layers of a tank: up with the panel's loop (drawn at the top, back at layer `tank.entry`), down with the
 * delivery's (drawn at the bottom, back at the top); only the net of the two passes between layers. Conduction
 * between neighbours.
 * @param running  the plate with its loop, or null at rest
 * @param down_WK  ṁc of the delivery
 */
export function addLayers(
  { tank, tankDrive_W: drive_W }: HubSystem,
  { top, bottom }: Nodes,
  store: StoreModel,
  running: PlateCourse | null,
  down_WK: number,
): void {
  const up_WK = running === null ? 0 : running.share * running.flow.rate_WK
  const { own_WK, fromBelow_WK, fromAbove_WK, entry } = tank!
  // Σ of a layer's inflows equals Σ of its outflows: its diagonal takes all that leaves it.
  for (let i = top; i < bottom; i++) {
    const net_WK = i < entry ? up_WK - down_WK : -down_WK
    fromBelow_WK[i] = Math.max(net_WK, 0) + store.betweenLayers_WK
    fromAbove_WK[i] = Math.max(-net_WK, 0) + store.betweenLayers_WK
    own_WK[i + 1]! += fromBelow_WK[i]!
    own_WK[i]! += fromAbove_WK[i]!
  }
  own_WK[top]! += up_WK
  tank!.atTop_WK -= down_WK
  own_WK[bottom]! += down_WK
  if (running === null) return
  const { flow, relaxation } = running
  tank!.atEntry_WK -= up_WK * (flow.backTop + flow.backPlate * relaxation.meanSlope)
  drive_W[entry]! += up_WK * (flow.backPlate * relaxation.meanOffset_C + flow.backConst_C)
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
