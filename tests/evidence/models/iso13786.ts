import { isResistance, type Construction } from '#model/building/construction'
import { abs, arg, over, product, type Complex, type Matrix } from './complex.ts'

type Layer = Extract<Construction[number], { thickness_m: number }>

export interface Periodic {
  /** Periodic thermal transmittance |Y12|, W/m²K. */
  readonly transmittance_Wm2K: number
  /** Admittance of the inner side, W/m²K. */
  readonly admittance_Wm2K: number
  /** Areal heat capacity of the inner and of the outer side, J/m²K. */
  readonly insideCapacity_Jm2K: number
  readonly outsideCapacity_Jm2K: number
  readonly timeShift_h: number
}

const DAY_S = 86400

/** ISO 13786 heat-transfer matrix of one homogeneous layer at a period of a day. */
function layerMatrix({ thickness_m, conductivity_WmK: k, density_kgm3, specificHeat_JkgK }: Layer): Matrix {
  const delta = Math.sqrt((k * DAY_S) / (Math.PI * density_kgm3 * specificHeat_JkgK))
  const x = thickness_m / delta
  const [ch, sh, c, s] = [Math.cosh(x), Math.sinh(x), Math.cos(x), Math.sin(x)]
  const z11: Complex = [ch * c, sh * s]
  const z12: Complex = [(-delta / (2 * k)) * (sh * c + ch * s), (-delta / (2 * k)) * (ch * s - sh * c)]
  const z21: Complex = [(-k / delta) * (sh * c - ch * s), (-k / delta) * (sh * c + ch * s)]
  return [z11, z12, z21, z11]
}

const film = (resistance_m2KW: number): Matrix => [
  [1, 0],
  [-resistance_m2KW, 0],
  [0, 0],
  [1, 0],
]

/** Dynamic thermal characteristics of an element, layers from inside to outside, ISO 13786. */
export function periodic(layers: Construction, rsi_m2KW = 0.13, rse_m2KW = 0.04): Periodic {
  const inside = layers.reduce(
    (z, part) => product(isResistance(part) ? film(part.resistance_m2KW) : layerMatrix(part), z),
    film(rsi_m2KW),
  )
  const [z11, z12, , z22] = product(film(rse_m2KW), inside)
  const y12 = over([-1, 0], z12)
  const capacity = (z: Complex) => (DAY_S / (2 * Math.PI)) * abs(over([z[0] - 1, z[1]], z12))
  return {
    transmittance_Wm2K: abs(y12),
    admittance_Wm2K: abs(over(z11, z12)),
    insideCapacity_Jm2K: capacity(z11),
    outsideCapacity_Jm2K: capacity(z22),
    timeShift_h: (24 / (2 * Math.PI)) * arg(y12),
  }
}
