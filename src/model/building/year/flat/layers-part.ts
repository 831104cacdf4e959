import { CLOSED, LEAST_FLOW, OPEN_TO_STORE, PARTLY_OPEN } from '../delivery-law.ts'
import { takeBack } from './loop-part.ts'
import type { Flat } from './numbers.ts'
import {
  LAYER_AIR,
  LAYER_C,
  LAYER_COLUMN,
  LAYER_END,
  LAYER_JK,
  LAYER_LOSS_WK,
  LAYER_MEAN_C,
  LAYER_PACE,
  LAYER_PIVOT,
  PER_LAYER_HERE,
} from './places.ts'
import { meanStep } from './room-part.ts'

/**
 * Air and a tank in layers for their means, the loop coming back to the layer it belongs to, from the bottom up: `kernel.ts`, solveOnce.
 */
export function solveLayers(s: Flat): void {
  s.entryAt = PER_LAYER_HERE * (s.layers - 1)
  for (;;) {
    solveRowsOnce(s)
    if (s.up_WK === 0 || s.entryAt === 0) break
    s.about_C = s.tankMean_C
    takeBack(s)
    if (s.back_C <= s.layerRows[s.entryAt + LAYER_MEAN_C]!) break
    s.entryAt -= PER_LAYER_HERE
  }
}

/**
 * The layers eliminated from the top down while their rows are made: `tank-layers.ts`, addLayers; `layer-system.ts`; `hub-system.ts`.
 * The row that the loop comes back to fills with what is drawn at the top, the last column with what the delivery draws.
 */
export function solveRowsOnce(s: Flat): void {
  const last = PER_LAYER_HERE * (s.layers - 1)
  takeFlows(s)
  // The last first: all above it take something from it.
  s.layerAt = last
  makeRow(s)
  s.lastOwn_WK = s.gives_WK
  s.lastDrive_W = s.takes_W
  s.lastAir_WK = s.meetsAir_WK
  for (s.layerAt = 0; s.layerAt < last; s.layerAt += PER_LAYER_HERE) {
    makeRow(s)
    eliminateRow(s)
  }
  solveRows(s)
  meetAir(s)
}

/** What flows up and down, and what of it passes between layers above the one entered; the bottom in the top's row and the top in the entered one's. */
export function takeFlows(s: Flat): void {
  const { law } = s
  s.up_WK = s.share * s.rate_WK
  s.down_WK = 0
  if (law === OPEN_TO_STORE) s.down_WK = s.open_WK
  else if (law === PARTLY_OPEN) s.down_WK = s.open_WK * s.fanShare
  else if (law !== CLOSED) s.down_WK = s.open_WK * (s.fanShare > LEAST_FLOW ? s.fanShare : LEAST_FLOW)
  s.raised_WK = (s.up_WK > s.down_WK ? s.up_WK - s.down_WK : 0) + s.betweenLayers_WK
  s.sunk_WK = (s.down_WK > s.up_WK ? s.down_WK - s.up_WK : 0) + s.betweenLayers_WK
  s.column_WK = s.joined_WK - s.down_WK
  s.row_WK = s.back_W = s.fromOwn_WK = s.fromDrive_W = s.fromAir_WK = 0
  s.entryRight_WK = s.entryDrive_W = s.entryAir_WK = 0
  if (s.up_WK > 0) {
    s.row_WK = -s.up_WK * (s.backTop + s.backPlate * s.meanSlope)
    s.back_W = s.up_WK * (s.backPlate * s.meanOffset_C + s.backConst_C)
  }
}

