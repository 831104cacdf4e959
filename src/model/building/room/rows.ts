import type { RingPart } from '#model/basis/hours'
import { CONVECTION_INSIDE_Wm2K as HC, FILM_INSIDE_Wm2K as HI, RADIATION_INSIDE_Wm2K as HR } from './films.ts'
import { CONVECTIVE_GAINS_frac } from './gains.ts'
import type { FaceGroup, GroupStep, RoomParts, RoomRows } from './spec.ts'

/** Entries of a row before those of the groups. */
export const AIR_WK = 0
export const BACK_WK = 1
export const ACROSS_WK = 2
export const RADIANT_WK = 3
export const TO_AIR_W = 4
export const TO_RADIANT_W = 5
const BEFORE_GROUPS = 6
/** Entries of a group: α, the temperature outside, and what its face absorbs as if it came through the film. */
export const PER_GROUP = 3
/** Entries of a mode: e^−x, and inner and outer shape times the share of a step's mean. */
export const PER_MODE = 3

/**
 * Rows of a room for steps of `step_s`, exact for drives that hold over the step.
 * @param part  the hours that rows are wanted of, the others left empty; all when left out
 */
export function roomRows(room: RoomParts, step_s: number, part: RingPart | null = null): RoomRows {
  const groups: GroupStep[] = []
  const columns: { [K in 'decay' | 'b' | 'c' | 'd' | 'm1' | 'held']: number[] } = {
    decay: [],
    b: [],
    c: [],
    d: [],
    m1: [],
    held: [],
  }
  for (const group of room.groups) groups.push(groupStep(group, step_s, columns))
  const times = (shape: readonly number[]): Float64Array =>
    Float64Array.from(shape, (value, k) => value * columns.m1[k]!)
  const ofGroups = (value: (group: GroupStep) => number): Float64Array =>
    Float64Array.from(groups, (group) => value(group))
  const [innerMean, outerMean] = [times(columns.b), times(columns.c)]
  const modeRows = new Float64Array(PER_MODE * columns.decay.length)
  columns.decay.forEach((decay, k) => modeRows.set([decay, innerMean[k]!, outerMean[k]!], PER_MODE * k))
  const stride = BEFORE_GROUPS + PER_GROUP * groups.length
  const rows = new Float64Array(stride * room.hours)
  if (part === null) for (let h = 0; h < room.hours; h++) fillRow(rows, h * stride, room, groups, h)
  else
    part.pieces((from, to) => {
      for (let h = from; h < to; h++) fillRow(rows, h * stride, room, groups, h)
    })
  return {
    step_s,
    stride,
    rows,
    groups,
    modes: columns.decay.length,
    modeRows,
    ends: Int32Array.from(groups, ({ end }) => end),
    inner_Wm2K: ofGroups((group) => group.inner_Wm2K),
    given_WK: ofGroups(({ area_m2, inner_Wm2K }) => (area_m2 * inner_Wm2K) / HI),
    cb: ofGroups((group) => group.cb),
    innerMean,
    outerMean,
    pipeMean: times(columns.d),
    held: Float64Array.from(columns.held),
  }
}

/** Below this, in steps, a decay leaves no digits to 1 − m1. */
const SLOWEST = 1e-8

/**
 * Share of a step's start in its mean, and the mean for each W/m² over the step, s. e^−x = 1 − x m1 and m1 = 1 − λ m2
 * hold to rounding for heavy, slow masses too: what a year of steps keeps or loses hangs on both.
 */
export function meanShares(decay_1s: number, step_s: number): { m1: number; m2_s: number } {
  const x = decay_1s * step_s
  if (x < SLOWEST) return { m1: 1 - x / 2, m2_s: step_s / 2 }
  const m1 = -Math.expm1(-x) / x
  return { m1, m2_s: (1 - m1) / decay_1s }
}

