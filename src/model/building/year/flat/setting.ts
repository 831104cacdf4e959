import { HOUR_S } from '#model/basis/hours'
import type { RoomNetwork, RoomRows } from '#model/building/room'
import type { Plant, YearInputs } from '../inputs.ts'
import { RATED_DIFFERENCE_K } from '../delivery-law.ts'
import { LoopFlow } from '../loop-flow.ts'
import { nodesOf } from '../nodes.ts'
import { leastDrop_K } from '../pump-duty.ts'
import { fadedAt_K } from '../open-valve.ts'
import { RoomPort } from '../room-port.ts'
import type { Given, Kept, Whole } from './numbers.ts'
import {
  CB,
  ENVELOPE_M2,
  GIVEN_WK,
  GROUND_M2,
  INNER_WM2K,
  LAYER_C,
  LAYER_JK,
  LAYER_LOSS_WK,
  LAYER_PACE,
  PER_GROUP_HERE,
  PER_LAYER_HERE,
  PER_MODE_HERE,
} from './places.ts'

/** No pipes that a plant meets. */
export const NO_PIPES = { pipeRows: new Float64Array(0), pipeShapes: new Float64Array(0) }

const FREEZE = { glycol: 0, drainBack: 1, stop: 2 } as const

/** Whole numbers of a run. */
export function wholeOf({ room, plant }: YearInputs, step_s: number, keepsBooks: boolean): Whole {
  const { stride, groups } = room.rowsOf(step_s)
  return {
    fromRun: 0,
    toRun: 0,
    hours: room.hours,
    stepsPerHour: Math.round(HOUR_S / step_s),
    stride,
    groups: groups.length,
    hasPlant: plant === null ? 0 : 1,
    meetsAir: plant === null || plant.store.port === 'air' ? 1 : 0,
    ...pipedOf(room.rowsOf(step_s), plant),
    hasFilm: plant === null || plant.panel.gap === null ? 0 : 1,
    layers: plant?.store.layerLoss_WK.length ?? 1,
    tankOutside: plant?.store.lossTo === 'outside' ? 1 : 0,
    freeze: plant === null ? 0 : FREEZE[plant.plan.freeze],
    keepsBooks: keepsBooks ? 1 : 0,
  }
}

/** Where the pipes are that a plant meets. */
function pipedOf({ groups }: RoomRows, plant: Plant | null): Pick<Whole, 'piped' | 'pipedFrom'> {
  const { piped } = new RoomPort(plant?.store.port ?? 'air', groups)
  return { piped, pipedFrom: piped < 0 ? 0 : PER_MODE_HERE * groups[piped]!.begin }
}

/** Numbers that hold for a run, and where heat at the plant's port goes as it begins. */
export function givenOf({ room, plant, nightVentStop_C }: YearInputs, step_s: number): Partial<Given & Kept> {
  const { airCapacity_JK, nightVent_WK } = room
  const common = { step_s, airCapacity_JK, nightVent_WK, ventStop_C: nightVentStop_C }
  return plant === null
    ? common
    : { ...common, ...givenOfPlant(plant), ...givenOfPort(plant, room.rowsOf(step_s)) }
}

function givenOfPort({ store }: Plant, { groups }: RoomRows): Partial<Given & Kept> {
  const { piped, toAir, toRadiant } = new RoomPort(store.port, groups)
  if (piped < 0) return { toAir, toRadiant }
  const { db, dc, dd, cb, inner_Wm2K, area_m2 } = groups[piped]!
  return { pipeDb: db, pipeDc: dc, pipeDd: dd, pipeCb: cb, pipeInner_Wm2K: inner_Wm2K, pipeArea_m2: area_m2 }
}