/** What a layer gives off and takes up, its inertia in it, how it meets the air, and what passes between it and the one below. */
export function makeRow(s: Flat): void {
  const { layerRows, layerAt: i, step_s } = s
  const isOutside = s.tankOutside === 1
  const loss_WK = layerRows[i + LAYER_LOSS_WK]!
  const isOver = i < s.entryAt
  s.gives_WK = loss_WK
  if (i > 0) s.gives_WK += i <= s.entryAt ? s.raised_WK : s.betweenLayers_WK
  s.takes_W = isOutside ? loss_WK * s.outdoor_C : 0
  s.meetsAir_WK = isOutside ? 0 : -loss_WK
  s.below_WK = isOver ? s.raised_WK : s.betweenLayers_WK
  s.above_WK = isOver ? s.sunk_WK : s.down_WK + s.betweenLayers_WK
  s.gives_WK += i < PER_LAYER_HERE * (s.layers - 1) ? s.above_WK : s.down_WK
  if (i === 0) {
    s.gives_WK += s.up_WK
    s.takes_W = s.topDrive_W
    s.meetsAir_WK += s.topAir_WK
  }
  if (i === s.entryAt) s.takes_W += s.back_W
  // A top that the loop comes back to meets itself.
  if (i === 0 && s.entryAt === 0) {
    s.gives_WK += s.row_WK
    s.row_WK = 0
  }
  const capacity_JK = layerRows[i + LAYER_JK]!
  const pace = (s.gives_WK * step_s) / capacity_JK
  if (pace !== layerRows[i + LAYER_PACE]!) {
    layerRows[i + LAYER_PACE] = pace
    s.x = pace
    meanStep(s)
    layerRows[i + LAYER_END] = s.endOverMean
  }
  const holds_WK = (layerRows[i + LAYER_END]! * capacity_JK) / step_s
  s.gives_WK += holds_WK
  s.takes_W += holds_WK * layerRows[i + LAYER_C]!
}

/** A row taken out of the next, of the one entered and of the last: `layer-system.ts`, factor and solve. */
export function eliminateRow(s: Flat): void {
  const { layerRows, layerAt: i, below_WK } = s
  const last = PER_LAYER_HERE * (s.layers - 1)
  const isNextLast = i + PER_LAYER_HERE === last
  const isNextEntered = i + PER_LAYER_HERE === s.entryAt
  // The last is the neighbour of the last but one.
  if (isNextLast) s.column_WK -= below_WK
  const pivot = 1 / (s.gives_WK + s.fromOwn_WK)
  const drive_W = s.takes_W + s.fromDrive_W
  const inAir_WK = s.meetsAir_WK + s.fromAir_WK
  const less = ((isNextEntered ? s.row_WK : 0) - s.above_WK) * pivot
  const part = isNextEntered ? 0 : s.row_WK * pivot
  layerRows[i + LAYER_PIVOT] = pivot
  layerRows[i + LAYER_COLUMN] = s.column_WK
  layerRows[i + LAYER_MEAN_C] = drive_W
  layerRows[i + LAYER_AIR] = inAir_WK
  s.entryRight_WK -= part * s.column_WK
  s.entryDrive_W -= part * drive_W
  s.entryAir_WK -= part * inAir_WK
  s.column_WK *= -less
  s.fromOwn_WK = less * below_WK
  s.fromDrive_W = -less * drive_W
  s.fromAir_WK = -less * inAir_WK
  s.row_WK = part * below_WK
  if (isNextEntered) {
    s.column_WK += s.entryRight_WK
    s.fromDrive_W += s.entryDrive_W
    s.fromAir_WK += s.entryAir_WK
  }
  if (isNextLast) {
    s.lastOwn_WK += s.column_WK
    s.lastDrive_W += s.fromDrive_W
    s.lastAir_WK += s.fromAir_WK
  }
}

