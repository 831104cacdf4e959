import { KELVIN_OFFSET } from '#model/basis/units'

/** Specific gas constant of dry air, J/kg K. */
export const AIR_GAS_CONSTANT_JKGK = 287.055
/** Specific heat of air at constant pressure, J/kg K (1006 at 250–320 K within 0.1 %). */
export const AIR_SPECIFIC_HEAT_JKGK = 1006
/** Standard gravity, m/s². */
export const GRAVITY_MS2 = 9.80665

/** Density of (dry) air, kg/m³: ideal gas. */
export function airDensity_kgm3(temp_C: number, pressure_Pa: number): number {
  return pressure_Pa / (AIR_GAS_CONSTANT_JKGK * (temp_C + KELVIN_OFFSET))
}

/** Dynamic viscosity of air, Pa s. Sutherland's law; constants of White, Viscous Fluid Flow, table 1-2 (from memory). */
export function airViscosity_Pas(temp_C: number): number {
  const T = temp_C + KELVIN_OFFSET
  const ratio = T / 273
  return (1.716e-5 * ratio * Math.sqrt(ratio) * (273 + 111)) / (T + 111)
}

/** Thermal conductivity of air, W/m K. Sutherland's law; constants of White, Viscous Fluid Flow, table 1-3 (from memory). */
export function airConductivity_WmK(temp_C: number): number {
  const T = temp_C + KELVIN_OFFSET
  const ratio = T / 273
  return (0.0241 * ratio * Math.sqrt(ratio) * (273 + 194)) / (T + 194)
}

/** Prandtl number of air, –. */
export function airPrandtl(temp_C: number): number {
  return (airViscosity_Pas(temp_C) * AIR_SPECIFIC_HEAT_JKGK) / airConductivity_WmK(temp_C)
}

/**
 * Rayleigh number per kelvin and cubic metre, 1/(K m³): Ra = group · ΔT · L³ with group = g β / (ν α), β = 1/T.
 */
export function rayleighGroup(temp_C: number, pressure_Pa: number): number {
  const T = temp_C + KELVIN_OFFSET
  const density = airDensity_kgm3(temp_C, pressure_Pa)
  return (
    (GRAVITY_MS2 * density * density * AIR_SPECIFIC_HEAT_JKGK) /
    (T * airViscosity_Pas(temp_C) * airConductivity_WmK(temp_C))
  )
}

/**
 * Lewis number of water vapour in air (thermal over mass diffusivity), –. k/(ρ c_p) = 1.99e-5 m²/s over
 * D = 2.26e-5 m²/s at 10 °C and sea level (Pruppacher & Klett 1997, eq. 13-3: 0.211 cm²/s (T/273.15)^1.94);
 * both go alike with temperature and pressure.
 */
export const LEWIS_NUMBER = 0.877
/** Le^(−2/3): mass against heat transfer by the analogy of Chilton & Colburn 1934. */
export const LEWIS_FACTOR = LEWIS_NUMBER ** (-2 / 3)
