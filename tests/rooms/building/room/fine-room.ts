import { isResistance, type Construction } from '#model/building/construction'
import type { RoomNetwork } from '#model/building/room'

/** ISO 52016-1: convection and longwave inside, W/m²K. */
const HC = 2.5
const HR = 5.13
const HI = HC + HR
const CELL_M = 0.005
const STEP_S = 120

/** One group of faces as implicit finite volumes: what it does to a temperature T* before its face. */
class FineGroup {
  readonly T: Float64Array
  readonly inner_Wm2K: number
  private readonly capacity: Float64Array
  private readonly between: Float64Array
  private readonly last_m2KW: number
  private readonly upper: Float64Array
  private readonly right: Float64Array
  private readonly unit: Float64Array
  private film_Wm2K = NaN

  constructor(layers: Construction, start_C: number) {
    const capacity: number[] = []
    const gaps: number[] = []
    let pending = 0
    for (const part of layers) {
      if (isResistance(part)) {
        pending += part.resistance_m2KW
        continue
      }
      const n = Math.max(2, Math.ceil(part.thickness_m / CELL_M))
      const half = part.thickness_m / n / part.conductivity_WmK / 2
      for (let k = 0; k < n; k++) {
        gaps.push(pending + half)
        pending = half
        capacity.push((part.density_kgm3 * part.specificHeat_JkgK * part.thickness_m) / n / STEP_S)
      }
    }
    this.capacity = Float64Array.from(capacity)
    this.between = Float64Array.from(gaps.slice(1), (gap) => 1 / gap)
    this.inner_Wm2K = 1 / (1 / HI + gaps[0]!)
    this.last_m2KW = pending
    this.T = new Float64Array(capacity.length).fill(start_C)
    this.upper = this.T.map(() => 0)
    this.right = this.T.map(() => 0)
    this.unit = this.T.map(() => 0)
  }

  /** First cell after a step for T* = 0, °C; each kelvin of T* adds `perStar`. */
  still_C = 0
  perStar = 0

  prepare(outside: { temp_C: number; film_Wm2K: number } | null): void {
    const { T, capacity: C, between: g, upper, right, unit } = this
    const n = T.length
    const out = outside === null ? 0 : 1 / (1 / outside.film_Wm2K + this.last_m2KW)
    const same = out === this.film_Wm2K
    this.film_Wm2K = out
    for (let j = 0; j < n; j++) {
      const left = j === 0 ? this.inner_Wm2K : g[j - 1]!
      const next = j === n - 1 ? out : g[j]!
      const under = j === 0 ? 0 : g[j - 1]!
      const pivot = C[j]! + left + next - under * (j === 0 ? 0 : upper[j - 1]!)
      upper[j] = j === n - 1 ? 0 : g[j]! / pivot
      const source = C[j]! * T[j]! + (j === n - 1 && outside !== null ? out * outside.temp_C : 0)
      right[j] = (source + under * (j === 0 ? 0 : right[j - 1]!)) / pivot
      if (!same) unit[j] = ((j === 0 ? this.inner_Wm2K : 0) + under * (j === 0 ? 0 : unit[j - 1]!)) / pivot
    }
    for (let j = n - 2; j >= 0; j--) right[j]! += upper[j]! * right[j + 1]!
    if (!same) for (let j = n - 2; j >= 0; j--) unit[j]! += upper[j]! * unit[j + 1]!
    this.still_C = right[0]!
    this.perStar = unit[0]!
  }

  finish(star_C: number): void {
    for (let j = 0; j < this.T.length; j++) this.T[j] = this.right[j]! + star_C * this.unit[j]!
  }
}

/**
 * Second implementation of a room: cells of 5 mm and implicit steps of two minutes in place of modes and exact means of
 * a quarter hour; the same films, sun and drives. Operative temperature, mean of each hour, °C.
 * @param layers of each group of the network, in its order
 * @param start_C all of it in the beginning
 */
export function fineRoom(
  room: RoomNetwork,
  layers: readonly Construction[],
  start_C: number,
  span: readonly [number, number],
): Float64Array {
  const fine = layers.map((each) => new FineGroup(each, start_C))
  const hours = new Float64Array(span[1] - span[0])
  let air_C = start_C
  const steps = 3600 / STEP_S
  for (let h = span[0]; h < span[1]; h++) {
    const radiant = (sun: number, area: number, area_m2: number) =>
      (room.sun_W[h]! * sun + 0.6 * room.gains_W[h]! * area) / area_m2
    for (let k = 0; k < steps; k++) {
      // Air and radiant balances: a · (T_air, T_mr) = r, each face A h (T_face − T).
      const inertia = room.airCapacity_JK / STEP_S
      const vent = room.ventilation_WK[h]!
      let [a11, a12, a22] = [inertia + vent, 0, 0]
      let [r1, r2] = [inertia * air_C + vent * room.outdoor_C[h]! + 0.4 * room.gains_W[h]!, 0]
      const face = (area_m2: number, q: number, taken_C: number, perStar: number, inner: number) => {
        // Face = T* − inner (T* − first)/h_i, first = taken + perStar T*.
        const star = 1 - (inner * (1 - perStar)) / HI
        const rest = (inner * taken_C) / HI
        a11 += area_m2 * HC * (1 - (star * HC) / HI)
        a12 -= (area_m2 * HC * star * HR) / HI
        a22 += area_m2 * HR * (1 - (star * HR) / HI)
        r1 += area_m2 * HC * ((star * q) / HI + rest)
        r2 += area_m2 * HR * ((star * q) / HI + rest)
      }
      room.groups.forEach((group, i) => {
        const { outside } = group
        fine[i]!.prepare(
          outside === null ? null : { temp_C: outside.temp_C[h]!, film_Wm2K: outside.film_Wm2K[h]! },
        )
        const q = radiant(group.sunShare, group.areaShare, group.area_m2)
        face(group.area_m2, q, fine[i]!.still_C, fine[i]!.perStar, fine[i]!.inner_Wm2K)
      })
      if (room.windows !== null && room.windows.area_m2 > 0) {
        const { area_m2, resistance_m2KW, outside, areaShare } = room.windows
        const through = 1 / (1 / HI + resistance_m2KW + 1 / outside.film_Wm2K[h]!)
        face(area_m2, radiant(0, areaShare, area_m2), outside.temp_C[h]!, 0, through)
      }
      const det = a11 * a22 - a12 * a12
      const radiant_C = (a11 * r2 - a12 * r1) / det
      air_C = (r1 * a22 - a12 * r2) / det
      room.groups.forEach((group, i) => {
        const q = radiant(group.sunShare, group.areaShare, group.area_m2)
        fine[i]!.finish((HC * air_C + HR * radiant_C + q) / HI)
      })
      hours[h - span[0]]! += (air_C + radiant_C) / 2 / steps
    }
  }
  return hours
}