function givenOfPlant(plant: Plant): Partial<Given & Kept> {
  const { panel, loop, store, plan, fieldFactor_frac } = plant
  const dry = panel.dryExchange.plateEmission
  const wet = panel.wetExchange.plateEmission
  const { plateCapacity_JK, capacity_JK, sinkShare } = nodesOf({ plant })
  return {
    ...Object.fromEntries(
      [0, 1, 2, 3, 4, 5].flatMap((i) => [
        [`dry${i}`, dry[i]!],
        [`wet${i}`, wet[i]!],
      ]),
    ),
    perCapacity_K_J: 1 / plateCapacity_JK,
    plateCapacity_JK,
    shed_m2: loop.area_m2 * fieldFactor_frac,
    field_frac: fieldFactor_frac,
    backLoss_Wm2K: panel.backLoss_Wm2K,
    coldSpan_K: panel.cold.span_K,
    hotSpan_K: panel.hot.span_K,
    waterLimit_kgm2: panel.waterLimit_kgm2,
    ...gapOf(panel),
    area_m2: loop.area_m2,
    rate_WK: loop.capacityRate_WK,
    pump_W: loop.pumpPower_W,
    fluidToPlate_Wm2K: loop.fluidToPlate_Wm2K,
    pipeShare: new LoopFlow(loop, 1).pipeShare,
    sinkShare,
    topSink: 1,
    tankCapacity_JK: capacity_JK[0] ?? 0,
    tankLoss_WK: store.layerLoss_WK.length === 1 ? store.layerLoss_WK[0]! : 0,
    topLoss_WK: store.layerLoss_WK[0] ?? 0,
    betweenLayers_WK: store.betweenLayers_WK,
    open_WK: store.delivery_WK,
    faded_K: fadedAt_K(store),
    demand_WK: (store.delivery_WK * RATED_DIFFERENCE_K) / plan.band_K,
    fan_W: store.deliveryPower_W,
    dewMargin_K: store.dewMargin_K,
    setpoint_C: plan.setpoint_C,
    startDifference_K: plan.startDifference_K,
    stopDifference_K: plan.stopDifference_K,
    leastDrop_K: leastDrop_K(plan, store.layerLoss_WK.length),
    lowestStore_C: plan.lowestStore_C,
    freezeLimit_C: plan.freezeLimit_C,
  }
}

function gapOf({ gap }: Plant['panel']): Partial<Given> {
  if (gap === null) return {}
  return { gapWidth_m: gap.width_m, gapSine: gap.sine, gapCosine: gap.cosine, gapShear: gap.shear }
}

/** The layers of a tank, at one temperature. */
export function layerRowsOf(plant: Plant, tank_C: number): Float64Array {
  const { capacity_JK } = nodesOf({ plant })
  const rows = new Float64Array(PER_LAYER_HERE * capacity_JK.length)
  capacity_JK.forEach((layer_JK, i) => {
    const at = PER_LAYER_HERE * i
    rows[at + LAYER_C] = tank_C
    rows[at + LAYER_JK] = layer_JK
    rows[at + LAYER_LOSS_WK] = plant.store.layerLoss_WK[i]!
    rows[at + LAYER_PACE] = NaN
  })
  return rows
}

/** The pipes that a plant meets, in the modes of their group: over a step, and now. */
export function pipeRowsOf(
  room: RoomNetwork,
  plant: Plant,
  step_s: number,
): { pipeRows: Float64Array; pipeShapes: Float64Array } {
  const { groups, pipeMean } = room.rowsOf(step_s)
  const { piped } = new RoomPort(plant.store.port, groups)
  if (piped < 0) return NO_PIPES
  const { begin, end } = groups[piped]!
  return { pipeRows: pipeMean.subarray(begin, end), pipeShapes: room.groups[piped]!.modes.pipe }
}

/** The groups of faces, in the order of `places.ts`. */
export function groupRowsOf(room: RoomNetwork, step_s: number): Float64Array {
  const { groups, given_WK, cb, inner_Wm2K } = room.rowsOf(step_s)
  const rows = new Float64Array(PER_GROUP_HERE * groups.length)
  room.groups.forEach(({ name, area_m2 }, i) => {
    const at = PER_GROUP_HERE * i
    rows[at + GIVEN_WK] = given_WK[i]!
    rows[at + CB] = cb[i]!
    rows[at + INNER_WM2K] = inner_Wm2K[i]!
    rows[at + (name === 'floor' ? GROUND_M2 : ENVELOPE_M2)] = area_m2
  })
  return rows
}

/** The modes of all groups, their states still 0. */
export function modeRowsOf(room: RoomNetwork, step_s: number): Float64Array {
  const { modes, modeRows } = room.rowsOf(step_s)
  const rows = new Float64Array(PER_MODE_HERE * modes)
  const per = modeRows.length / modes
  for (let k = 0; k < modes; k++) rows.set(modeRows.subarray(per * k, per * (k + 1)), PER_MODE_HERE * k)
  return rows
}