function groupStep(
  group: FaceGroup,
  step_s: number,
  columns: { [K in 'decay' | 'b' | 'c' | 'd' | 'm1' | 'held']: number[] },
): GroupStep {
  const { modes, area_m2 } = group
  const begin = columns.decay.length
  const sums = { bb: 0, cb: 0, cc: 0, db: 0, dc: 0, dd: 0 }
  for (let k = 0; k < modes.count; k++) {
    const [b, c, d] = [modes.inner[k]!, modes.outer[k]!, modes.pipe[k]!]
    const { m1, m2_s } = meanShares(modes.decay_1s[k]!, step_s)
    columns.decay.push(Math.exp(-modes.decay_1s[k]! * step_s))
    columns.b.push(b)
    columns.c.push(c)
    columns.d.push(d)
    columns.m1.push(m1)
    columns.held.push(area_m2 * modes.held[k]!)
    sums.bb += m2_s * b * b
    sums.cb += m2_s * c * b
    sums.cc += m2_s * c * c
    sums.db += m2_s * d * b
    sums.dc += m2_s * d * c
    sums.dd += m2_s * d * d
  }
  return {
    area_m2,
    begin,
    end: begin + modes.count,
    inner_Wm2K: modes.innerConductance_Wm2K,
    ...sums,
    hasPipes: modes.pipe.some((value) => value !== 0),
  }
}

/** Conductance from the last cell to what lies outside in an hour, W/m²K; 0 where no heat passes. */
export function outerConductance_Wm2K({ outside, modes }: FaceGroup, h: number): number {
  return outside === null ? 0 : 1 / (1 / outside.film_Wm2K[h]! + modes.outerResistance_m2KW)
}

/** What a group's inner face absorbs in an hour, W/m². */
export function absorbed_Wm2(
  room: Pick<RoomParts, 'sun_W' | 'gains_W'>,
  group: { readonly area_m2: number; readonly sunShare: number; readonly areaShare: number },
  h: number,
  sunToo = true,
): number {
  const radiant_W = (1 - CONVECTIVE_GAINS_frac) * room.gains_W[h]! * group.areaShare
  return ((sunToo ? room.sun_W[h]! * group.sunShare : 0) + radiant_W) / group.area_m2
}

function fillRow(
  rows: Float64Array,
  at: number,
  room: RoomParts,
  steps: readonly GroupStep[],
  h: number,
): void {
  const air_WK = room.ventilation_WK[h]!
  rows[at + AIR_WK] = air_WK
  rows[at + TO_AIR_W] = air_WK * room.outdoor_C[h]! + CONVECTIVE_GAINS_frac * room.gains_W[h]!
  room.groups.forEach((group, i) => {
    const step = steps[i]!
    const outer_Wm2K = outerConductance_Wm2K(group, h)
    const alpha = outer_Wm2K / (1 + outer_Wm2K * step.cc)
    const q_Wm2 = absorbed_Wm2(room, group, h)
    const mine = at + BEFORE_GROUPS + PER_GROUP * i
    rows[mine] = alpha
    rows[mine + 1] = group.outside?.temp_C[h] ?? 0
    rows[mine + 2] = (step.inner_Wm2K * q_Wm2) / HI
    const Y = step.inner_Wm2K * (1 - step.inner_Wm2K * (step.bb - alpha * step.cb * step.cb))
    addFaces(rows, at, step.area_m2, Y, 0, q_Wm2)
  })
  const { windows } = room
  if (windows === null) return
  const Y = 1 / (1 / HI + windows.resistance_m2KW + 1 / windows.outside.film_Wm2K[h]!)
  addFaces(
    rows,
    at,
    windows.area_m2,
    Y,
    Y * windows.outside.temp_C[h]!,
    absorbed_Wm2(room, windows, h, false),
  )
}

/** Adds faces that take Y T* − J to the sums of a row. */
function addFaces(
  sums: Float64Array,
  at: number,
  area_m2: number,
  Y: number,
  J: number,
  q_Wm2: number,
): void {
  const S = (1 - Y / HI) / HI
  const given = S * q_Wm2 + J / HI
  sums[at + AIR_WK]! += area_m2 * HC
  sums[at + BACK_WK]! += area_m2 * HC * HC * S
  sums[at + ACROSS_WK]! -= area_m2 * HC * HR * S
  sums[at + RADIANT_WK]! += area_m2 * HR * (1 - HR * S)
  sums[at + TO_AIR_W]! += area_m2 * HC * given
  sums[at + TO_RADIANT_W]! += area_m2 * HR * given
}

export const groupAt = (at: number, i: number): number => at + BEFORE_GROUPS + PER_GROUP * i
