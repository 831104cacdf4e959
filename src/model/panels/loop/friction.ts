import type { FluidProperties } from './properties.ts'

/** Below this Reynolds number flow in a tube is laminar; above TURBULENT_RE it is turbulent. */
export const LAMINAR_RE = 2300
export const TURBULENT_RE = 4000

export type FlowRegime = 'laminar' | 'transitional' | 'turbulent'

export function flowRegime(reynolds: number): FlowRegime {
  return reynolds < LAMINAR_RE ? 'laminar' : reynolds < TURBULENT_RE ? 'transitional' : 'turbulent'
}

/**
 * Darcy friction factor (–) of a round tube. Laminar 64/Re; turbulent Haaland 1983; between 2300 and 4000 a straight
 * line from one to the other, where no formula is to be trusted (see `flowRegime`). For a smooth tube Haaland is
 * within 2.3 % of Blasius 0.3164 Re^−¼ where that holds, so one formula serves all tubes.
 * `reynolds` > 0, `relativeRoughness` = roughness / bore, 0…0.05; throws RangeError otherwise.
 */
export function frictionFactor(reynolds: number, relativeRoughness: number): number {
  if (!(reynolds > 0)) throw new RangeError(`Reynolds number must be above 0, got ${reynolds}`)
  if (!(relativeRoughness >= 0 && relativeRoughness <= 0.05))
    throw new RangeError(`relative roughness must be 0…0.05, got ${relativeRoughness}`)
  if (reynolds <= LAMINAR_RE) return 64 / reynolds
  if (reynolds >= TURBULENT_RE) return haaland(reynolds, relativeRoughness)
  const share = turbulentShare(reynolds)
  return (1 - share) * (64 / LAMINAR_RE) + share * haaland(TURBULENT_RE, relativeRoughness)
}

/** Haaland 1983, J. Fluids Eng. 105, 89: explicit form of Colebrook, within 2 %. */
function haaland(reynolds: number, relativeRoughness: number): number {
  const root = -1.8 * Math.log10((relativeRoughness / 3.7) ** 1.11 + 6.9 / reynolds)
  return 1 / (root * root)
}

/** How far through the transition, 0 at 2300 to 1 at 4000. */
export function turbulentShare(reynolds: number): number {
  return Math.min(1, Math.max(0, (reynolds - LAMINAR_RE) / (TURBULENT_RE - LAMINAR_RE)))
}

/** A straight round tube and what flows in it. */
export interface TubeFlow {
  readonly flow_kgs: number
  readonly bore_m: number
  readonly roughness_m: number
  readonly fluid: FluidProperties
}

/** Mean velocity in the tube, m/s. */
export function tubeVelocity({ flow_kgs, bore_m, fluid }: TubeFlow): number {
  return flow_kgs / (fluid.density_kgm3 * 0.25 * Math.PI * bore_m * bore_m)
}

export function tubeReynolds(tube: TubeFlow): number {
  return (tubeVelocity(tube) * tube.bore_m * tube.fluid.density_kgm3) / tube.fluid.viscosity_Pas
}

/** Pressure lost per metre of straight tube, Pa/m (Darcy–Weisbach); 0 without flow. */
export function pressureGradient_Pam(tube: TubeFlow): number {
  const reynolds = tubeReynolds(tube)
  if (reynolds === 0) return 0
  const factor = frictionFactor(reynolds, tube.roughness_m / tube.bore_m)
  return (factor / tube.bore_m) * dynamicPressure_Pa(tube)
}

/** ρ v²/2, Pa: what one unit of local loss costs. */
export function dynamicPressure_Pa(tube: TubeFlow): number {
  return 0.5 * tube.fluid.density_kgm3 * tubeVelocity(tube) ** 2
}
