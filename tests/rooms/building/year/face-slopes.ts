import type { RoomNetwork } from '#model/building/room'

/** ISO 52016-1: convection and longwave inside, W/m²K. */
const HC = 2.5
const HR = 5.13
const HI = HC + HR

/** The faces at an instant: what a plant may couple to, and what flows with its heat put in. */
export interface Faces {
  readonly radiantWith_C: (radiant_W: number) => number
  /** Of the cell in which the pipes lie, °C; NaN without. */
  readonly pipe_C: number
  readonly flows: (radiant_W: number, pipes_W: number) => { toAir_W: number; slopes: number[] }
}

/**
 * The faces of a room at an instant, as a right-hand side: the radiant temperature is the one at which the faces’ longwave
 * adds up to nothing, T_face = T* (1 − G/h_i) + (G/h_i) T_cell with T* = (h_c T_air + h_r T_mr + q)/h_i.
 * @param from  where the masses begin in `x`
 */
export function facesAt(
  room: RoomNetwork,
  hour: number,
  air_C: number,
  x: readonly number[],
  from: number,
): Faces {
  interface Face {
    readonly area_m2: number
    /** Share of T* in the face, what else it is made of, and what it absorbs. */
    readonly share: number
    readonly rest_C: number
    readonly q: number
  }
  const q = (area_m2: number, sunShare: number, areaShare: number) =>
    (room.sun_W[hour]! * sunShare + 0.6 * room.gains_W[hour]! * areaShare) / area_m2
  let at = from
  const cells = room.groups.map(({ modes }) => {
    const z = x.slice(at, at + modes.count)
    at += modes.count
    return {
      z,
      inner_C: z.reduce((sum, value, k) => sum + value * modes.inner[k]!, 0),
      outer_C: z.reduce((sum, value, k) => sum + value * modes.outer[k]!, 0),
    }
  })
  const faces: Face[] = room.groups.map((group, i) => {
    const tie = group.modes.innerConductance_Wm2K / HI
    return {
      area_m2: group.area_m2,
      share: 1 - tie,
      rest_C: tie * cells[i]!.inner_C,
      q: q(group.area_m2, group.sunShare, group.areaShare),
    }
  })
  if (room.windows !== null) {
    const { area_m2, resistance_m2KW, outside, areaShare } = room.windows
    const tie = 1 / (1 / HI + resistance_m2KW + 1 / outside.film_Wm2K[hour]!) / HI
    faces.push({ area_m2, share: 1 - tie, rest_C: tie * outside.temp_C[hour]!, q: q(area_m2, 0, areaShare) })
  }
  // Σ A (T_face − T_mr) = 0, with T_face = share (h_c T_air + h_r T_mr + q)/h_i + rest.
  let known = 0
  let ofRadiant = 0
  for (const { area_m2, share, rest_C, q: own } of faces) {
    known += area_m2 * ((share * (HC * air_C + own)) / HI + rest_C)
    ofRadiant += area_m2 * (1 - (share * HR) / HI)
  }
  /** With heat put in at the radiant temperature, W. */
  const radiantWith_C = (radiant_W: number): number => (known + radiant_W / HR) / ofRadiant
  const piped = room.groups.findIndex(({ modes }) => modes.pipe.some((shape) => shape !== 0))
  const flows = (radiant_W: number, pipes_W: number) => {
    const radiant_C = radiantWith_C(radiant_W)
    const toAir_W = faces.reduce((sum, { area_m2, share, rest_C, q: own }) => {
      const face_C = (share * (HC * air_C + HR * radiant_C + own)) / HI + rest_C
      return sum + area_m2 * HC * (face_C - air_C)
    }, 0)
    const slopes = room.groups.flatMap((group, i) => {
      const { modes, outside } = group
      const u = (modes.innerConductance_Wm2K * (HC * air_C + HR * radiant_C + faces[i]!.q)) / HI
      const w =
        outside === null
          ? 0
          : (outside.temp_C[hour]! - cells[i]!.outer_C) /
            (1 / outside.film_Wm2K[hour]! + modes.outerResistance_m2KW)
      const p = i === piped ? pipes_W / group.area_m2 : 0
      return cells[i]!.z.map(
        (z, k) => -modes.decay_1s[k]! * z + modes.inner[k]! * u + modes.outer[k]! * w + modes.pipe[k]! * p,
      )
    })
    return { toAir_W, slopes }
  }
  const pipe_C =
    piped < 0 ? NaN : cells[piped]!.z.reduce((sum, z, k) => sum + z * room.groups[piped]!.modes.pipe[k]!, 0)
  return { radiantWith_C, pipe_C, flows }
}
