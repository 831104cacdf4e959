import { minus, ONE, over, plus, scaled, size, times, type Complex } from '#model/basis/numbers'
import { bareResistanceOf_m2KW, isResistance, type Construction, type Layer } from './layer.ts'

/** How a construction answers a temperature that swings with one period. ISO 13786:2017. */
export interface DynamicProperties {
  /** Steady thermal transmittance with both films, W/m²K. */
  readonly U_Wm2K: number
  /** Modulus of the periodic thermal transmittance Y12, W/m²K. */
  readonly periodicTransmittance_Wm2K: number
  /** Decrement factor |Y12|/U, –. */
  readonly decrement_frac: number
  /** Time shift of the heat flow inside behind the temperature outside, h (negative = later). */
  readonly timeShift_h: number
  /** Modulus of the inside thermal admittance Y11, W/m²K. */
  readonly admittance_Wm2K: number
  /** Areal heat capacities of the inner and outer side, J/m²K: what a room field asks for. */
  readonly inner_Jm2K: number
  readonly outer_Jm2K: number
}

type Matrix = readonly [Complex, Complex, Complex, Complex]

/**
 * Areal heat capacities and periodic transmittance of layers, inside first. Films are surface to air, m²K/W; period in
 * hours. Throws RangeError for no layers or a layer number that is not above 0. Source: ISO 13786:2017, 6.2–7.3.
 */
export function dynamicProperties(
  layers: Construction,
  inside_m2KW = 0.13,
  outside_m2KW = 0.04,
  period_h = 24,
): DynamicProperties {
  if (layers.length === 0) throw new RangeError('a construction needs at least one layer')
  const bare_m2KW = bareResistanceOf_m2KW(layers)
  const chain: Matrix[] = [
    resistanceMatrix(inside_m2KW),
    ...layers.map((part) =>
      isResistance(part) ? resistanceMatrix(part.resistance_m2KW) : layerMatrix(part, period_h * 3600),
    ),
    resistanceMatrix(outside_m2KW),
  ]
  const [z11, z12, , z22] = chain.reduce((inner, outer) => product(outer, inner))
  const resistance = inside_m2KW + outside_m2KW + bare_m2KW
  const y12 = over(scaled(ONE, -1), z12)
  const capacity = (z: Complex) => ((period_h * 3600) / (2 * Math.PI)) * size(over(minus(z, ONE), z12))
  return {
    U_Wm2K: 1 / resistance,
    periodicTransmittance_Wm2K: size(y12),
    decrement_frac: size(y12) * resistance,
    timeShift_h: lateShift_h(y12, period_h),
    admittance_Wm2K: size(over(z11, z12)),
    inner_Jm2K: capacity(z11),
    outer_Jm2K: capacity(z22),
  }
}

/** Argument of Y12 as hours in −period…0: heat never arrives early. */
function lateShift_h(y12: Complex, period_h: number): number {
  const shift_h = (period_h / (2 * Math.PI)) * Math.atan2(y12.im, y12.re)
  return shift_h > 0 ? shift_h - period_h : shift_h
}

function resistanceMatrix(resistance_m2KW: number): Matrix {
  return [ONE, { re: -resistance_m2KW, im: 0 }, { re: 0, im: 0 }, ONE]
}

/** ISO 13786, heat transfer matrix of a homogeneous layer: x = d/δ, δ = √(λT/(πρc)) the penetration depth. */
function layerMatrix(layer: Layer, period_s: number): Matrix {
  const { thickness_m, conductivity_WmK: lambda, density_kgm3, specificHeat_JkgK } = layer
  const depth_m = Math.sqrt((lambda * period_s) / (Math.PI * density_kgm3 * specificHeat_JkgK))
  const x = thickness_m / depth_m
  const [ss, sc] = [Math.sinh(x) * Math.sin(x), Math.sinh(x) * Math.cos(x)]
  const [cs, cc] = [Math.cosh(x) * Math.sin(x), Math.cosh(x) * Math.cos(x)]
  const diagonal = { re: cc, im: ss }
  return [
    diagonal,
    scaled({ re: sc + cs, im: cs - sc }, -depth_m / (2 * lambda)),
    scaled({ re: sc - cs, im: sc + cs }, -lambda / depth_m),
    diagonal,
  ]
}

function product(a: Matrix, b: Matrix): Matrix {
  return [
    plus(times(a[0], b[0]), times(a[1], b[2])),
    plus(times(a[0], b[1]), times(a[1], b[3])),
    plus(times(a[2], b[0]), times(a[3], b[2])),
    plus(times(a[2], b[1]), times(a[3], b[3])),
  ]
}
