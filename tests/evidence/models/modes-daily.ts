import type { Construction } from '#model/building/construction'
import { modesOf } from '#model/building/construction'
import { abs, arg, over, type Complex } from './complex.ts'

const DAY_S = 86_400
const OMEGA = (2 * Math.PI) / DAY_S

/** What the reduced wall that the room runs on does, with the films of ISO 6946. */
export interface ModesDaily {
  readonly U_Wm2K: number
  readonly transmittance_Wm2K: number
  readonly admittance_Wm2K: number
  readonly timeShift_h: number
  readonly insideCapacity_Jm2K: number
}

/**
 * Steady U-value and the answer to a temperature inside that swings once a day, from the modes themselves:
 * z_k = (b u + c w)/(λ + iω), u = G T*, w = −G_o Σ c z with nothing outside.
 */
export function modesDaily(layers: Construction, inside_m2KW = 0.13, outside_m2KW = 0.04): ModesDaily {
  const film = { innerFilm_Wm2K: 1 / inside_m2KW, outerFilm_Wm2K: 1 / outside_m2KW, pipeDepth_m: null }
  const { decay_1s, inner, outer, innerConductance_Wm2K: G, outerResistance_m2KW } = modesOf(layers, film)
  const far = 1 / (outside_m2KW + outerResistance_m2KW)
  const transfer = (x: Float64Array, y: Float64Array, omega: number): Complex => {
    let [re, im] = [0, 0]
    decay_1s.forEach((decay, k) => {
      const size = decay * decay + omega * omega
      re += (x[k]! * y[k]! * decay) / size
      im -= (x[k]! * y[k]! * omega) / size
    })
    return [re, im]
  }
  /** Heat in at both faces for T* = 1. */
  const heats = (omega: number) => {
    const [bb, cb, cc] = [
      transfer(inner, inner, omega),
      transfer(inner, outer, omega),
      transfer(outer, outer, omega),
    ]
    const w = over([-far * G * cb[0], -far * G * cb[1]], [1 + far * cc[0], far * cc[1]])
    const face: Complex = [G * bb[0] + cb[0] * w[0] - cb[1] * w[1], G * bb[1] + cb[0] * w[1] + cb[1] * w[0]]
    const inward: Complex = [G * (1 - face[0]), -G * face[1]]
    return { inward, out: [-w[0], -w[1]] as Complex }
  }
  const { inward, out } = heats(OMEGA)
  const kept: Complex = [inward[0] - out[0], inward[1] - out[1]]
  const shift_h = (24 / (2 * Math.PI)) * arg(out)
  return {
    U_Wm2K: abs(heats(0).out),
    transmittance_Wm2K: abs(out),
    admittance_Wm2K: abs(inward),
    timeShift_h: shift_h > 0 ? shift_h - 24 : shift_h,
    insideCapacity_Jm2K: (DAY_S / (2 * Math.PI)) * abs(kept),
  }
}