/** The layers without the air, and how they follow it, from the last up. */
export function solveRows(s: Flat): void {
  const { layerRows } = s
  const end = PER_LAYER_HERE * (s.layers - 1)
  const pivotOfLast = 1 / s.lastOwn_WK
  const ended_C = s.lastDrive_W * pivotOfLast
  const endedAir = s.lastAir_WK * pivotOfLast
  layerRows[end + LAYER_MEAN_C] = ended_C
  layerRows[end + LAYER_AIR] = endedAir
  let after_C = 0
  let afterAir = 0
  for (let i = end - PER_LAYER_HERE; i >= 0; i -= PER_LAYER_HERE) {
    const pivot = layerRows[i + LAYER_PIVOT]!
    const right_WK = layerRows[i + LAYER_COLUMN]!
    const raises_WK = i < s.entryAt ? s.raised_WK : s.betweenLayers_WK
    after_C = (layerRows[i + LAYER_MEAN_C]! - right_WK * ended_C + raises_WK * after_C) * pivot
    afterAir = (layerRows[i + LAYER_AIR]! - right_WK * endedAir + raises_WK * afterAir) * pivot
    layerRows[i + LAYER_MEAN_C] = after_C
    layerRows[i + LAYER_AIR] = afterAir
  }
}

/** The air's mean, and with it the layers'. */
export function meetAir(s: Flat): void {
  const { layerRows } = s
  const end = PER_LAYER_HERE * (s.layers - 1)
  let inAir_WK = s.airOwn_WK
  let toAir_W = s.airDrive_W
  for (let i = 0; i <= end; i += PER_LAYER_HERE) {
    let met_WK = s.tankOutside === 1 ? 0 : -layerRows[i + LAYER_LOSS_WK]!
    if (i === end) met_WK += s.airBottom_WK
    inAir_WK -= met_WK * layerRows[i + LAYER_AIR]!
    toAir_W -= met_WK * layerRows[i + LAYER_MEAN_C]!
  }
  const aired_C = toAir_W * (1 / inAir_WK)
  s.airMean_C = aired_C
  let sum_C = 0
  for (let i = 0; i <= end; i += PER_LAYER_HERE) {
    const mean_C = layerRows[i + LAYER_MEAN_C]! - layerRows[i + LAYER_AIR]! * aired_C
    layerRows[i + LAYER_MEAN_C] = mean_C
    sum_C += mean_C
  }
  s.tankMean_C = layerRows[LAYER_MEAN_C]!
  s.bottomMean_C = layerRows[end + LAYER_MEAN_C]!
  s.layersMean_C = sum_C / s.layers
  s.tankEnd = layerRows[LAYER_END]!
}

/** Layers at the step's end, what they let in, and those turned over that are colder than the one below: `hub-system.ts`, finish; `tank-layers.ts`, turnOver. */
export function moveLayers(s: Flat): void {
  const { layerRows, step_s } = s
  const end = PER_LAYER_HERE * s.layers
  const around_C = s.tankOutside === 1 ? s.outdoor_C : s.airMean_C
  for (let i = 0; i < end; i += PER_LAYER_HERE) {
    const begun_C = layerRows[i + LAYER_C]!
    const mean_C = layerRows[i + LAYER_MEAN_C]!
    layerRows[i + LAYER_C] = begun_C + layerRows[i + LAYER_END]! * (mean_C - begun_C)
    s.gain_J += step_s * layerRows[i + LAYER_LOSS_WK]! * (around_C - mean_C)
  }
  s.sinkDrift_Ks = (layerRows[LAYER_C]! - s.tank_C) / step_s
  for (let i = PER_LAYER_HERE; i < end; i += PER_LAYER_HERE) {
    if (layerRows[i - PER_LAYER_HERE + LAYER_C]! >= layerRows[i + LAYER_C]!) continue
    let first = i
    let mixed_JK = layerRows[i + LAYER_JK]!
    let heat_J = mixed_JK * layerRows[i + LAYER_C]!
    while (first > 0 && layerRows[first - PER_LAYER_HERE + LAYER_C]! < heat_J / mixed_JK) {
      first -= PER_LAYER_HERE
      heat_J += layerRows[first + LAYER_JK]! * layerRows[first + LAYER_C]!
      mixed_JK += layerRows[first + LAYER_JK]!
    }
    for (let k = first; k <= i; k += PER_LAYER_HERE) layerRows[k + LAYER_C] = heat_J / mixed_JK
  }
  s.tank_C = layerRows[LAYER_C]!
}
