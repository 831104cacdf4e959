/* Convection on the exposed face and in the gap under a film, as src/model/README.md describes them (Air, Panel; One hour,
 * steps 7, 8 and 12), written from that page alone. */
import { airAt } from './page-air.ts'

const RAD = Math.PI / 180

export const TERRAIN = {
  open: { a: 0.14, d_m: 270 },
  suburb: { a: 0.22, d_m: 370 },
  city: { a: 0.33, d_m: 460 },
}
export type Terrain = keyof typeof TERRAIN

/** Wind at a height in its terrain over wind at 10 m in the open. */
export const windRatio = (terrain: Terrain, height_m: number) =>
  (270 / 10) ** 0.14 * (height_m / TERRAIN[terrain].d_m) ** TERRAIN[terrain].a

/** Forced convection per wind at the panel: the slopes of the published lines (the page names the papers). */
export const SLOPE = {
  watmuff1977: 3,
  mcAdams1954: 3.8,
  test1981: 2.56,
  sharplesCharlesworth1998: 3.3,
  kumarMullick2010: 3.87,
}
export type WindFormula = keyof typeof SLOPE

export interface Face {
  readonly tilt_deg: number
  readonly length_m: number
  readonly forced_Wm2K: number
  readonly air_C: number
  readonly pressure_Pa: number
  /** The hour as reduced for the year: beyond this face less air the h of the end is kept. */
  readonly curve_K: readonly [number, number] | null
}

function free_Wm2K(face: Face, t_C: number): number {
  const air = airAt((t_C + face.air_C) / 2, face.pressure_Pa)
  const Ra = air.rayleigh_perKm3 * Math.abs(t_C - face.air_C) * face.length_m ** 3
  const cos = Math.cos(face.tilt_deg * RAD)
  const sin = Math.sin(face.tilt_deg * RAD)
  const hot = t_C > face.air_C
  const quarter = Math.max((hot ? 0.54 : 0.27) * cos ** (1 / 4), 0.59 * sin ** (1 / 4)) * Ra ** (1 / 4)
  const third = Math.max((hot ? 0.15 : 0) * cos ** (1 / 3), 0.1 * sin ** (1 / 3)) * Ra ** (1 / 3)
  const Nu = (quarter ** 10 + third ** 10) ** (1 / 10)
  return (Nu * air.conductivity_WmK) / face.length_m
}

const joined = (face: Face, t_C: number) => Math.cbrt(free_Wm2K(face, t_C) ** 3 + face.forced_Wm2K ** 3)

/** Convection between an exposed face and the air. */
export function faceConvection_Wm2K(face: Face, t_C: number): number {
  const [lowest, highest] = face.curve_K ?? [-Infinity, Infinity]
  const over = Math.min(highest, Math.max(lowest, t_C - face.air_C))
  if (Math.abs(over) >= 1) return joined(face, face.air_C + over)
  const cold = joined(face, face.air_C - 1)
  const hot = joined(face, face.air_C + 1)
  return cold + ((hot - cold) * (over + 1)) / 2
}

function uprightGap(Ra: number): number {
  if (Ra < 1000) return 1
  const first = Math.cbrt(1 + ((0.104 * Ra ** 0.293) / (1 + (6310 / Ra) ** 1.36)) ** 3)
  return Math.max(first, 0.0605 * Math.cbrt(Ra))
}

const positive = (x: number) => Math.max(0, x)

/** Conductance of the still gap between plate and film. */
export function gap_Wm2K(
  plate_C: number,
  film_C: number,
  gap_m: number,
  tilt_deg: number,
  pressure_Pa: number,
): number {
  const air = airAt((plate_C + film_C) / 2, pressure_Pa)
  const Ra = air.rayleigh_perKm3 * Math.abs(plate_C - film_C) * gap_m ** 3
  let Nu: number
  if (plate_C > film_C) {
    const beta = Math.min(60, tilt_deg)
    const x = Ra * Math.cos(beta * RAD)
    const sine = Math.sin(1.8 * beta * RAD) ** 1.6
    Nu =
      x > 0
        ? 1 + 1.44 * (1 - (1708 * sine) / x) * positive(1 - 1708 / x) + positive(Math.cbrt(x / 5830) - 1)
        : 1
  } else Nu = 1 + (uprightGap(Ra) - 1) * Math.sin(tilt_deg * RAD)
  return (Nu * air.conductivity_WmK) / gap_m
}
