import { frictionFactor, LAMINAR_RE, TURBULENT_RE, turbulentShare } from './friction.ts'

/** A flat plate with tubes bonded to it; metal bond taken as perfect. */
export interface TubedPlate {
  readonly plateThickness_m: number
  readonly plateConductivity_WmK: number
  readonly tubeSpacing_m: number
  readonly tubeOuterDiameter_m: number
  readonly tubeInnerDiameter_m: number
}

/** Fin efficiency of the plate between two tubes, F (–), for a surface conductance U, W/m²K. Duffie & Beckman eq. 6.5.12. */
export function finEfficiency(plate: TubedPlate, surface_Wm2K: number): number {
  const decay_1m = Math.sqrt(surface_Wm2K / (plate.plateConductivity_WmK * plate.plateThickness_m))
  const half_m = Math.max(0, plate.tubeSpacing_m - plate.tubeOuterDiameter_m) / 2
  const x = decay_1m * half_m
  return x < 1e-6 ? 1 : Math.tanh(x) / x
}

/**
 * Efficiency factor F′ (–) of a plate with tubes: heat taken over that of a plate at fluid temperature.
 * `film_Wm2K`: tube to fluid. Duffie & Beckman eq. 6.5.18. A serpentine has the same F′; conduction between its
 * neighbouring passes costs up to some 5 % more in F_R (Abdel-Khalik 1976) and is left out.
 */
export function efficiencyFactor(plate: TubedPlate, surface_Wm2K: number, film_Wm2K: number): number {
  const outer = plate.tubeOuterDiameter_m
  const width_m = outer + (plate.tubeSpacing_m - outer) * finEfficiency(plate, surface_Wm2K)
  const toFluid = 1 / (Math.PI * plate.tubeInnerDiameter_m * film_Wm2K)
  return 1 / (plate.tubeSpacing_m * (1 / width_m + surface_Wm2K * toFluid))
}

/** Flow factor F″ = F_R/F′ (–) for ṁc per plate area, W/m²K. Duffie & Beckman eq. 6.7.5. */
export function flowFactor(rate_Wm2K: number, surface_Wm2K: number, efficiency_frac: number): number {
  const x = (surface_Wm2K * efficiency_frac) / rate_Wm2K
  return x < 1e-9 ? 1 : -Math.expm1(-x) / x
}

/** Heat removal factor F_R = F′ F″ (–). Duffie & Beckman eq. 6.7.4. */
export function removalFactor(rate_Wm2K: number, surface_Wm2K: number, efficiency_frac: number): number {
  return efficiency_frac * flowFactor(rate_Wm2K, surface_Wm2K, efficiency_frac)
}

/**
 * Surface conductance at which `fluidToPlate_Wm2K` is fixed, W/m²K: a bare plate near air temperature radiates 5–6 and a
 * light wind adds 2–4; also the value of Duffie & Beckman's example 6.5.1. Half or double moves it by 1–3 %.
 */
export const REFERENCE_SURFACE_Wm2K = 8

/** G such that F′ = 1/(1 + U/G) at the reference U, W/m²K, for a plate with tubes. */
export function tubedPlateConductance(plate: TubedPlate, film_Wm2K: number): number {
  const efficiency = efficiencyFactor(plate, REFERENCE_SURFACE_Wm2K, film_Wm2K)
  return REFERENCE_SURFACE_Wm2K / (1 / efficiency - 1)
}

/**
 * The same for a plate wetted all over (twin-wall): channels of bore d at pitch p under a wall. Only the channel roof
 * counts, not the webs beside it: on the safe side.
 */
export function wettedPlateConductance(plate: TubedPlate, film_Wm2K: number): number {
  const roofShare = Math.min(1, plate.tubeInnerDiameter_m / plate.tubeOuterDiameter_m)
  return 1 / (1 / (film_Wm2K * roofShare) + plate.plateThickness_m / plate.plateConductivity_WmK)
}

/** Flow in a tube as heat transfer sees it. */
export interface FilmFlow {
  readonly reynolds: number
  readonly prandtl: number
  readonly bore_m: number
  readonly length_m: number
  readonly conductivity_WmK: number
}

/**
 * Film coefficient inside a tube, W/m²K, mean over its length. Laminar with thermal entrance: Hausen 1943 (limit Nu 3.66);
 * turbulent: Gnielinski 1976 with the tube's friction factor; 2300–4000: straight line between the two (Gnielinski 2013).
 */
export function tubeFilm_Wm2K(flow: FilmFlow): number {
  return (nusselt(flow) * flow.conductivity_WmK) / flow.bore_m
}

function nusselt(flow: FilmFlow): number {
  const share = turbulentShare(flow.reynolds)
  if (share === 0) return hausen(flow, flow.reynolds)
  if (share === 1) return gnielinski(flow, flow.reynolds)
  return (1 - share) * hausen(flow, LAMINAR_RE) + share * gnielinski(flow, TURBULENT_RE)
}

function hausen(flow: FilmFlow, reynolds: number): number {
  const graetz = (reynolds * flow.prandtl * flow.bore_m) / flow.length_m
  return 3.66 + (0.0668 * graetz) / (1 + 0.04 * graetz ** (2 / 3))
}

function gnielinski(flow: FilmFlow, reynolds: number): number {
  const eighth = frictionFactor(reynolds, 0) / 8
  const root = 1 + 12.7 * Math.sqrt(eighth) * (flow.prandtl ** (2 / 3) - 1)
  return (eighth * (reynolds - 1000) * flow.prandtl) / root
}
